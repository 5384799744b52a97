import { Button } from '#renderer/ui/page/button';
import { Notice } from '#renderer/ui/page/notice';
import type { PlanChange } from '../planning/plan-age';
import styles from '../cutting.module.css';

interface ChangedNoticeProps {
  readonly changes: readonly PlanChange[];
  readonly onPlanAnew: () => void;
}

const WORDS: Readonly<Record<PlanChange, string>> = {
  lists: 'A list of patches was kept anew, or is gone.',
  'fabric-found': 'A fabric that was planned as new fabric is in the stash now.',
  stash: 'The pieces on the shelf are not the same any more.',
};

/** The plan was made for other lists or other fabric than there are now. What is cut stays; the rest can be planned anew. */
export function ChangedNotice({ changes, onPlanAnew }: ChangedNoticeProps) {
  return (
    <Notice kind="warning" title="Out of date">
      {changes.map((change) => (
        <p key={change}>{WORDS[change]}</p>
      ))}
      <div className={styles['buttons']}>
        <Button isSmall onClick={onPlanAnew}>
          Plan the rest anew
        </Button>
      </div>
    </Notice>
  );
}
