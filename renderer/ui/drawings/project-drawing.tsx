import type { Hole, Outline } from '#core/domain/outline';
import type { Stage } from '#core/domain/stage';
import { formatLength } from '#core/units/format-length';
import { lengthFromExact } from '#core/units/length';
import { pieceWords } from '#renderer/text/piece-words';
import { progressWords } from '#renderer/text/stage-words';
import { DimensionLine } from './dimension-line';
import { useDisplay } from '../base/display';
import { type DrawnOutline, type EdgePoint, outlinePoints } from './outline-points';
import { ProgressStitches, runPath, type StitchedStage } from './progress-stitches';
import styles from './project-drawing.module.css';

export interface DrawnPiece {
  readonly outline: Outline;
  readonly hole: Hole | null;
  readonly hasSlit: boolean;
}

interface ProjectDrawingProps {
  readonly piece: DrawnPiece;
  /** Colors of its fabrics, most used first; without any the piece is drawn in plain fabric. */
  readonly swatches?: readonly string[];
  readonly stages?: readonly (StitchedStage & Pick<Stage, 'name'>)[];
  /** The longest side of the drawing in CSS pixels. */
  readonly size: number;
  /** Written at the gap of a stage that is away; left out where the drawing is small. */
  readonly awayWords?: string | null;
  readonly hasDimensions?: boolean;
  /** Where the piece is named and described right beside, the drawing is silent. */
  readonly isSilent?: boolean;
}

const ROUNDS = 5;
const DIMENSION_ROOM = 44;

/** A piece drawn as itself: its outline to scale in rounds of its fabrics, its hole and slit, its progress sewn round the edge. */
export function ProjectDrawing(props: ProjectDrawingProps) {
  const {
    piece,
    swatches = [],
    stages = [],
    size,
    awayWords = null,
    hasDimensions = false,
    isSilent = false,
  } = props;
  const display = useDisplay().length;
  const drawn = outlinePoints(piece.outline);
  const thread = Math.max(2.2, size / 75);
  const clear = stages.length === 0 ? thread : thread * 5;
  const room = hasDimensions ? DIMENSION_ROOM : 0;
  const scale = (size - 2 * clear - room) / Math.max(drawn.width, drawn.height);
  const [width, height] = [drawn.width * scale + 2 * clear + room, drawn.height * scale + 2 * clear + room];
  const words = `${pieceWords(piece, display)}.${stages.length === 0 ? '' : ` ${progressWords(stages)}`}`;
  return (
    <svg
      className={styles['drawing']}
      width={width}
      height={height}
      viewBox={`${String(-(drawn.width * scale) / 2 - clear - room)} ${String(-(drawn.height * scale) / 2 - clear)} ${String(width)} ${String(height)}`}
      {...(isSilent ? { 'aria-hidden': true } : { role: 'img', 'aria-label': words })}
    >
      <Rounds drawn={drawn} scale={scale} swatches={swatches} hole={piece.hole} />
      <Opening piece={piece} drawn={drawn} scale={scale} thread={thread} />
      <ProgressStitches
        edge={grown(drawn, scale, thread * 2.4)}
        stages={stages}
        thread={thread}
        awayWords={size < 200 ? null : awayWords}
      />
      {hasDimensions && <PieceDimensions piece={piece} drawn={drawn} scale={scale} clear={clear} />}
    </svg>
  );
}

interface BodyProps {
  readonly drawn: DrawnOutline;
  readonly scale: number;
}

/** One round of the outline for each fabric, the most used outermost, down to the hole or the middle. */
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
  piece,
  drawn,
  scale,
  thread,
}: BodyProps & { readonly piece: DrawnPiece; readonly thread: number }) {
  if (piece.hole === null) return null;
  const radius = (piece.hole.diameter * scale) / 2;
  const bottom = (drawn.height * scale) / 2;
  const half = Math.max(1, thread * 0.5);
  return (
    <>
      {piece.hasSlit && (
        <path
          className={styles['slit']}
          d={`M ${String(-half)} ${String(radius * 0.9)} L ${String(-half)} ${String(bottom + 1)} L ${String(half)} ${String(bottom + 1)} L ${String(half)} ${String(radius * 0.9)} Z`}
        />
      )}
      <circle r={radius} className={styles['hole']} />
    </>
  );
}

function PieceDimensions({
  piece,
  drawn,
  scale,
  clear,
}: BodyProps & { readonly piece: DrawnPiece; readonly clear: number }) {
  const display = useDisplay().length;
  const [x, y] = [(drawn.width * scale) / 2, (drawn.height * scale) / 2];
  const text = (units: number) => formatLength(lengthFromExact(units, 'nearest'), display);
  const radius = ((piece.hole?.diameter ?? 0) * scale) / 2;
  const isRound = piece.outline.shape === 'circle' || piece.outline.shape === 'square';
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
      {piece.hole !== null && radius > 24 && (
        <DimensionLine
          from={{ x: -radius, y: 0 }}
          to={{ x: radius, y: 0 }}
          offset={0}
          text={text(piece.hole.diameter)}
        />
      )}
    </>
  );
}

/** The outline moved outward by `by` pixels, near enough for a line of stitches. */
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
