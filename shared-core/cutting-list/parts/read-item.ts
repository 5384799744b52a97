import type { LengthUnit } from '#core/units/length-unit';
import type { MarkCode } from '../list-reading';
import { ARTICLES, NUMBER_WORDS, SHAPES, TRIANGLES } from '../words/trade-words';
import { afterMeasure, afterSameSize, readFabricWidth, readSides, type Side } from './read-size';
import { isMark, isWordOf, type Match, readWhole, skipWords, type Token, type Tokens, wordAt } from './token';

export type ItemShape = 'square' | 'rectangle' | 'strip' | 'any';

/** Patches or strips of one size, as far as the list says: how many, how large, of what shape. */
export interface ListItem {
  readonly count: number | null;
  readonly sides: readonly Side[];
  readonly shape: ItemShape | null;
  /** Words for the fabric before the shape: `8 light blue squares`. */
  readonly fabric: Tokens;
  readonly problem: MarkCode | null;
}

export interface ItemWords {
  readonly bareUnit: LengthUnit;
  readonly isFabricWord: (word: string) => boolean;
}

interface Gathered {
  readonly count: number | null;
  readonly sides: readonly Side[];
  readonly shape: ItemShape | null;
  readonly fabric: Tokens;
}

const NOTHING: Gathered = { count: null, sides: [], shape: null, fabric: [] };

/** Reads count, size and shape in any order, as long as each is there once. Null if neither a size nor a shape is there. */
export function readItem(tokens: Tokens, at: number, words: ItemWords): Match<ListItem> {
  let gathered = NOTHING;
  let next = at;
  for (;;) {
    const part = readPart(tokens, next, gathered, words) ?? joinedPart(tokens, next, gathered, words);
    if (part === null) break;
    gathered = part.value;
    next = part.next;
  }
  if (gathered.sides.length === 0 && gathered.shape === null) return null;
  if (gathered.count === null && gathered.sides.length === 0) return null;
  return { value: settled(gathered), next };
}

function readPart(tokens: Tokens, at: number, gathered: Gathered, words: ItemWords): Match<Gathered> {
  return (
    readShape(tokens, at, gathered) ??
    readFabricAdjective(tokens, at, gathered, words) ??
    readCount(tokens, at, gathered, words) ??
    readSize(tokens, at, gathered, words) ??
    readSecondSide(tokens, at, gathered, words)
  );
}

/** `half-square triangles` is the name of a unit and not a shape that is cut. */
function readShape(tokens: Tokens, at: number, gathered: Gathered): Match<Gathered> {
  const shape = SHAPES.get(wordAt(tokens, at) ?? '');
  if (shape === undefined || isWordOf(tokens, at + 1, TRIANGLES)) return null;
  const isFirst = gathered.shape === null && (gathered.count !== null || gathered.sides.length > 0);
  const startsItem = gathered.shape === null && gathered.count === null && shape !== 'any';
  const isShort = isWordOf(tokens, at, SHORT_FORMS) && isMark(tokens, at + 1, '.');
  if (isFirst || startsItem) return { value: { ...gathered, shape }, next: isShort ? at + 2 : at + 1 };
  const isSaidAgain = gathered.shape !== null && shape === 'any' && SHAPES.has(wordAt(tokens, at - 1) ?? '');
  return isSaidAgain ? { value: gathered, next: at + 1 } : null;
}

const SHORT_FORMS = new Set(['sq', 'sqs', 'rect', 'rects', 'pc', 'pcs']);

function readFabricAdjective(
  tokens: Tokens,
  at: number,
  gathered: Gathered,
  { isFabricWord }: ItemWords,
): Match<Gathered> {
  const token = tokens[at];
  const word = wordAt(tokens, at);
  if (token === undefined || word === null || gathered.count === null || gathered.shape !== null) return null;
  return isFabricWord(word)
    ? { value: { ...gathered, fabric: [...gathered.fabric, token] }, next: at + 1 }
    : null;
}

function readCount(tokens: Tokens, at: number, gathered: Gathered, words: ItemWords): Match<Gathered> {
  if (gathered.count !== null) return null;
  const count = countAt(tokens, at, gathered, words);
  return count === null ? null : { value: { ...gathered, count: count.value }, next: count.next };
}

function countAt(tokens: Tokens, at: number, { sides, shape }: Gathered, words: ItemWords): Match<number> {
  const written = NUMBER_WORDS.get(wordAt(tokens, at) ?? '');
  if (written !== undefined) {
    return startsPart(tokens, at + 1, words) ? { value: written, next: at + 1 } : null;
  }
  const whole = readWhole(tokens, at);
  if (whole === null || whole.value === 0) return null;
  if (isMark(tokens, at, '(', '[')) return whole;
  const follows = tokens[whole.next];
  if (follows?.kind === 'unit' || isMark(tokens, whole.next, 'x', '*')) return null;
  const isAfterSize = sides.length > 0;
  const start = afterArticles(tokens, afterJoint(tokens, whole.next));
  return isAfterSize || (shape === null && startsPart(tokens, start, words)) ? whole : null;
}

/** Whether a size, a shape or the color of one begins here. */
function startsPart(tokens: Tokens, at: number, { isFabricWord }: ItemWords): boolean {
  const word = wordAt(tokens, at);
  if (word !== null) return SHAPES.has(word) || isFabricWord(word) || MEASURING.has(word);
  return tokens[isMark(tokens, at, '(') ? at + 1 : at]?.kind === 'number';
}

function readSize(tokens: Tokens, at: number, gathered: Gathered, { bareUnit }: ItemWords): Match<Gathered> {
  if (gathered.sides.length > 0) return null;
  const isOpen = gathered.count !== null && isMark(tokens, at, '(');
  const read = readSides(tokens, isOpen ? at + 1 : at, bareUnit);
  const sides = read !== null && isOpen ? closed(tokens, read) : read;
  if (sides === null || sides.value.every((side) => side.kind === 'fabric-width')) return null;
  const next = afterMeasure(tokens, sides.next);
  return {
    value: { ...gathered, sides: sides.value },
    next: afterSameSize(tokens, next, sides.value) ?? next,
  };
}

/** `12 (2 1/2 in) squares`. */
function closed<Value>(tokens: Tokens, read: NonNullable<Match<Value>>): Match<Value> {
  return isMark(tokens, read.next, ')') ? { value: read.value, next: read.next + 1 } : null;
}

/** `(3) strips 2 1/2 in wide across the width of fabric`, `(3) 2 1/2 in strips x WOF`. */
function readSecondSide(
  tokens: Tokens,
  at: number,
  gathered: Gathered,
  { bareUnit }: ItemWords,
): Match<Gathered> {
  if (gathered.sides.length !== 1 || gathered.shape === 'square') return null;
  const isTimes = isMark(tokens, at, 'x', '*') || wordAt(tokens, at) === 'by';
  const start = isTimes || isMark(tokens, at, ',') ? at + 1 : at;
  const more = isTimes ? readSides(tokens, start, bareUnit) : null;
  const width = readFabricWidth(tokens, start);
  const side = width ?? (more?.value.length === 1 ? { value: more.value[0], next: more.next } : null);
  if (side?.value === undefined) return null;
  return {
    value: { ...gathered, sides: [...gathered.sides, side.value] },
    next: afterMeasure(tokens, side.next),
  };
}

const MEASURING = new Set([
  'measuring',
  'measure',
  'measures',
  'that',
  'which',
  'at',
  'size',
  'sized',
  'of',
  'ea',
]);
const COUNTING = new Set([
  'cut',
  'make',
  'need',
  'qty',
  'quantity',
  'total',
  'number',
  'pieces',
  'pcs',
  'ea',
]);

/** A part after a comma, colon or dash, or after a word that ties count and size. Only if the item still lacks that part. */
function joinedPart(tokens: Tokens, at: number, gathered: Gathered, words: ItemWords): Match<Gathered> {
  const isCounted = gathered.count !== null;
  const isSized = gathered.sides.length > 0;
  if (isCounted === isSized) return null;
  // `4 1/2 in squares × 12`
  const isTimesCount = !isCounted && gathered.shape !== null && isMark(tokens, at, 'x');
  let next = isTimesCount ? at + 1 : afterJoint(tokens, at);
  const ties = isCounted ? MEASURING : COUNTING;
  next = skipWords(tokens, next, ties);
  next = afterJoint(tokens, next);
  if (next === at) return null;
  const part = readPart(tokens, next, gathered, words);
  if (part === null) return null;
  const { count, sides } = part.value;
  return count === gathered.count && sides === gathered.sides ? null : part;
}

function afterJoint(tokens: Tokens, at: number): number {
  return isMark(tokens, at, ',', ':', '-', '@', '|', '\t', '=') ? at + 1 : at;
}

function afterArticles(tokens: Tokens, at: number): number {
  return isWordOf(tokens, at, ARTICLES) ? at + 1 : at;
}

/** Tells a count from a side where both stand before times signs: `3 x 2 1/2 in x WOF`, `48 x 2 1/2 in squares`. */
function settled({ count, sides, shape, fabric }: Gathered): ListItem {
  const item = { count, sides, shape, fabric, problem: null };
  const [first, second] = sides;
  const isCountLike = first?.kind === 'length' && !first.hasOwnUnit && first.whole !== null;
  if (sides.length > 3 || (sides.length === 3 && (count !== null || !isCountLike))) {
    return { ...item, problem: 'number-unclear' };
  }
  if (sides.length === 3 && isCountLike)
    return checked({ ...item, count: first.whole, sides: sides.slice(1) });
  if (count === null && sides.length === 2 && isCountLike && second?.kind === 'length') {
    if (shape === 'strip') return { ...item, problem: 'number-unclear' };
    if (shape === 'square' && first.text !== second.text) {
      return checked({ ...item, count: first.whole, sides: sides.slice(1) });
    }
  }
  return checked(item);
}

function checked(item: ListItem): ListItem {
  const { count, sides, shape } = item;
  if (count === null) return { ...item, problem: 'no-count' };
  const [first, second] = sides;
  if (first?.kind === 'length' && second?.kind === 'length' && shape === 'square') {
    return first.length === second.length ? item : { ...item, problem: 'sides-differ' };
  }
  return item;
}

/** The words of some tokens as the line writes them. */
export function textOf(line: string, tokens: readonly Token[]): string {
  const [first, last] = [tokens.at(0), tokens.at(-1)];
  return first === undefined || last === undefined ? '' : line.slice(first.from, last.to);
}
