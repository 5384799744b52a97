import { type OpenLine, type OpenList, type OpenPatch, mark } from '../list/open-list';
import { readSides } from '../parts/read-size';
import { isMark, isWordOf, readWhole, skipWords, type Tokens, wordAt } from '../parts/token';
import { CUT_VERBS, NUMBER_WORDS, SUBCUT_VERBS } from '../words/trade-words';

const INTO = new Set(['into', 'in', 'to', 'get', 'make', 'yield', 'cut', 'for', 'as']);
const THE = new Set([
  'the',
  'these',
  'this',
  'those',
  'them',
  'it',
  'that',
  'all',
  'again',
  'further',
  'remaining',
]);
const STRIPS = new Set(['strip', 'strips', 'piece', 'pieces']);

/**
 * `subcut into`, `cut the strips into`, `crosscut each strip into`, `from these strips, cut`, `sub-cut 2 strips into`. What follows is
 * cut from the strips that were read last.
 */
export function subcutStep(line: OpenLine, list: OpenList, at: number): number | null {
  const start = afterVerb(line.tokens, at);
  const from = start === null ? afterFromStrips(line.tokens, at) : null;
  const read = start === null ? from : readObject(line, list, start.next, start.needsInto);
  if (read === null) return null;
  const strips = stripsMeant(list, read.width);
  line.kind = 'cut';
  if (strips.length === 0) mark(line, 'no-strips', at, read.next);
  line.subcut = { strips, isEach: read.isEach };
  return read.next;
}

interface Verb {
  readonly next: number;
  /** `cut` alone is no subcut without `into`. */
  readonly needsInto: boolean;
}

function afterVerb(tokens: Tokens, at: number): Verb | null {
  if (isWordOf(tokens, at, SUBCUT_VERBS)) return { next: at + 1, needsInto: false };
  const word = wordAt(tokens, at);
  if ((word === 'sub' || word === 'cross' || word === 're') && isWordOf(tokens, at + 1, CUT_VERBS)) {
    return { next: at + 2, needsInto: false };
  }
  return isWordOf(tokens, at, CUT_VERBS) ? { next: at + 1, needsInto: true } : null;
}

interface Object {
  readonly next: number;
  readonly isEach: boolean;
  readonly width: number | null;
}

/** What is subcut: nothing, `the strips`, `each strip`, `2 of the 2 1/2 in strips`. */
function readObject(line: OpenLine, list: OpenList, at: number, needsInto: boolean): Object | null {
  const { tokens } = line;
  let next = skipWords(tokens, at, THE);
  const isEach = wordAt(tokens, next) === 'each';
  if (isEach) next = skipWords(tokens, next + 1, THE);
  const counted = countOfStrips(tokens, next);
  if (counted !== null) next = counted;
  const sides = readSides(tokens, next, list.bareUnit);
  let width: number | null = null;
  if (sides !== null && isWordOf(tokens, sides.next, STRIPS)) {
    const [side] = sides.value;
    width = side?.kind === 'length' ? side.length : null;
    next = sides.next;
  }
  next = skipWords(tokens, next, STRIPS);
  const into = skipWords(tokens, next, INTO);
  const hasInto = tokens.slice(next, into).some(({ text }) => text === 'into');
  if (needsInto && !hasInto) return null;
  const end = isMark(tokens, into, ':') ? into + 1 : into;
  // Without `into`, `each` is that of `cut each once on the diagonal`, or a sentence of another kind.
  return !hasInto && (isEach || counted !== null) ? null : { next: end, isEach, width };
}

/** `2 strips`, `one of the strips`: the number is not needed, since the strips are counted already. */
function countOfStrips(tokens: Tokens, at: number): number | null {
  const whole = readWhole(tokens, at);
  const after = whole?.next ?? (NUMBER_WORDS.has(wordAt(tokens, at) ?? '') ? at + 1 : null);
  if (after === null) return null;
  const next = skipWords(tokens, wordAt(tokens, after) === 'of' ? after + 1 : after, THE);
  if (isWordOf(tokens, next, STRIPS)) return next;
  const isSize = tokens[next]?.kind === 'number' && tokens[next + 1]?.kind === 'unit';
  return isSize && isWordOf(tokens, next + 2, STRIPS) ? next : null;
}

/** `from these strips, cut`, `from each strip cut`. */
function afterFromStrips(tokens: Tokens, at: number): Object | null {
  if (wordAt(tokens, at) !== 'from') return null;
  const start = skipWords(tokens, at + 1, THE);
  const isEach = wordAt(tokens, start) === 'each';
  const strips = isEach ? start + 1 : start;
  if (!isWordOf(tokens, strips, new Set(['strip', 'strips']))) return null;
  const after = isMark(tokens, strips + 1, ',', ':') ? strips + 2 : strips + 1;
  const verb = afterVerb(tokens, after);
  return verb === null ? null : { next: verb.next, isEach, width: null };
}

/** Strips of this width if one was said; where no strips were read, the patches read last. */
function stripsMeant(list: OpenList, width: number | null): readonly OpenPatch[] {
  const open = list.strips.length > 0 ? list.strips : list.lastItem === null ? [] : [list.lastItem];
  return width === null ? open : open.filter((strip) => strip.width === width);
}
