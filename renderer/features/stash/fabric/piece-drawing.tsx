import type { FabricPiece } from '#core/domain/stash';
import { measureOfKind } from '#core/domain/stash-kind';
import styles from './fabric.module.css';

/** The room for the longest and the widest piece of a fabric, in CSS pixels. */
const ROOM = { length: 260, width: 120 };
const LEAST = 5;

interface PieceDrawingProps {
  readonly piece: FabricPiece;
  readonly swatch: string;
  readonly largest: { readonly longest: number; readonly widest: number };
  readonly words: string;
}

const CUTS_DRAWN = 120;

/**
 * A piece laid down with its selvages above and below, to the scale of all pieces of its fabric. What is set aside is the
 * chalked end of it.
 */
export function PieceDrawing({ piece, swatch, largest, words }: PieceDrawingProps) {
  if (measureOfKind(piece.kind) === 'count') return <span className={styles['pieceDrawing']} />;
  const scale = Math.min(ROOM.length / largest.longest, ROOM.width / largest.widest);
  const long = Math.max(LEAST, piece.there * scale);
  const wide = Math.max(LEAST, piece.width * scale);
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

/** Where one of a pack ends and the next begins. */
function cutsBetween({ unitLength, there }: FabricPiece, scale: number, wide: number): string {
  if (unitLength === null || there / unitLength > CUTS_DRAWN) return '';
  let cuts = '';
  for (let at: number = unitLength; at < there; at += unitLength) {
    cuts += `M${String(at * scale)} 0V${String(wide)}`;
  }
  return cuts;
}
