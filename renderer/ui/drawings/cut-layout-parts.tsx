import { memo, useId, useMemo } from 'react';
import type { CutTree } from '#core/domain/cutting-plan';
import type { CutStep } from '#core/cutting/tree/cut-steps';
import type { Leftover, OrderedCut } from '#core/cutting/tree/cutting-job';
import { leftoversOf } from '#core/cutting/tree/piece-plan';
import { classes } from '../base/classes';
import type { PrintRuns } from '#core/domain/stash';
import { type FabricFrame, restsIn } from './cut-layout-frame';
import styles from './cut-layout.module.css';

const CUT_LOOKS = ['cut', 'firstCut', 'doneCut', 'doneFirstCut'] as const;
type CutLook = (typeof CUT_LOOKS)[number];

/** The cut lines, one path for all of one look. Cuts across the whole fabric are thick. */
export const Cuts = memo(
  ({ cuts, frame }: { readonly cuts: readonly OrderedCut[]; readonly frame: FabricFrame }) => {
    const shapes = useMemo(
      () =>
        CUT_LOOKS.map((look) => ({
          look,
          shape: cuts.flatMap((cut) => (lookOf(cut) === look ? [lineOf(cut, frame)] : [])).join(''),
        })),
      [cuts, frame],
    );
    return shapes.map(
      ({ look, shape }) => shape !== '' && <path key={look} d={shape} className={cutClass(look)} />,
    );
  },
);
Cuts.displayName = 'Cuts';

function lookOf({ direction, stage, isDone }: OrderedCut): CutLook {
  const isFirst = stage === 1 && direction === 'across';
  if (isDone) return isFirst ? 'doneFirstCut' : 'doneCut';
  return isFirst ? 'firstCut' : 'cut';
}

function cutClass(look: CutLook): string {
  const isFirst = look === 'firstCut' || look === 'doneFirstCut';
  const isDone = look === 'doneCut' || look === 'doneFirstCut';
  return classes(styles['cut'], isFirst && styles['firstCut'], isDone && styles['doneCut']);
}

function lineOf({ x, y, length, direction }: OrderedCut, frame: FabricFrame): string {
  const start = `M${frame.toX(y).toFixed(2)} ${frame.toY(x).toFixed(2)}`;
  return `${start}${direction === 'across' ? 'v' : 'h'}${(length * frame.scale).toFixed(2)}`;
}

const LEAST_FOR_NUMBER = 11;

interface StepNumbersProps {
  readonly steps: readonly Pick<CutStep, 'from' | 'length'>[];
  readonly done: number;
  readonly frame: FabricFrame;
}

/** Above each strip, its number in the order of cutting, with a tick if it is cut. Strips that are too narrow have none. */
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

/** The break in a long uncut end that is drawn shortened. */
export function Break({ frame }: { readonly frame: FabricFrame }) {
  const x = frame.toX(frame.shown);
  const [top, bottom] = [frame.toY(0), frame.toY(frame.width)];
  const steps = Math.max(2, Math.round((bottom - top) / 14));
  const points = Array.from({ length: steps + 1 }, (_, at) => {
    const y = top + ((bottom - top) * at) / steps;
    return `${(x + (at % 2 === 0 ? -4 : 4)).toFixed(1)},${y.toFixed(1)}`;
  });
  return <polyline points={points.join(' ')} className={styles['break']} />;
}

interface PrintArrowProps {
  readonly frame: FabricFrame;
  readonly isBoth: boolean;
  readonly runs: PrintRuns;
}

const ARROW = { along: 90, across: 20 };

/** The direction of the print: along the fabric, away from the near end, or across it, from the upper edge down. */
export function PrintArrow({ frame, isBoth, runs }: PrintArrowProps) {
  const isAlong = runs === 'along';
  const long = isAlong ? Math.min(ARROW.along, frame.shown * frame.scale) : ARROW.across;
  const [x, y] = [frame.toX(0) + (isAlong ? 0 : 6), frame.toY(frame.width) + (isAlong ? 16 : 6)];
  return (
    <>
      <g
        className={styles['print']}
        transform={`translate(${String(x)} ${String(y)})${isAlong ? '' : ' rotate(90)'}`}
      >
        <line x1={0} y1={0} x2={long} y2={0} />
        <polyline points={`${String(long - 7)},-5 ${String(long)},0 ${String(long - 7)},5`} />
        {isBoth && <polyline points="7,-5 0,0 7,5" />}
      </g>
      <text x={x + 8 + (isAlong ? long : 0)} y={frame.toY(frame.width) + 16} className={styles['printWords']}>
        {isAlong ? 'print' : 'print across'}
      </text>
    </>
  );
}

interface RestsProps {
  readonly tree: CutTree;
  readonly frame: FabricFrame;
  readonly swatch: string | null;
  readonly sizeOf: (one: Leftover) => string;
}

/** Margins, scraps, and leftovers with their sizes. */
export function Rests({ tree, frame, swatch, sizeOf }: RestsProps) {
  const pattern = useId();
  const rect = (one: Leftover) => ({
    x: frame.toX(one.y),
    y: frame.toY(one.x),
    width: Math.max(0, Math.min(frame.toX(one.y + one.length), frame.toX(frame.shown)) - frame.toX(one.y)),
    height: one.width * frame.scale,
  });
  return (
    <>
      <pattern id={pattern} width={5} height={5} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <line x1={0} y1={0} x2={0} y2={5} className={styles['hatch']} />
      </pattern>
      <path
        d={restsIn(tree)
          .map(rect)
          .map(
            ({ x, y, width, height }) =>
              `M${String(x)} ${String(y)}h${String(width)}v${String(height)}h${String(-width)}z`,
          )
          .join('')}
        fill={`url(#${pattern})`}
        className={styles['scrap']}
      />
      {leftoversOf(tree).map((one, index) => {
        const { x, y, width, height } = rect(one);
        const isUpright = width < 110;
        const hasWords = Math.max(width, height) >= 110 && Math.min(width, height) >= 16;
        const [cx, cy] = [x + width / 2, y + height / 2];
        return (
          <g key={index}>
            <rect
              x={x}
              y={y}
              width={width}
              height={height}
              className={styles['leftover']}
              fill={swatch ?? 'var(--fabric)'}
            />
            {hasWords && (
              <text
                x={cx}
                y={cy}
                className={styles['keep']}
                transform={isUpright ? `rotate(-90 ${String(cx)} ${String(cy)})` : undefined}
              >
                keep {sizeOf(one)}
              </text>
            )}
          </g>
        );
      })}
    </>
  );
}
