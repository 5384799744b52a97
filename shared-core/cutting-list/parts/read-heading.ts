import { NUMBER_WORDS, PLAIN_HEADING_WORDS } from '../words/trade-words';
import { isMark, isWordOf, type Match, readWhole, type Tokens, wordAt } from './token';

/** A heading for the patches of one block. */
export interface BlockHeading {
  readonly from: number;
  readonly to: number;
  /** How many blocks are made; null if the heading does not say. */
  readonly makes: number | null;
  /** Whether the counts below are for one block or for all of them; null if it does not say. */
  readonly countsAreFor: 'one' | 'all' | null;
}

const BLOCKS = new Set(['block', 'blocks', 'unit', 'units']);
const FOR_ONE = new Set(['each', 'one', 'per', 'single']);
const FOR_ALL = new Set(['all', 'total']);
const SMALL_WORDS = new Set([
  'for',
  'the',
  'of',
  'make',
  'makes',
  'cut',
  'cutting',
  'pieces',
  'patches',
  'a',
  'from',
  'you',
]);
const MOST_NAME_WORDS = 4;

/**
 * `Block 1 (make 12)`, `For each Block A`, `Star block, cutting for all 9 blocks`. The words before or one token after `block` are its
 * name. Null unless the whole of `tokens` reads as such a heading.
 */
export function readBlockHeading(tokens: Tokens): BlockHeading | null {
  const end = isMark(tokens, tokens.length - 1, ':', '.', '-') ? tokens.length - 1 : tokens.length;
  if (!tokens.some((_, at) => isWordOf(tokens, at, BLOCKS))) return null;
  let makes: number | null = null;
  let countsAreFor: 'one' | 'all' | null = null;
  let name: { readonly from: number; readonly to: number } | null = null;
  let nameWords = 0;
  let at = 0;
  while (at < end) {
    const number: Match<number> = makes === null ? readMakes(tokens, at) : null;
    if (number !== null) {
      if (number.value > 1 || wordAt(tokens, at) === 'make' || isMark(tokens, at, '(')) makes = number.value;
      else countsAreFor ??= 'one';
      at = number.next;
    } else if (isMark(tokens, at, '(', ')', ',', '-', ':', ';')) {
      at += 1;
    } else if (isWordOf(tokens, at, BLOCKS)) {
      const label = labelAfter(tokens, at + 1, end);
      const [first, last] = [tokens[at - nameWords], tokens[(label ?? at + 1) - 1]];
      if (name === null && first !== undefined && last !== undefined)
        name = { from: first.from, to: last.to };
      nameWords = 0;
      at = label ?? at + 1;
    } else if (isWordOf(tokens, at, FOR_ONE) || isWordOf(tokens, at, FOR_ALL)) {
      const isOne = isWordOf(tokens, at, FOR_ONE);
      if (countsAreFor !== null && countsAreFor !== (isOne ? 'one' : 'all')) return null;
      countsAreFor = isOne ? 'one' : 'all';
      at += 1;
    } else if (isWordOf(tokens, at, SMALL_WORDS)) {
      at += 1;
    } else if (wordAt(tokens, at) !== null && name === null && nameWords < MOST_NAME_WORDS) {
      nameWords += 1;
      at += 1;
    } else return null;
  }
  if (nameWords > 0 || name === null) return null;
  const { from, to } = name;
  return { from, to, makes, countsAreFor };
}

/** `make 12`, `12 blocks`, `(12)`. */
function readMakes(tokens: Tokens, at: number): Match<number> {
  const afterMake = wordAt(tokens, at) === 'make' || wordAt(tokens, at) === 'makes' ? at + 1 : null;
  const whole = numberAt(tokens, afterMake ?? at);
  if (whole === null || whole.value === 0) return null;
  const isOpen = isMark(tokens, at, '(');
  const isOfBlocks = isWordOf(tokens, whole.next, BLOCKS);
  if (afterMake !== null) return { value: whole.value, next: isOfBlocks ? whole.next + 1 : whole.next };
  if (isOpen) return whole;
  // `12 blocks` names no block, `12 star blocks` does.
  return isOfBlocks || wordAt(tokens, whole.next) !== null ? whole : null;
}

function numberAt(tokens: Tokens, at: number): Match<number> {
  const written = NUMBER_WORDS.get(wordAt(tokens, at) ?? '');
  if (written !== undefined && written > 1) return { value: written, next: at + 1 };
  return readWhole(tokens, at);
}

/** The name after `block`: a letter or number. */
function labelAfter(tokens: Tokens, at: number, end: number): number | null {
  if (at >= end) return null;
  const start = isMark(tokens, at, '#') ? at + 1 : at;
  const token = tokens[start];
  const isLetter =
    token?.kind === 'word' && token.text.length <= 2 && token.text !== 'of' && token.text !== 'is';
  const isNumber = token?.kind === 'number' && token.whole !== null;
  return isLetter || isNumber ? start + 1 : null;
}

/** `Fabric requirements`, `Cutting instructions`, `From the following fabrics, cut`. */
export function isPlainHeading(tokens: Tokens): boolean {
  const words = tokens.filter(({ kind }) => kind !== 'mark');
  const isAllMarks = tokens.every(({ kind, text }) => kind !== 'mark' || ':-,.;'.includes(text));
  return (
    words.length > 0 &&
    isAllMarks &&
    words.every(({ kind, text }) => kind === 'word' && PLAIN_HEADING_WORDS.has(text))
  );
}
