import type { Length } from '#core/units/length';
import type { LengthUnit } from '#core/units/length-unit';
import { parseLength } from '#core/units/parse-length';
import { afterPhrase, isMark, type Match, type Tokens, wordAt } from './token';

/** One side of a size. A bare number that is whole may turn out to be a count. */
export type Side =
  | {
      readonly kind: 'length';
      readonly length: Length;
      /** The number as written, and its unit; null if the list's usual unit was taken. */
      readonly text: string;
      readonly unit: string | null;
      /** Whether the unit stands at this number, not only at a later one. */
      readonly hasOwnUnit: boolean;
      readonly whole: number | null;
    }
  | { readonly kind: 'fabric-width' };

type LengthSide = Extract<Side, { readonly kind: 'length' }>;

const FABRIC_WIDTH: readonly string[] = [
  'wof',
  'width of fabric',
  'width of the fabric',
  'the width of fabric',
  'the width of the fabric',
  'fabric width',
  'full width of fabric',
  'full width of the fabric',
  'the full width of the fabric',
  'full width',
  'selvage to selvage',
];
const BEFORE_FABRIC_WIDTH: readonly string[] = ['across', 'from', 'cut'];

/** `WOF` or one of the ways to write it out. */
export function readFabricWidth(tokens: Tokens, at: number): Match<Side> {
  const word = wordAt(tokens, at);
  const start = word !== null && BEFORE_FABRIC_WIDTH.includes(word) ? at + 1 : at;
  const ends = FABRIC_WIDTH.flatMap((phrase) => afterPhrase(tokens, start, phrase) ?? []);
  return ends.length === 0 ? null : { value: { kind: 'fabric-width' }, next: Math.max(...ends) };
}

/** The longest size that a pattern asks for is a border or a backing; more is a slip. */
function lengthOf(text: string, unit: string): Length | null {
  const length = parseLength(`${text} ${unit}`, 'in');
  return length.ok && length.value > 0 ? length.value : null;
}

function readSide(tokens: Tokens, at: number, bareUnit: LengthUnit): Match<Side> {
  const width = readFabricWidth(tokens, at);
  if (width !== null) return width;
  const number = tokens[at];
  if (number?.kind !== 'number') return null;
  const unit = tokens[at + 1];
  const isSizeUnit = unit?.kind === 'unit' && unit.unit !== 'yd';
  const length = lengthOf(number.text, isSizeUnit ? unit.text : bareUnit);
  if (length === null) return null;
  const { text, whole } = number;
  const own = isSizeUnit ? unit.text : null;
  const side: Side = { kind: 'length', length, text, unit: own, hasOwnUnit: isSizeUnit, whole };
  return { value: side, next: isSizeUnit ? at + 2 : at + 1 };
}

/** Sides with a times sign or `by` between them, in the order written: `2 1/2 x 4 1/2 in`, `3 x 2 1/2" x WOF`. */
export function readSides(tokens: Tokens, at: number, bareUnit: LengthUnit): Match<readonly Side[]> {
  const first = readSide(tokens, at, bareUnit);
  if (first === null) return null;
  const sides = [first.value];
  let { next } = first;
  while (sides.length < 4) {
    const start = afterTimes(tokens, afterMeasure(tokens, next));
    const side = start === null ? null : readSide(tokens, start, bareUnit);
    if (side === null) break;
    sides.push(side.value);
    next = side.next;
  }
  return { value: withSharedUnit(sides), next };
}

function afterTimes(tokens: Tokens, at: number): number | null {
  return isMark(tokens, at, 'x', '*') || wordAt(tokens, at) === 'by' ? at + 1 : null;
}

const MEASURES: readonly string[] = ['wide', 'long', 'tall', 'high', 'deep', 'square'];

/** `2 1/2 in wide x 42 in long`: says no more than the order does. `square` is left to the shape. */
export function afterMeasure(tokens: Tokens, at: number): number {
  const word = wordAt(tokens, at);
  return word !== null && word !== 'square' && MEASURES.includes(word) ? at + 1 : at;
}

/** A unit at the end counts for every side before it that has none. */
function withSharedUnit(sides: readonly Side[]): readonly Side[] {
  const last = sides.findLast((side) => side.kind === 'length');
  const unit = last?.unit ?? null;
  return unit === null ? sides : sides.map((side) => (side.kind === 'length' ? inUnit(side, unit) : side));
}

function inUnit(side: LengthSide, unit: string): LengthSide {
  if (side.unit !== null) return side;
  const length = lengthOf(side.text, unit);
  return length === null ? side : { ...side, length, unit };
}

/** Inches and centimeters of one size differ by rounding alone. */
const MOST_APART = 0.06;

/**
 * The same size again in another unit: `2 1/2" (6.4 cm)`, `10 cm / 4 in`. Gives the place after it, or null if there is none or it is
 * another size.
 */
export function afterSameSize(tokens: Tokens, at: number, sides: readonly Side[]): number | null {
  const isOpen = isMark(tokens, at, '(', '[');
  if (!isOpen && !isMark(tokens, at, '/')) return null;
  const again = readSides(tokens, at + 1, 'in');
  if (again?.value.length !== sides.length || again.value.some(isBare)) return null;
  const isSame = again.value.every((side, index) => isNear(side, sides[index]));
  if (!isSame) return null;
  if (!isOpen) return again.next;
  return isMark(tokens, again.next, ')', ']') ? again.next + 1 : null;
}

function isBare(side: Side): boolean {
  return side.kind === 'length' && side.unit === null;
}

function isNear(one: Side, other: Side | undefined): boolean {
  if (one.kind !== 'length' || other?.kind !== 'length') return one.kind === other?.kind;
  return Math.abs(one.length - other.length) <= MOST_APART * other.length;
}
