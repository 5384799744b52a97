import { type FabricPiece, freeOf, type PieceKind } from '#core/domain/stash';
import { countOfLength, isCutDown, measureOfKind } from '#core/domain/stash-kind';
import { formatLength, formatYardage, yardageStep } from '#core/units/format-length';
import { type Length, lengthFromUnits, UNITS_PER_METER, UNITS_PER_YARD } from '#core/units/length';
import { roundDownTo } from '#core/units/rounding';
import type { LengthDisplay } from '#core/units/unit-system';
import { andList } from '#renderer/text/field-problems';

/** The name of a kind as a choice, and its words for one and for several. Kinds measured by length have the same words for both. */
interface KindWords {
  readonly name: string;
  readonly one: string;
  readonly several: string;
}

export const KIND_WORDS: Readonly<Record<PieceKind, KindWords>> = {
  yardage: { name: 'By the yard', one: '', several: '' },
  'fat-quarter': counted('fat quarter'),
  'fat-eighth': counted('fat eighth'),
  'precut-strips': counted('precut strip'),
  'precut-squares': counted('precut square'),
  panel: counted('panel'),
  leftover: counted('leftover'),
  'bias-made-up': { ...measured('of premade bias'), name: 'Premade bias' },
  backing: { ...measured('of backing'), name: 'Backing' },
  'wide-backing': { ...measured('of wide backing'), name: 'Wide backing' },
  batting: { ...measured('of batting'), name: 'Batting' },
  'batting-package': { ...counted('package of batting', 'packages of batting'), name: 'Packaged batting' },
  thread: { ...counted('spool of thread', 'spools of thread'), name: 'Thread' },
  needles: { ...counted('pack of needles', 'packs of needles'), name: 'Needles' },
  notions: { ...counted('notion'), name: 'Notions' },
};

/** An amount of a kind of fabric; `length` is what is there or what is free, as the caller chooses. */
export interface Stock {
  readonly kind: PieceKind;
  readonly length: Length;
  /** The length of one item, for fabric counted in items. */
  readonly unitLength: Length | null;
}

/** `2¾ yd and 1 leftover`: one length for each kind that is measured, the rest counted. Empty if there is nothing. */
export function stockWords(stock: readonly Stock[], display: LengthDisplay): string {
  const kinds = Object.keys(KIND_WORDS) as PieceKind[];
  const parts = kinds.flatMap((kind) => {
    const ofKind = stock.filter((one) => one.kind === kind && one.length > 0);
    if (ofKind.length === 0) return [];
    if (measureOfKind(kind) !== 'length') return [countWords(kind, sumOf(ofKind, countOf))];
    const total = lengthFromUnits(sumOf(ofKind, (one) => one.length));
    return [`${roundedLength(total, display)} ${KIND_WORDS[kind].one}`.trimEnd()];
  });
  return andList(parts);
}

/** `1 fat quarter`, `2½ spools of thread`. */
function countWords(kind: PieceKind, count: number): string {
  const { one, several } = KIND_WORDS[kind];
  return `${numberWords(count)} ${count === 1 ? one : several}`;
}

/** Halves and quarters as fractions, anything else in hundredths. */
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

/** A fat quarter that was cut into counts as a leftover. */
function kindNow({ kind, width, there }: Pick<FabricPiece, 'kind' | 'width' | 'there'>): PieceKind {
  return isCutDown(kind, width, there) ? 'leftover' : kind;
}

/** All the fabric of these pieces, free or not. */
export function stockOf(pieces: readonly FabricPiece[]): readonly Stock[] {
  return pieces.map((piece) => ({ ...piece, kind: kindNow(piece), length: piece.there }));
}

/** What is free, as `1¼ yd free`; null if nothing is set aside. */
export function freeWords(pieces: readonly FabricPiece[], display: LengthDisplay): string | null {
  if (pieces.every(({ held }) => held <= 0)) return null;
  const free = pieces.map((piece) => ({ ...piece, kind: kindNow(piece), length: freeOf(piece) }));
  const words = stockWords(free, display);
  if (words === '') return 'all of it set aside';
  return words === stockWords(stockOf(pieces), display) ? 'partly set aside' : `${words} free`;
}

/** `8 in more set aside than there is`; null if there is enough. */
export function overbookedWords(
  piece: Pick<FabricPiece, 'there' | 'held' | 'kind' | 'unitLength'>,
  display: LengthDisplay,
): string | null {
  const over = piece.held - piece.there;
  if (over <= 0) return null;
  return `${bookedAmount({ ...piece, length: lengthFromUnits(over) }, display)} more set aside than there is`;
}

/** `2¾ yd`, rounded down so that it never promises too much; below half a yard or meter in inches or centimeters. */
export function roundedLength(length: Length, display: LengthDisplay): string {
  if (length < halfOfShopUnit(display)) return formatLength(length, display, 'down');
  return formatYardage(lengthFromUnits(roundDownTo(length, yardageStep(display))), display);
}

/** A booked length, as exact as the ruler: `2 yd` for whole eighths of a yard, else `37½ in`. */
export function bookedLength(length: Length, display: LengthDisplay): string {
  const isWhole = length >= halfOfShopUnit(display) && length % yardageStep(display) === 0;
  return isWhole ? formatYardage(length, display) : formatLength(length, display);
}

/** A booked amount in the measure of its kind: a length, or a number of items. */
export function bookedAmount({ length, kind, unitLength }: Stock, display: LengthDisplay): string {
  return unitLength === null
    ? bookedLength(length, display)
    : countWords(kind, countOf({ length, kind, unitLength }));
}

/** The free amount of a piece in the measure of its kind. */
export function freeAmount(piece: FabricPiece, display: LengthDisplay): string {
  const length = freeOf(piece);
  return piece.unitLength === null
    ? freeLengthWords(length, display)
    : numberWords(countOf({ ...piece, length }));
}

/** The stock of a piece: `42 × 99 in`, `38 of 42 × 2½ in`, `5`. */
export function pieceStock(piece: Stock & { readonly width: Length }, display: LengthDisplay): string {
  const { unitLength, kind } = piece;
  if (unitLength === null) return pieceSize(piece, display);
  const count = numberWords(countOf(piece));
  if (measureOfKind(kind) === 'count') return count;
  return `${count} of ${pieceSize({ width: piece.width, length: unitLength }, display)}`;
}

/** A free length: from a yard or meter up rounded down as a shop measures, exact below. */
export function freeLengthWords(length: Length, display: LengthDisplay): string {
  const isLong = length >= 2 * halfOfShopUnit(display);
  return isLong ? roundedLength(length, display) : bookedLength(length, display);
}

/** Half a yard or half a meter; shorter lengths are shown in inches or centimeters. */
function halfOfShopUnit({ system }: LengthDisplay): number {
  return (system === 'inch' ? UNITS_PER_YARD : UNITS_PER_METER) / 2;
}

/** `42 × 99 in`, across by along, both rounded down; the unit only once if the sides share it. */
export function pieceSize(
  { width, length }: { readonly width: Length; readonly length: Length },
  display: LengthDisplay,
): string {
  const [across, along] = [formatLength(width, display, 'down'), formatLength(length, display, 'down')];
  const unit = / \S+$/.exec(along)?.[0] ?? '';
  return `${unit !== '' && across.endsWith(unit) ? across.slice(0, -unit.length) : across} × ${along}`;
}

/** A piece by its kind and size: `1¼ yd`, `a fat quarter, 22 × 18 in`, `40 precut strips, 42 × 2½ in`. */
export function pieceInWords(piece: Stock & { readonly width: Length }, display: LengthDisplay): string {
  const { kind, width, length, unitLength } = piece;
  const { one } = KIND_WORDS[kind];
  if (unitLength !== null) {
    const words = countWords(kind, countOf(piece));
    return measureOfKind(kind) === 'count'
      ? words
      : `${words}, ${pieceSize({ width, length: unitLength }, display)}`;
  }
  if (measureOfKind(kind) === 'length') return `${bookedLength(length, display)} ${one}`.trimEnd();
  return `a ${one}, ${pieceSize({ width, length }, display)}`;
}

function counted(one: string, several = `${one}s`): KindWords {
  return { name: one.charAt(0).toUpperCase() + one.slice(1), one, several };
}

function measured(words: string): Omit<KindWords, 'name'> {
  return { one: words, several: words };
}
