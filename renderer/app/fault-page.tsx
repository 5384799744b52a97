import { useRouteError } from 'react-router';
import { Button, ButtonLink } from '#renderer/ui/page/button';
import { Notice } from '#renderer/ui/page/notice';
import { Page } from '#renderer/ui/page/page';
import { messageOf } from '#core/message-of';

/** Shown in place of a page that could not be drawn. */
export function FaultPage() {
  const error = useRouteError();
  const detail = messageOf(error);
  return (
    <Page title="This page could not be drawn">
      <Notice kind="warning" title="What happened">
        Something in Ringbound went wrong: {detail}. What you saved is on disk. Try drawing the page again.
      </Notice>
      <div>
        <Button onClick={() => window.location.reload()}>Draw the page again</Button>{' '}
        <ButtonLink to="/">Go to the bench</ButtonLink>
      </div>
    </Page>
  );
}

export function NotFoundPage() {
  return (
    <Page title="This page doesn’t exist">
      <p>What you’re looking for isn’t in this notebook. If it was deleted, Undo brings it back.</p>
      <div>
        <ButtonLink to="/">Go to the bench</ButtonLink>
      </div>
    </Page>
  );
}
