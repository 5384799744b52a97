import { outlineBounds, outlineFromTop } from '#core/calculators/outline/outline-measures';
import type { Hole, Outline } from '#core/domain/outline';
import type { Stage } from '#core/domain/stage';
import { formatLength } from '#core/units/format-length';
import { lengthFromExact } from '#core/units/length';
import { outlineWords } from '#renderer/text/project-words';
import { progressWords } from '#renderer/text/stage-words';
import { DimensionLine } from './dimension-line';
import { useDisplay } from '../base/display';
import type { EdgePoint } from './split-edge';
import { ProgressStitches, runPath, type StitchedStage } from './progress-stitches';
import styles from './project-drawing.module.css';

interface DrawnProject {
  readonly outline: Outline;
  readonly hole: Hole | null;
  readonly hasSlit: boolean;
}

interface ProjectDrawingProps {
  readonly project: DrawnProject;
  /** Colors of its fabrics, most used first. Without any, the project is drawn in plain fabric. */
  readonly swatches?: readonly string[];
  readonly stages?: readonly (StitchedStage & Pick<Stage, 'name'>)[];
  /** The longest side of the drawing in CSS pixels. */
  readonly size: number;
  /** Written at the gap of a stage that is at the quilter; left out where the drawing is small. */
  readonly awayWords?: string | null;
  readonly hasDimensions?: boolean;
  /** Hides the drawing from a screen reader, where the project is named and described beside it. */
  readonly isSilent?: boolean;
}

const ROUNDS = 5;
const DIMENSION_ROOM = 44;

/** A project drawn as itself: its outline to scale in rounds of its fabrics, its hole and slit, its progress sewn around the edge. */
export function ProjectDrawing(props: ProjectDrawingProps) {
  const {
    project,
    swatches = [],
    stages = [],
    size,
    awayWords = null,
    hasDimensions = false,
    isSilent = false,
  } = props;
  const display = useDisplay().length;
  const drawn = drawnOutline(project.outline);
  const thread = Math.max(2.2, size / 75);
  const clear = stages.length === 0 ? thread : thread * 5;
  const room = hasDimensions ? DIMENSION_ROOM : 0;
  const scale = (size - 2 * clear - room) / Math.max(drawn.width, drawn.height);
  const [width, height] = [drawn.width * scale + 2 * clear + room, drawn.height * scale + 2 * clear + room];
  const words = `${outlineWords(project, display)}.${stages.length === 0 ? '' : ` ${progressWords(stages)}`}`;
  return (
    <svg
      className={styles['drawing']}
      width={width}
      height={height}
      viewBox={`${String(-(drawn.width * scale) / 2 - clear - room)} ${String(-(drawn.height * scale) / 2 - clear)} ${String(width)} ${String(height)}`}
      {...(isSilent ? { 'aria-hidden': true } : { role: 'img', 'aria-label': words })}
    >
      <Rounds drawn={drawn} scale={scale} swatches={swatches} hole={project.hole} />
      <Opening project={project} drawn={drawn} scale={scale} thread={thread} />
      <ProgressStitches
        edge={grown(drawn, scale, thread * 2.4)}
        stages={stages}
        thread={thread}
        awayWords={size < 200 ? null : awayWords}
      />
      {hasDimensions && <ProjectDimensions project={project} drawn={drawn} scale={scale} clear={clear} />}
    </svg>
  );
}

interface DrawnOutline {
  /** The edge from its topmost middle, clockwise, not closed. */
  readonly points: readonly EdgePoint[];
  readonly width: number;
  readonly height: number;
}

function drawnOutline(outline: Outline): DrawnOutline {
  const { width, length } = outlineBounds(outline);
  return { points: outlineFromTop(outline), width, height: length };
}

interface BodyProps {
  readonly drawn: DrawnOutline;
  readonly scale: number;
}

/** One round of the outline for each fabric, the most used one outermost, down to the hole or the middle. */
function Rounds({
  drawn,
  scale,
  swatches,
  hole,
}: BodyProps & { readonly swatches: readonly string[]; readonly hole: Hole | null }) {
  const used = swatches.slice(0, ROUNDS);
  const innermost = (hole?.diameter ?? 0) / Math.min(drawn.width, drawn.height);
  const rounds = used.map((swatch, index) => ({
    swatch,
    share: 1 - ((1 - innermost) * index) / used.length,
  }));
  return (
    <>
      <path d={scaledPath(drawn.points, scale)} className={styles['ground']} />
      {rounds.map(({ swatch, share }) => (
        <path
          key={`${swatch} ${String(share)}`}
          d={scaledPath(drawn.points, scale * share)}
          fill={swatch}
          className={styles['seam']}
        />
      ))}
      <path d={scaledPath(drawn.points, scale)} className={styles['edge']} />
    </>
  );
}

function Opening({
  project,
  drawn,
  scale,
  thread,
}: BodyProps & { readonly project: DrawnProject; readonly thread: number }) {
  if (project.hole === null) return null;
  const radius = (project.hole.diameter * scale) / 2;
  const bottom = (drawn.height * scale) / 2;
  const half = Math.max(1, thread * 0.5);
  return (
    <>
      {project.hasSlit && (
        <path
          className={styles['slit']}
          d={`M ${String(-half)} ${String(radius * 0.9)} L ${String(-half)} ${String(bottom + 1)} L ${String(half)} ${String(bottom + 1)} L ${String(half)} ${String(radius * 0.9)} Z`}
        />
      )}
      <circle r={radius} className={styles['hole']} />
    </>
  );
}

function ProjectDimensions({
  project,
  drawn,
  scale,
  clear,
}: BodyProps & { readonly project: DrawnProject; readonly clear: number }) {
  const display = useDisplay().length;
  const [x, y] = [(drawn.width * scale) / 2, (drawn.height * scale) / 2];
  const text = (units: number) => formatLength(lengthFromExact(units, 'nearest'), display);
  const radius = ((project.hole?.diameter ?? 0) * scale) / 2;
  const isRound = project.outline.shape === 'circle' || project.outline.shape === 'square';
  return (
    <>
      <DimensionLine from={{ x: -x, y }} to={{ x, y }} offset={-(clear + 20)} text={text(drawn.width)} />
      {!isRound && (
        <DimensionLine
          from={{ x: -x, y }}
          to={{ x: -x, y: -y }}
          offset={clear + 20}
          text={text(drawn.height)}
        />
      )}
      {project.hole !== null && radius > 24 && (
        <DimensionLine
          from={{ x: -radius, y: 0 }}
          to={{ x: radius, y: 0 }}
          offset={0}
          text={text(project.hole.diameter)}
        />
      )}
    </>
  );
}

/** The outline moved outward by about `by` pixels: exact enough for a line of stitches. */
function grown(drawn: DrawnOutline, scale: number, by: number): readonly EdgePoint[] {
  const [halfWidth, halfHeight] = [(drawn.width * scale) / 2, (drawn.height * scale) / 2];
  const [growX, growY] = [(halfWidth + by) / halfWidth, (halfHeight + by) / halfHeight];
  return drawn.points.map(({ x, y }) => ({ x: x * scale * growX, y: y * scale * growY }));
}

function scaledPath(points: readonly EdgePoint[], scale: number): string {
  return runPath(
    points.map(({ x, y }) => ({ x: x * scale, y: y * scale })),
    true,
  );
}
