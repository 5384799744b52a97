import type { Stage } from '#core/domain/stage';
import { type EdgePoint, middleOf, runUpTo, splitEdge } from './outline-points';
import { HaloText } from './halo-text';
import styles from './project-drawing.module.css';

export type StitchedStage = Pick<Stage, 'state'> & { readonly id: string };

interface ProgressStitchesProps {
  /** The line to stitch along, in pixels, from its topmost middle clockwise. */
  readonly edge: readonly EdgePoint[];
  readonly stages: readonly StitchedStage[];
  /** The width of the thread in pixels; everything else follows from it. */
  readonly thread: number;
  /** Written at the gap of a stage that is away, such as its promised day. */
  readonly awayWords: string | null;
}

/**
 * A piece's progress, sewn round its edge, one arc for each stage: done is one solid thread; the stage in hand is a running
 * stitch that ends in the needle; a stage away is a gap between two knots; planned is a dotted line of chalk; skipped is bare.
 */
export function ProgressStitches({ edge, stages, thread, awayWords }: ProgressStitchesProps) {
  if (stages.length === 0) return null;
  const arcs = splitEdge(edge, stages.length, stages.length === 1 ? 0 : thread * 2.2);
  const next = stages.findIndex((stage) => stage.state !== 'done' && stage.state !== 'skipped');
  return stages.map((stage, index) => (
    <Arc
      key={stage.id}
      arc={arcs[index] ?? []}
      state={stage.state}
      isNext={index === next}
      thread={thread}
      awayWords={awayWords}
    />
  ));
}

interface ArcProps {
  readonly arc: readonly EdgePoint[];
  readonly state: Stage['state'];
  readonly isNext: boolean;
  readonly thread: number;
  readonly awayWords: string | null;
}

function Arc({ arc, state, isNext, thread, awayWords }: ArcProps) {
  const middle = middleOf(arc);
  switch (state) {
    case 'skipped':
      return null;
    case 'done':
      return <path d={runPath(arc)} className={styles['done']} strokeWidth={thread} />;
    case 'in-hand':
      return (
        <>
          <Chalk arc={arc} thread={thread} />
          <path
            d={runPath(runUpTo(arc, 0.5))}
            className={styles['now']}
            strokeWidth={thread}
            strokeDasharray={`${String(thread * 2.4)} ${String(thread * 1.3)}`}
          />
          <Needle at={middle} thread={thread} />
        </>
      );
    case 'out':
      return (
        <>
          {[arc[0], arc.at(-1)].map(
            (end, index) =>
              end && <circle key={index} cx={end.x} cy={end.y} r={thread * 1.1} className={styles['knot']} />,
          )}
          {awayWords !== null && <HaloText at={middle} text={awayWords} />}
        </>
      );
    case 'planned':
      return (
        <>
          <Chalk arc={arc} thread={thread} />
          {isNext && (
            <Needle at={{ ...(arc[0] ?? middle), turn: middleOf(runUpTo(arc, 0.04)).turn }} thread={thread} />
          )}
        </>
      );
  }
}

function Chalk({ arc, thread }: { readonly arc: readonly EdgePoint[]; readonly thread: number }) {
  const width = thread * 0.6;
  return (
    <path
      d={runPath(arc)}
      className={styles['planned']}
      strokeWidth={width}
      strokeDasharray={`0.1 ${String(width * 2.6)}`}
    />
  );
}

/** A needle lying along the line, its point ahead and the thread in its eye. */
function Needle({
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

/** The points of a run as an SVG path. */
export function runPath(run: readonly EdgePoint[], isClosed = false): string {
  const steps = run.map(
    (point, index) => `${index === 0 ? 'M' : 'L'}${point.x.toFixed(2)} ${point.y.toFixed(2)}`,
  );
  return `${steps.join(' ')}${isClosed ? ' Z' : ''}`;
}
