import { useId } from 'react';
import type { CutStep } from '#core/cutting/tree/cut-steps';
import { givesWords, stepWords } from '#renderer/text/cut-words';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { Typeset } from '#renderer/ui/answers/typeset';
import styles from './table.module.css';

interface StepListProps {
  readonly name: string;
  readonly steps: readonly CutStep[];
  /** Places of the steps that are cut. */
  readonly done: ReadonlySet<number>;
  /** Place of the next step; -1 when there is none. */
  readonly next: number;
  /** Null when nothing can be ticked because the fabric is still to buy. */
  readonly onTick: ((place: number, isCut: boolean) => void) | null;
  readonly isBusy: boolean;
}

/** The cuts of one piece in order. The next can be ticked, and the last ticked one can be undone. */
export function StepList({ name, steps, done, next, onTick, isBusy }: StepListProps) {
  const { length } = useDisplay();
  const id = useId();
  const last = Math.max(-1, ...done);
  return (
    <ol className={styles['steps']} aria-label={`Steps of ${name}`}>
      {steps.map((step, place) => {
        const isDone = done.has(place);
        const isOpen = place === next || (isDone && place === last);
        const cuts = stepWords(step, length);
        return (
          <li
            key={place}
            className={classes(styles['step'], isDone && styles['cut'], place === next && styles['next'])}
          >
            <label className={styles['tick']}>
              {onTick !== null && (
                <input
                  type="checkbox"
                  checked={isDone}
                  disabled={!isOpen}
                  aria-label={`${name}, step ${String(place + 1)}`}
                  aria-describedby={`${id}-${String(place)}`}
                  onChange={(event) => {
                    if (!isBusy) onTick(place, event.target.checked);
                  }}
                />
              )}
              <span className={styles['place']}>{place + 1}</span>
              <span id={`${id}-${String(place)}`} className={styles['words']}>
                {cuts.map(({ depth, words }, index) => (
                  <span
                    key={index}
                    className={depth === 0 ? styles['strip'] : styles['inner']}
                    style={{ paddingLeft: `${String(Math.max(0, depth - 1) * 1.25)}rem` }}
                  >
                    <Typeset text={words} />
                  </span>
                ))}
                {step.patches.length > 1 && <span className={styles['gives']}>gives {givesWords(step)}</span>}
              </span>
            </label>
          </li>
        );
      })}
    </ol>
  );
}
