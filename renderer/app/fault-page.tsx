import { useRouteError } from 'react-router';
import { Button, ButtonLink } from '#renderer/ui/page/button';
import { Notice } from '#renderer/ui/page/notice';
import { Page } from '#renderer/ui/page/page';
import { messageOf } from '#core/message-of';

/** What stands in place of a page that could not be drawn. Nothing kept is touched, and forms keep what was typed. */
export function FaultPage() {
  const error = useRouteError();
  const detail = messageOf(error);
  return (
    <Page title="This page could not be drawn">
      <Notice kind="warning" title="What happened">
        A fault in the notebook itself: {detail}. Everything you kept is safe, and what you were typing in a
        form is still there.
      </Notice>
      <div>
        <Button onClick={() => window.location.reload()}>Draw it again</Button>{' '}
        <ButtonLink to="/">Go to the bench</ButtonLink>
      </div>
    </Page>
  );
}

export function NotFoundPage() {
  return (
    <Page title="There is nothing here">
      <p>The page you asked for is not in this notebook. It may have been deleted; Undo brings it back.</p>
      <div>
        <ButtonLink to="/">Go to the bench</ButtonLink>
      </div>
    </Page>
  );
}
