import type { StageState } from '#core/domain/stage';
import styles from './spread.module.css';

interface StageThreadProps {
  readonly state: StageState;
  readonly isNext: boolean;
}

/** The thread around the project's drawing, run down the margin: solid, running, a gap, chalk, or nothing. */
export function StageThread({ state, isNext }: StageThreadProps) {
  return (
    <span aria-hidden="true" className={styles['thread']} data-state={state} data-next={isNext}>
      {(state === 'in-hand' || (isNext && state === 'planned')) && (
        <svg width={14} height={44} viewBox="-7 -22 14 44" className={styles['needle']}>
          <path d="M 0 21 L -3 -12 Q -3 -21 0 -21 Q 3 -21 3 -12 Z" className={styles['needleBody']} />
          <ellipse cx={0} cy={-15} rx={1.1} ry={3} className={styles['needleEye']} />
        </svg>
      )}
    </span>
  );
}
