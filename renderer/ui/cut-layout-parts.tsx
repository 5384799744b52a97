import type { CutStep } from '#core/cutting/cut-steps';
import type { OrderedCut } from '#core/cutting/cutting-job';
import { classes } from './classes';
import type { ClothFrame } from './cut-layout-frame';
import styles from './cut-layout.module.css';

/** The cut lines; those across the whole cloth are heavy. */
export function Cuts({ cuts, frame }: { readonly cuts: readonly OrderedCut[]; readonly frame: ClothFrame }) {
  return cuts.map((cut, index) => {
    const [x, y] = [frame.toX(cut.y), frame.toY(cut.x)];
    const long = cut.length * frame.scale;
    const isAcross = cut.direction === 'across';
    const end = isAcross ? { x, y: y + long } : { x: x + long, y };
    const isFirst = cut.stage === 1 && isAcross;
    return (
      <line
        key={index}
        x1={x}
        y1={y}
        x2={end.x}
        y2={end.y}
        className={classes(styles['cut'], isFirst && styles['firstCut'], cut.isDone && styles['doneCut'])}
      />
    );
  });
}

const LEAST_FOR_NUMBER = 11;

interface StepNumbersProps {
  readonly steps: readonly Pick<CutStep, 'from' | 'length'>[];
  readonly done: number;
  readonly frame: ClothFrame;
}

/** Above each strip its number in the order of cutting, ticked where it is cut; too narrow ones go without. */
export function StepNumbers({ steps, done, frame }: StepNumbersProps) {
  return steps.map(({ from, length }, index) => {
    if (length * frame.scale < LEAST_FOR_NUMBER) return null;
    return (
      <text key={index} x={frame.toX(from + length / 2)} y={frame.toY(0) - 9} className={styles['number']}>
        {from + length <= done ? '✓' : index + 1}
      </text>
    );
  });
}

/** Where a long uncut end is drawn shorter than it is. */
export function Break({ frame }: { readonly frame: ClothFrame }) {
  const x = frame.toX(frame.shown);
  const [top, bottom] = [frame.toY(0), frame.toY(frame.width)];
  const steps = Math.max(2, Math.round((bottom - top) / 14));
  const points = Array.from({ length: steps + 1 }, (_, at) => {
    const y = top + ((bottom - top) * at) / steps;
    return `${(x + (at % 2 === 0 ? -4 : 4)).toFixed(1)},${y.toFixed(1)}`;
  });
  return <polyline points={points.join(' ')} className={styles['break']} />;
}

/** Which way the print stands: along the cloth, away from the near end. */
export function PrintArrow({ frame, isBoth }: { readonly frame: ClothFrame; readonly isBoth: boolean }) {
  const y = frame.toY(frame.width) + 16;
  const [from, to] = [frame.toX(0), frame.toX(0) + Math.min(90, frame.shown * frame.scale)];
  return (
    <g className={styles['print']}>
      <line x1={from} y1={y} x2={to} y2={y} />
      <polyline
        points={`${String(to - 7)},${String(y - 5)} ${String(to)},${String(y)} ${String(to - 7)},${String(y + 5)}`}
      />
      {isBoth && (
        <polyline
          points={`${String(from + 7)},${String(y - 5)} ${String(from)},${String(y)} ${String(from + 7)},${String(y + 5)}`}
        />
      )}
      <text x={to + 8} y={y} className={styles['printWords']}>
        print
      </text>
    </g>
  );
}
