import { Link } from 'react-router';
import { isOver, openGateItems, type Stage } from '#core/domain/stage';
import { formatMinutes, minutesFromWhole } from '#core/units/minutes';
import { STAGE_STATE_WORDS } from '#renderer/text/stage-words';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './spread.module.css';

interface StageHeadProps {
  readonly stage: Stage;
  /** Its estimate; 0 if unknown. */
  readonly minutes: number;
}

/** The name of a stage, its state and its estimate. */
export function StageHead({ stage, minutes }: StageHeadProps) {
  const estimate = minutes === 0 ? '' : ` · about ${formatMinutes(minutesFromWhole(minutes))}`;
  return (
    <>
      <Link to={`/projects/${stage.projectId}/stages/${stage.id}`} className={styles['stageName']}>
        {stage.name}
      </Link>
      <p className={layout['quiet']}>
        {STAGE_STATE_WORDS[stage.state]}
        {!isOver(stage) && estimate}
        {stage.isBeside && ' · alongside the one before'}
      </p>
    </>
  );
}

const LINES_SHOWN = 4;

interface CurrentStageDetailsProps {
  readonly stage: Stage;
  readonly stages: readonly Stage[];
}

/** What the current stage waits for, what is still open, and its notes. */
export function CurrentStageDetails({ stage, stages }: CurrentStageDetailsProps) {
  const openGate = openGateItems(stage, stages);
  const beforeStart = stage.state === 'planned' ? openGate : [];
  const open = stage.checklist.filter((item) => !item.isTicked && (!item.isGate || openGate.includes(item)));
  return (
    <div className={styles['nowDetails']}>
      {stage.heldUpBy !== '' && (
        <p>
          <strong>Waiting for:</strong> {stage.heldUpBy}
        </p>
      )}
      {beforeStart.length > 0 && (
        <>
          <p>Before you start:</p>
          <ul>
            {beforeStart.map((item) => (
              <li key={item.id}>{item.text}</li>
            ))}
          </ul>
        </>
      )}
      {beforeStart.length === 0 && open.length > 0 && (
        <ul>
          {open.slice(0, LINES_SHOWN).map((item) => (
            <li key={item.id}>{item.text}</li>
          ))}
          {open.length > LINES_SHOWN && <li>and {open.length - LINES_SHOWN} more on its page</li>}
        </ul>
      )}
      {stage.notes !== '' && <p className={layout['notes']}>{stage.notes}</p>}
    </div>
  );
}
