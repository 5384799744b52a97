import type { FabricPiece } from '#core/domain/stash';
import { measureOfKind } from '#core/domain/stash-kind';
import styles from './fabric.module.css';

/** The space for the longest and the widest piece of a fabric, in CSS pixels. */
const SPACE = { length: 260, width: 120 };
/** A piece is drawn at least this long and wide, in CSS pixels. */
const MINIMUM = 5;

interface FabricPieceDrawingProps {
  readonly piece: FabricPiece;
  readonly swatch: string;
  readonly largest: { readonly longest: number; readonly widest: number };
  readonly words: string;
}

/** Packs of more items than this are drawn without lines between the items. */
const MAXIMUM_CUTS = 120;

/**
 * A piece of fabric with its selvages at the top and bottom, to the scale of all pieces of its fabric. What is set aside is the
 * end behind the chalk line.
 */
export function FabricPieceDrawing({ piece, swatch, largest, words }: FabricPieceDrawingProps) {
  if (measureOfKind(piece.kind) === 'count') return <span className={styles['pieceDrawing']} />;
  const scale = Math.min(SPACE.length / largest.longest, SPACE.width / largest.widest);
  const long = Math.max(MINIMUM, piece.there * scale);
  const wide = Math.max(MINIMUM, piece.width * scale);
  const held = Math.min(long, piece.held * scale);
  return (
    <span className={styles['pieceDrawing']}>
      <svg
        role="img"
        aria-label={`${words}, to scale`}
        width={long + 2}
        height={wide + 2}
        viewBox={`-1 -1 ${String(long + 2)} ${String(wide + 2)}`}
      >
        <rect width={long} height={wide} fill={swatch} className={styles['fabricEdge']} />
        <path d={cutsBetween(piece, scale, wide)} className={styles['fabricCuts']} />
        {held > 0 && (
          <>
            <rect x={long - held} width={held} height={wide} className={styles['fabricHeld']} />
            <line x1={long - held} x2={long - held} y1={0} y2={wide} className={styles['fabricChalk']} />
          </>
        )}
      </svg>
    </span>
  );
}

/** The lines between the items of a pack. */
function cutsBetween({ unitLength, there }: FabricPiece, scale: number, wide: number): string {
  if (unitLength === null || there / unitLength > MAXIMUM_CUTS) return '';
  let cuts = '';
  for (let at: number = unitLength; at < there; at += unitLength) {
    cuts += `M${String(at * scale)} 0V${String(wide)}`;
  }
  return cuts;
}
