import { NUMBER_WORDS, TRIANGLES } from '../words/trade-words';
import { isMark, isWordOf, type Match, readWhole, skipWords, type Tokens, wordAt } from './token';

/** How squares are cut on the diagonal. */
export interface ReadDiagonals {
  /** Null if the words do not settle it. */
  readonly cuts: 1 | 2 | null;
  /** `each`, `all`, `these`: maybe more than the patches named last. */
  readonly isOfSeveral: boolean;
  /** `all`, `both`, `these`: surely more than one kind, or every one of it. */
  readonly isOfAll: boolean;
}

const ALL = new Set(['all', 'these', 'both']);
const SEVERAL = new Set(['each', 'all', 'these', 'both', 'every']);
const OBJECTS = new Set([
  ...SEVERAL,
  ...[
    'the',
    'them',
    'it',
    'square',
    'squares',
    'rectangle',
    'rectangles',
    'in',
    'into',
    'on',
    'along',
    'a',
    'one',
  ],
  ...[
    'to',
    'from',
    'corner',
    'opposite',
    'half',
    'halves',
    'quarters',
    'fourths',
    'once',
    'twice',
    'time',
    'times',
  ],
  ...['diagonal', 'diagonals', 'diagonally', 'both', 'ways', 'across'],
]);
const VERBS = new Set(['cut', 'subcut', 'slice', 'halve', 'quarter', 'halved', 'quartered', 'sliced']);
const ONCE = new Set(['once', 'half', 'halves', 'halve', 'halved', 'one']);
const TWICE = new Set(['twice', 'quarters', 'fourths', 'quarter', 'quartered', 'ways']);

const MOST_WORDS = 12;

/** `cut once on the diagonal`, `cut each square in half diagonally`, `cut twice, corner to corner`, `2x on the diagonal`. */
export function readDiagonals(tokens: Tokens, at: number): Match<ReadDiagonals> {
  const hasVerb = isWordOf(tokens, at, VERBS);
  let next = hasVerb ? at + 1 : at;
  const words: string[] = hasVerb ? [wordAt(tokens, at) ?? ''] : [];
  const times = timesAt(tokens, next);
  if (times !== null) {
    words.push(times.value);
    next = times.next;
  }
  while (words.length < MOST_WORDS && isWordOf(tokens, next, OBJECTS) && !isCountOfSquares(tokens, next)) {
    words.push(wordAt(tokens, next) ?? '');
    next += 1;
  }
  while (['into', 'to', 'in'].includes(words.at(-1) ?? '')) {
    words.pop();
    next -= 1;
  }
  if (!saysDiagonal(words) || (!hasVerb && !startsAlone(words))) return null;
  return {
    value: {
      cuts: cutsOf(words),
      isOfSeveral: words.some((word) => SEVERAL.has(word)),
      isOfAll: words.some((word) => ALL.has(word)),
    },
    next,
  };
}

/** In `two squares`, `two` counts. */
function isCountOfSquares(tokens: Tokens, at: number): boolean {
  return (
    NUMBER_WORDS.has(wordAt(tokens, at) ?? '') && isWordOf(tokens, at + 1, new Set(['squares', 'square']))
  );
}

function timesAt(tokens: Tokens, at: number): Match<string> {
  const whole = readWhole(tokens, at);
  if (whole === null || !isMark(tokens, whole.next, 'x') || whole.value > 2) return null;
  return { value: whole.value === 1 ? 'once' : 'twice', next: whole.next + 1 };
}

function saysDiagonal(words: readonly string[]): boolean {
  const isCorners = words.filter((word) => word === 'corner').length === 2;
  return isCorners || words.some((word) => word.startsWith('diagonal'));
}

function startsAlone([word, second]: readonly string[]): boolean {
  if (word === 'in') return second === 'half' || second === 'quarters';
  return word !== undefined && ['once', 'twice', 'diagonally', 'halved', 'quartered'].includes(word);
}

/** `cut in half twice on the diagonal` is twice: the number decides where it is said. */
function cutsOf(words: readonly string[]): 1 | 2 | null {
  if (words.includes('once') !== words.includes('twice')) return words.includes('once') ? 1 : 2;
  const isOnce = words.some((word) => ONCE.has(word));
  const isBoth = words.includes('both') && words.some((word) => word === 'diagonals' || word === 'ways');
  const isTwice = isBoth || words.some((word) => TWICE.has(word));
  if (isOnce === isTwice) return null;
  return isOnce ? 1 : 2;
}

const LEAD = new Set(
  `to for into make makes making yield yields yielding get gets give gives giving create a total of you will have be there are
  so that result in resulting`.split(/\s+/u),
);
const TRIANGLE_ADJECTIVES = new Set([
  'half',
  'quarter',
  'square',
  'setting',
  'side',
  'corner',
  'large',
  'small',
]);
const AFTER_TRIANGLES = new Set(['total', 'in', 'all']);

/** `to make (48) half-square triangles`, `for a total of 16 triangles`, `= 8 QSTs`. */
export function readTriangleCount(tokens: Tokens, at: number): Match<number> {
  let next = isMark(tokens, at, '=', '(', '-') && !readWholeTriangles(tokens, at) ? at + 1 : at;
  next = skipWords(tokens, next, LEAD);
  return readWholeTriangles(tokens, next);
}

function readWholeTriangles(tokens: Tokens, at: number): Match<number> {
  const whole = readWhole(tokens, at);
  const written = NUMBER_WORDS.get(wordAt(tokens, at) ?? '');
  const count = whole ?? (written === undefined ? null : { value: written, next: at + 1 });
  if (count === null) return null;
  let { next } = count;
  if (wordAt(tokens, next) === 'total') next += 1;
  next = skipWords(tokens, next, TRIANGLE_ADJECTIVES);
  if (!isWordOf(tokens, next, TRIANGLES)) return null;
  next += 1;
  if (isMark(tokens, next, '(') && isWordOf(tokens, next + 1, TRIANGLES)) next += 3;
  next = skipWords(tokens, next, AFTER_TRIANGLES);
  return { value: count.value, next };
}
