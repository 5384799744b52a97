import { Button } from '#renderer/ui/page/button';
import { Notice } from '#renderer/ui/page/notice';
import type { PlanChange } from '../planning/plan-age';
import layout from '#renderer/ui/page/layout.module.css';

interface ChangedNoticeProps {
  readonly changes: readonly PlanChange[];
  readonly onChangePlan: () => void;
}

const WORDS: Readonly<Record<PlanChange, string>> = {
  lists: 'A list of patches was saved again or is gone.',
  'fabric-found': 'A fabric you planned to buy is now in your stash.',
  stash: 'The pieces of fabric in your stash have changed.',
};

/** Says why the saved plan is out of date. What is cut stays cut; the rest can be planned again. */
export function ChangedNotice({ changes, onChangePlan }: ChangedNoticeProps) {
  return (
    <Notice kind="warning" title="Out of date">
      {changes.map((change) => (
        <p key={change}>{WORDS[change]}</p>
      ))}
      <div className={layout['row']}>
        <Button isSmall onClick={onChangePlan}>
          Plan the rest again
        </Button>
      </div>
    </Notice>
  );
}
