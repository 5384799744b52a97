import { useState } from 'react';
import type { Work } from '#core/domain/clock';
import { isOver, type Stage } from '#core/domain/stage';
import { formatMinutes, minutesFromWhole } from '#core/units/minutes';
import { useRead, useWrite } from '#renderer/bridge/query';
import { dateWords, today } from '#renderer/text/dates';
import { doneWords } from '#renderer/text/work-words';
import { Button } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { EstimateWords } from './estimate-words';
import { OwnEstimate } from './own-estimate';
import { WorkDialog } from './work-dialog';
import layout from '#renderer/ui/page/layout.module.css';
import styles from '../stage.module.css';

type Asking = 'nothing' | 'new' | Work;

/** The time of a stage: its clock, the time logged, and the estimate with its source. */
export function StageClock({ stage }: { readonly stage: Stage }) {
  const { value: work } = useRead('work:of-stage', { stageId: stage.id });
  const { value: running } = useRead('clock:state', {});
  const { value: estimates } = useRead('stage:estimates', { projectId: stage.projectId });
  const starting = useWrite('clock:start');
  const [asking, setAsking] = useState<Asking>('nothing');
  if (work === undefined || running === undefined || estimates === undefined) return null;
  const estimate = estimates[stage.id];
  const total = work.reduce((sum, { minutes }) => sum + minutes, 0);
  const canStart = !isOver(stage) && stage.state !== 'out';
  return (
    <section className={layout['part']} aria-label="Time">
      <div className={layout['partHead']}>
        <h3>Time</h3>
        <span className={layout['row']}>
          {running?.stageId === stage.id ? (
            <span className={layout['quiet']}>The clock is running</span>
          ) : (
            canStart && (
              <Button
                isSmall
                disabled={starting.isWriting}
                onClick={() => void starting.write({ stageId: stage.id })}
              >
                Start the clock
              </Button>
            )
          )}
          <Button look="quiet" isSmall onClick={() => setAsking('new')}>
            Add time
          </Button>
        </span>
      </div>
      <p>{totalWords(total, estimate?.minutes ?? stage.estimateMinutes)}</p>
      <ul className={styles['lines']}>
        {work.map((one) => (
          <WorkLine key={one.id} work={one} onChange={() => setAsking(one)} />
        ))}
      </ul>
      {estimate !== undefined && <EstimateWords stage={stage} estimate={estimate} />}
      {(estimate?.parts.length ?? 0) === 0 && <OwnEstimate stage={stage} />}
      <ProblemNotice problem={starting.problem} />
      {asking !== 'nothing' && (
        <WorkDialog
          stage={stage}
          work={asking === 'new' ? null : asking}
          onClose={() => setAsking('nothing')}
        />
      )}
    </section>
  );
}

function WorkLine({ work, onChange }: { readonly work: Work; readonly onChange: () => void }) {
  const { locale, length } = useDisplay();
  const removing = useWrite('work:delete');
  const day = dateWords(work.on, locale, today());
  return (
    <li className={styles['line']}>
      <span>
        <span className={layout['quiet']}>{day}</span> {formatMinutes(work.minutes)}
        {work.done !== null && `, ${doneWords(work.done, length)}`}
        {work.note !== '' && <span className={layout['quiet']}> {work.note}</span>}
      </span>
      <span className={styles['onlyNear']}>
        <Button
          look="quiet"
          isSmall
          aria-label={`Change the ${formatMinutes(work.minutes)} on ${day}`}
          onClick={onChange}
        >
          Change
        </Button>
        <Button
          look="quiet"
          isSmall
          aria-label={`Delete the ${formatMinutes(work.minutes)} on ${day}`}
          onClick={() => void removing.write({ workId: work.id })}
        >
          Delete
        </Button>
      </span>
    </li>
  );
}

function totalWords(total: number, estimate: number): string {
  const about = estimate === 0 ? null : `about ${formatMinutes(minutesFromWhole(estimate))}`;
  if (total === 0) return about === null ? 'No time logged yet' : `No time logged yet, ${about} to do`;
  return about === null ? formatMinutes(total) : `${formatMinutes(total)} of ${about}`;
}
