import { useId } from 'react';
import { type RectangleCut, waysToCut } from '#core/stash/cut-rectangle';
import type { FabricPiece } from '#core/domain/stash';
import { formatLength } from '#core/units/format-length';
import type { Length } from '#core/units/length';
import { andList } from '../text/field-problems';
import { sizeWords } from '../text/size-words';
import { Typeset } from '../ui/answers/typeset';
import { useDisplay } from '../ui/base/display';
import { Checkbox } from '../ui/fields/checkbox';
import { LengthField } from '../ui/fields/length-field';
import styles from './cut-size.module.css';

type Piece = Pick<FabricPiece, 'width' | 'there' | 'unitLength'>;

/** What is cut off a piece, and how; kept as a draft. A null width is the whole width. */
export interface CutSizes {
  readonly width: Length | null;
  readonly first: RectangleCut['first'];
  /** The leftovers that are not kept, by their place. */
  readonly thrown: readonly number[];
}

export const WHOLE_WIDTH: CutSizes = { width: null, first: 'across', thrown: [] };

/** What the ledger books for a cut of this length: how much of the piece's length goes, and which leftovers are kept. */
export function bookedCut(
  piece: Piece,
  length: Length,
  sizes: CutSizes,
): Pick<RectangleCut, 'length' | 'leftovers'> {
  const way = wayOf(piece, length, sizes);
  return way === undefined
    ? { length, leftovers: [] }
    : { length: way.length, leftovers: way.leftovers.filter((_one, at) => !sizes.thrown.includes(at)) };
}

/** The ways to cut less than the whole width; none for the whole width, or while the rectangle is larger than the piece. */
function waysOf({ width, there }: Piece, length: Length | null, sizes: CutSizes): readonly RectangleCut[] {
  if (length === null || sizes.width === null || sizes.width === width) return [];
  return waysToCut({ width, length: there }, { width: sizes.width, length });
}

function wayOf(piece: Piece, length: Length | null, sizes: CutSizes): RectangleCut | undefined {
  const ways = waysOf(piece, length, sizes);
  return ways.find(({ first }) => first === sizes.first) ?? ways[0];
}

interface CutWidthProps {
  readonly piece: Piece;
  readonly length: Length | null;
  readonly sizes: CutSizes;
  readonly onChange: (sizes: CutSizes) => void;
}

/** For a cut that is narrower than the piece: its width, which cut comes first, and which leftovers are kept. */
export function CutWidth({ piece, length, sizes, onChange }: CutWidthProps) {
  const display = useDisplay();
  const name = useId();
  if (piece.unitLength !== null) return null;
  const ways = waysOf(piece, length, sizes);
  const way = wayOf(piece, length, sizes);
  return (
    <>
      <LengthField
        label="Width, if less than the whole"
        help={`Across the fabric, off its side. The whole width is ${formatLength(piece.width, display.length)}.`}
        value={sizes.width}
        maximum={piece.width}
        isOptional
        onCommit={(width) => onChange({ ...sizes, width, thrown: [] })}
      />
      {way !== undefined && length !== null && sizes.width !== null && (
        <fieldset className={styles['ways']}>
          <legend className={styles['legend']}>What is left</legend>
          {ways.length > 1 &&
            ways.map((one) => (
              <WayToCut
                key={one.first}
                name={name}
                piece={piece}
                wanted={{ width: sizes.width ?? piece.width, length }}
                way={one}
                isChosen={one === way}
                onChoose={() => onChange({ ...sizes, first: one.first, thrown: [] })}
              />
            ))}
          {way.leftovers.map((leftover, at) => (
            <Checkbox
              key={`${way.first} ${String(at)}`}
              label={`Keep ${sizeWords(leftover, display.length)}`}
              isChecked={!sizes.thrown.includes(at)}
              onChange={(isKept) =>
                onChange({
                  ...sizes,
                  thrown: isKept ? sizes.thrown.filter((one) => one !== at) : [...sizes.thrown, at],
                })
              }
            />
          ))}
        </fieldset>
      )}
    </>
  );
}

interface WayToCutProps {
  /** The name of the group of radio buttons. */
  readonly name: string;
  readonly piece: Piece;
  readonly wanted: { readonly width: Length; readonly length: Length };
  readonly way: RectangleCut;
  readonly isChosen: boolean;
  readonly onChoose: () => void;
}

function WayToCut({ name, piece, wanted, way, isChosen, onChoose }: WayToCutProps) {
  const display = useDisplay();
  const parts = [...way.leftovers, ...(way.stays === null ? [] : [way.stays])];
  const sizes = andList(parts.map((one) => sizeWords(one, display.length)));
  return (
    <label className={styles['way']}>
      <input type="radio" name={name} checked={isChosen} onChange={onChoose} />
      <CutDrawing piece={piece} wanted={wanted} way={way} />
      <Typeset text={`${FIRST_WORDS[way.first]}: ${sizes}`} />
    </label>
  );
}

const FIRST_WORDS: Readonly<Record<RectangleCut['first'], string>> = {
  across: 'Across the whole width first',
  along: 'Along the whole length first',
};

/** The space for a piece, in CSS pixels. */
const SPACE = { length: 150, width: 90 };

/** The piece with its selvages at the top and bottom, as in the stash; the cut is at its near end, and the first cut is the dashed line. */
function CutDrawing({ piece, wanted, way }: Pick<WayToCutProps, 'piece' | 'wanted' | 'way'>) {
  const scale = Math.min(SPACE.length / piece.there, SPACE.width / piece.width);
  const [long, wide] = [piece.there * scale, piece.width * scale];
  const [cutLong, cutWide] = [wanted.length * scale, wanted.width * scale];
  const first =
    way.first === 'across'
      ? `M${String(cutLong)} 0V${String(wide)}`
      : `M0 ${String(cutWide)}H${String(long)}`;
  return (
    <svg
      aria-hidden
      width={long + 2}
      height={wide + 2}
      viewBox={`-1 -1 ${String(long + 2)} ${String(wide + 2)}`}
      className={styles['drawing']}
    >
      <rect width={long} height={wide} className={styles['rest']} />
      <rect width={cutLong} height={cutWide} className={styles['cut']} />
      <path d={first} className={styles['first']} />
    </svg>
  );
}
