import type { ProjectSpread, Trip } from '#core/contract/projects';
import { currentStage, openGateItems, type Stage } from '#core/domain/stage';
import type { StepGroup } from '#core/calculators/stage-steps/step-group';
import type { StageEstimate } from '#core/learned/stage-estimate';
import { formatMinutes, minutesFromWhole } from '#core/units/minutes';
import { dateWords, today } from '#renderer/text/dates';
import { STAGE_STATE_WORDS } from '#renderer/text/stage-words';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { StepGroups } from '#renderer/ui/answers/step-groups';
import { Typeset } from '#renderer/ui/answers/typeset';
import { PaperBox } from '../paper/paper-box';
import { SheetAnswer } from './sheet-answer';
import type { PaperAnswer } from './sheet-lines';
import styles from '../paper/sheet.module.css';

interface SheetStageProps {
  readonly stage: Stage;
  readonly spread: ProjectSpread;
  readonly answers: readonly PaperAnswer[];
  readonly steps: readonly StepGroup[];
  readonly estimate: StageEstimate | undefined;
}

/**
 * A stage: what to check before it starts and along the way, and its numbers. The current one has its steps too, a finished one is one
 * line.
 */
export function SheetStage({ stage, spread, answers, steps, estimate }: SheetStageProps) {
  const isDone = stage.state === 'done';
  const isNow = currentStage(spread.stages) === stage;
  const gate = stage.checklist.filter((item) => item.isGate);
  const others = stage.checklist.filter((item) => !item.isGate);
  const open = new Set(openGateItems(stage, spread.stages).map(({ id }) => id));
  const minutes = estimate?.minutes ?? 0;
  const about = isDone || minutes === 0 ? '' : `, about ${formatMinutes(minutesFromWhole(minutes))}`;
  return (
    <section className={classes(styles['stage'], isDone && styles['done'])}>
      <div className={styles['stageHead']}>
        <h2>{stage.name}</h2>
        <span className={styles['quiet']}>
          {STAGE_STATE_WORDS[stage.state]}
          {about}
        </span>
      </div>
      {spread.trips
        .filter((trip) => trip.stageId === stage.id)
        .map((trip) => (
          <TripLine key={trip.id} trip={trip} />
        ))}
      {!isDone && stage.heldUpBy !== '' && <p>Held up by: {stage.heldUpBy}</p>}
      {!isDone && gate.length > 0 && (
        <Lines title="Before you start" items={gate.map((item) => [item.text, !open.has(item.id)])} />
      )}
      {!isDone && answers.map((answer) => <SheetAnswer key={answer.name} answer={answer} isWhole={isNow} />)}
      {isNow && <StepGroups groups={steps} />}
      {!isDone && others.length > 0 && (
        <Lines
          title={gate.length > 0 || answers.length > 0 ? 'Along the way' : null}
          items={others.map((item) => [item.text, item.isTicked])}
        />
      )}
      {stage.notes !== '' && <p className={styles['notes']}>{stage.notes}</p>}
    </section>
  );
}

interface LinesProps {
  readonly title: string | null;
  readonly items: readonly (readonly [string, boolean])[];
}

/** Lines to tick by hand, in two columns; lines ticked in the notebook are printed ticked. */
function Lines({ title, items }: LinesProps) {
  return (
    <div className={styles['part']}>
      {title !== null && <h3>{title}</h3>}
      <ul className={styles['lines']}>
        {items.map(([text, isTicked]) => (
          <li key={text} className={styles['line']}>
            <PaperBox isTicked={isTicked} />
            <span>
              <Typeset text={text} />
            </span>
          </li>
        ))}
      </ul>
    </div>
  );
}

function TripLine({ trip }: { readonly trip: Trip }) {
  const { locale } = useDisplay();
  const on = today();
  const day = (date: NonNullable<Trip['sentOn']>) => dateWords(date, locale, on);
  const facts = [
    trip.sentOn === null ? null : `sent ${day(trip.sentOn)}`,
    trip.promisedOn === null || trip.backOn !== null ? null : `promised ${day(trip.promisedOn)}`,
    trip.backOn === null ? null : `back ${day(trip.backOn)}`,
    trip.askedFor === '' ? null : `instructions: ${trip.askedFor}`,
  ];
  return <p>{[`With ${trip.withWhom}`, ...facts.filter((fact) => fact !== null)].join(', ')}</p>;
}
