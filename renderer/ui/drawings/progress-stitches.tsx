import { Fragment } from 'react';
import { currentStage, type Stage } from '#core/domain/stage';
import { type EdgePoint, middleOf, runUpTo, splitEdge } from './split-edge';
import { HaloText } from './halo-text';
import styles from './project-drawing.module.css';

export type StitchedStage = Pick<Stage, 'state'> & { readonly id: string };

interface ProgressStitchesProps {
  /** The line to stitch along, in pixels, from its topmost middle clockwise. */
  readonly edge: readonly EdgePoint[];
  readonly stages: readonly StitchedStage[];
  /** The width of the thread in pixels. All other sizes follow from it. */
  readonly thread: number;
  /** Written at the gap of a stage that is at the quilter, such as the day it was promised back. */
  readonly awayWords: string | null;
}

/**
 * A project's progress, sewn around its edge, one arc for each stage: solid thread for done; a running stitch that ends in the
 * needle for in progress; a gap between two knots for out at the quilter; a dotted line of chalk for planned; bare for skipped.
 */
export function ProgressStitches({ edge, stages, thread, awayWords }: ProgressStitchesProps) {
  if (stages.length === 0) return null;
  const arcs = splitEdge(edge, stages.length, stages.length === 1 ? 0 : thread * 2.2);
  const now = currentStage(stages);
  return stages.map((stage, index) => {
    const run = arcs[index] ?? [];
    return (
      <Fragment key={stage.id}>
        <StageStitches run={run} state={stage.state} thread={thread} awayWords={awayWords} />
        {stage === now && <NeedleAt run={run} state={stage.state} thread={thread} />}
      </Fragment>
    );
  });
}

interface StageStitchesProps {
  readonly run: readonly EdgePoint[];
  readonly state: Stage['state'];
  readonly thread: number;
  readonly awayWords: string | null;
}

/** The stitches of one stage along a run of points, without the needle. */
export function StageStitches({ run, state, thread, awayWords }: StageStitchesProps) {
  switch (state) {
    case 'skipped':
      return null;
    case 'done':
      return <path d={runPath(run)} className={styles['done']} strokeWidth={thread} />;
    case 'in-hand':
      return (
        <>
          <Chalk run={run} thread={thread} />
          <path
            d={runPath(runUpTo(run, 0.5))}
            className={styles['now']}
            strokeWidth={thread}
            strokeDasharray={`${String(thread * 2.4)} ${String(thread * 1.3)}`}
          />
        </>
      );
    case 'out':
      return (
        <>
          {[run[0], run.at(-1)].map(
            (end, index) =>
              end && <circle key={index} cx={end.x} cy={end.y} r={thread * 1.1} className={styles['knot']} />,
          )}
          {awayWords !== null && <HaloText at={middleOf(run)} text={awayWords} />}
        </>
      );
    case 'planned':
      return <Chalk run={run} thread={thread} />;
  }
}

/** The needle at the current stage: halfway along one in progress, at the start of a planned one. One at the quilter has none. */
function NeedleAt({ run, state, thread }: Omit<StageStitchesProps, 'awayWords'>) {
  const middle = middleOf(run);
  if (state === 'in-hand') return <NeedleDrawing at={middle} thread={thread} />;
  if (state !== 'planned') return null;
  const { turn } = middleOf(runUpTo(run, 0.04));
  return <NeedleDrawing at={{ ...(run[0] ?? middle), turn }} thread={thread} />;
}

function Chalk({ run, thread }: { readonly run: readonly EdgePoint[]; readonly thread: number }) {
  const width = thread * 0.6;
  return (
    <path
      d={runPath(run)}
      className={styles['planned']}
      strokeWidth={width}
      strokeDasharray={`0.1 ${String(width * 2.6)}`}
    />
  );
}

/** A needle along the line, its point ahead and the thread in its eye. */
export function NeedleDrawing({
  at,
  thread,
}: {
  readonly at: EdgePoint & { readonly turn: number };
  readonly thread: number;
}) {
  const [half, thick] = [Math.max(thread * 5, 13), Math.max(thread * 0.85, 2.2)];
  const degrees = (at.turn * 180) / Math.PI;
  const outline = `M ${String(half)} 0 L ${String(-half * 0.6)} ${String(-thick)} Q ${String(-half)} ${String(-thick)} ${String(-half)} 0 Q ${String(-half)} ${String(thick)} ${String(-half * 0.6)} ${String(thick)} Z`;
  return (
    <g transform={`translate(${at.x.toFixed(2)} ${at.y.toFixed(2)}) rotate(${degrees.toFixed(1)})`}>
      <path d={outline} className={styles['needle']} />
      <ellipse cx={-half * 0.72} cy={0} rx={half * 0.13} ry={thick * 0.42} className={styles['eye']} />
    </g>
  );
}

/** A run of points as an SVG path. */
export function runPath(run: readonly EdgePoint[], isClosed = false): string {
  const steps = run.map(
    (point, index) => `${index === 0 ? 'M' : 'L'}${point.x.toFixed(2)} ${point.y.toFixed(2)}`,
  );
  return `${steps.join(' ')}${isClosed ? ' Z' : ''}`;
}
