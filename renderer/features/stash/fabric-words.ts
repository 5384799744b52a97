import type { PieceKind, FabricPiece } from '#core/domain/stash';
import { countOfLength, measureOfKind } from '#core/domain/stash-kind';
import { formatLength, formatYardage, yardageStep } from '#core/units/format-length';
import { type Length, lengthFromUnits, UNITS_PER_METER, UNITS_PER_YARD } from '#core/units/length';
import { roundDownTo } from '#core/units/rounding';
import type { LengthDisplay } from '#core/units/unit-system';
import { andList } from '#renderer/text/field-problems';

/** A kind of fabric as a choice, and as one and several in a sentence. What is measured off has no number: it is told by length. */
interface KindWords {
  readonly name: string;
  readonly one: string;
  readonly several: string;
}

export const KIND_WORDS: Readonly<Record<PieceKind, KindWords>> = {
  yardage: { name: 'Off the roll', one: '', several: '' },
  'fat-quarter': counted('fat quarter'),
  'fat-eighth': counted('fat eighth'),
  'precut-strips': { ...counted('cut strip'), name: 'Strips, cut' },
  'precut-squares': { ...counted('cut square'), name: 'Squares, cut' },
  panel: counted('panel'),
  leftover: counted('leftover'),
  'bias-made-up': { ...measured('of bias'), name: 'Bias, made up' },
  backing: { ...measured('of backing'), name: 'Backing' },
  'wide-backing': { ...measured('of wide backing'), name: 'Wide backing' },
  batting: { ...measured('of batting'), name: 'Batting' },
  'batting-package': { ...counted('package of batting', 'packages of batting'), name: 'Batting, packed' },
  thread: { ...counted('spool of thread', 'spools of thread'), name: 'Thread' },
  needles: { ...counted('packet of needles', 'packets of needles'), name: 'Needles' },
  notions: { ...counted('notion'), name: 'Notions' },
};

/** What the words need of a piece; `length` is what there is of it, or what is free. */
export interface Stock {
  readonly kind: PieceKind;
  readonly length: Length;
  /** The length of one of what is told by number. */
  readonly unitLength: Length | null;
}

/** `2¾ yd and 1 leftover`: what is measured as one length a kind, the rest counted. Empty where there is nothing. */
export function stockWords(stock: readonly Stock[], display: LengthDisplay): string {
  const kinds = Object.keys(KIND_WORDS) as PieceKind[];
  const parts = kinds.flatMap((kind) => {
    const ofKind = stock.filter((one) => one.kind === kind && one.length > 0);
    if (ofKind.length === 0) return [];
    if (measureOfKind(kind) !== 'length') return [countWords(kind, sumOf(ofKind, countOf))];
    const total = lengthFromUnits(sumOf(ofKind, (one) => one.length));
    return [`${lengthThere(total, display)} ${KIND_WORDS[kind].one}`.trimEnd()];
  });
  return andList(parts);
}

/** `1 fat quarter`, `2½ spools of thread`. */
function countWords(kind: PieceKind, count: number): string {
  const { one, several } = KIND_WORDS[kind];
  return `${numberWords(count)} ${count === 1 ? one : several}`;
}

/** Halves and quarters as fractions, which is how things are halved; anything else in hundredths. */
function numberWords(count: number): string {
  const whole = Math.trunc(count);
  const fraction = { 0.25: '¼', 0.5: '½', 0.75: '¾' }[count - whole];
  if (fraction === undefined) return String(count);
  return whole === 0 ? fraction : `${String(whole)}${fraction}`;
}

function countOf({ length, unitLength }: Stock): number {
  return unitLength === null ? 1 : countOfLength(length, unitLength);
}

function sumOf<Item>(items: readonly Item[], of: (item: Item) => number): number {
  return items.reduce((sum, item) => sum + of(item), 0);
}

/** Everything there of these pieces. */
export function thereOf(pieces: readonly FabricPiece[]): readonly Stock[] {
  return pieces.map(({ kind, there, unitLength }) => ({ kind, length: there, unitLength }));
}

/** What nobody has spoken for: `1¼ yd free`; null where nothing is set aside. */
export function freeWords(pieces: readonly FabricPiece[], display: LengthDisplay): string | null {
  if (pieces.every(({ held }) => held <= 0)) return null;
  const free = pieces.map((piece) => ({ ...piece, length: freeLength(piece) }));
  const words = stockWords(free, display);
  if (words === '') return 'all of it set aside';
  return words === stockWords(thereOf(pieces), display) ? 'a part set aside' : `${words} free`;
}

/** `8 in more spoken for than there is`; null where there is enough. */
export function overbookedWords(
  piece: Pick<FabricPiece, 'there' | 'held' | 'kind' | 'unitLength'>,
  display: LengthDisplay,
): string | null {
  const over = piece.held - piece.there;
  if (over <= 0) return null;
  return `${amountBooked({ ...piece, length: lengthFromUnits(over) }, display)} more spoken for than there is`;
}

/** What is free of a piece, never less than nothing: more may be set aside than a count found. */
export function freeLength({ there, held }: Pick<FabricPiece, 'there' | 'held'>): Length {
  return lengthFromUnits(Math.max(0, there - held));
}

/** `2¾ yd`, rounded down so that nothing is promised that is not there; below half a yard or meter in inches or centimeters. */
export function lengthThere(length: Length, display: LengthDisplay): string {
  if (length < halfOfShopUnit(display)) return formatLength(length, display, 'down');
  return formatYardage(lengthFromUnits(roundDownTo(length, yardageStep(display))), display);
}

/** A length by which something was booked, as exact as the ruler: `2 yd` where it is whole eighths of it, else `37½ in`. */
export function lengthBooked(length: Length, display: LengthDisplay): string {
  const isWhole = length >= halfOfShopUnit(display) && length % yardageStep(display) === 0;
  return isWhole ? formatYardage(length, display) : formatLength(length, display);
}

/** How much was booked of a piece, in its own measure: a length, or a number of what it is made of. */
export function amountBooked({ length, kind, unitLength }: Stock, display: LengthDisplay): string {
  return unitLength === null
    ? lengthBooked(length, display)
    : countWords(kind, countOf({ length, kind, unitLength }));
}

/** What is free of a piece, in its own measure. */
export function amountFree(piece: FabricPiece, display: LengthDisplay): string {
  const length = freeLength(piece);
  return piece.unitLength === null ? lengthFree(length, display) : numberWords(countOf({ ...piece, length }));
}

/** What there is of a piece: `42 × 99 in`, `38 of 42 × 2½ in`, `5`. */
export function pieceStock(piece: Stock & { readonly width: Length }, display: LengthDisplay): string {
  const { unitLength, kind } = piece;
  if (unitLength === null) return pieceSize(piece, display);
  const count = numberWords(countOf(piece));
  if (measureOfKind(kind) === 'count') return count;
  return `${count} of ${pieceSize({ width: piece.width, length: unitLength }, display)}`;
}

/** What is free of a piece: rounded down to what a shop measures from a yard or meter up, exact below. */
export function lengthFree(length: Length, display: LengthDisplay): string {
  const isLong = length >= 2 * halfOfShopUnit(display);
  return isLong ? lengthThere(length, display) : lengthBooked(length, display);
}

/** Half a yard or half a meter: shorter fabric is spoken of by the ruler. */
function halfOfShopUnit({ system }: LengthDisplay): number {
  return (system === 'inch' ? UNITS_PER_YARD : UNITS_PER_METER) / 2;
}

/** `42 × 99 in`, across by along, both rounded down; the unit once where the sides share it. */
export function pieceSize(
  { width, length }: { readonly width: Length; readonly length: Length },
  display: LengthDisplay,
): string {
  const [across, along] = [formatLength(width, display, 'down'), formatLength(length, display, 'down')];
  const unit = / \S+$/.exec(along)?.[0] ?? '';
  return `${unit !== '' && across.endsWith(unit) ? across.slice(0, -unit.length) : across} × ${along}`;
}

/** A piece by its kind and size: `1¼ yd`, `a fat quarter, 22 × 18 in`, `40 cut strips, 42 × 2½ in`. */
export function pieceInWords(piece: Stock & { readonly width: Length }, display: LengthDisplay): string {
  const { kind, width, length, unitLength } = piece;
  const { one } = KIND_WORDS[kind];
  if (unitLength !== null) {
    const words = countWords(kind, countOf(piece));
    return measureOfKind(kind) === 'count'
      ? words
      : `${words}, ${pieceSize({ width, length: unitLength }, display)}`;
  }
  if (measureOfKind(kind) === 'length') return `${lengthBooked(length, display)} ${one}`.trimEnd();
  return `a ${one}, ${pieceSize({ width, length }, display)}`;
}

function counted(one: string, several = `${one}s`): KindWords {
  return { name: one.charAt(0).toUpperCase() + one.slice(1), one, several };
}

function measured(words: string): Omit<KindWords, 'name'> {
  return { one: words, several: words };
}
