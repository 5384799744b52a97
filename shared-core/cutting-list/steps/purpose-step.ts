import { type OpenLine, type OpenList, mark, textBetween } from '../list/open-list';
import { afterPhrase, isMark, isWordOf, readWhole, skipWords, wordAt } from '../parts/token';
import { CUT_VERBS, RISKY_WORDS, SECTION_WORDS, SUBCUT_VERBS } from '../words/trade-words';

const LONGEST_PURPOSE = 6;
const NEVER = new Set([
  ...RISKY_WORDS,
  ...CUT_VERBS,
  ...SUBCUT_VERBS,
  'from',
  'to',
  'wof',
  'all',
  'if',
  'until',
  'one',
  'half',
]);
const MAY_END_SO = new Set(['half']);

/** `for the border`, `for half-square triangles`: what the patches are for, up to six words without a number. */
export function purposeStep(line: OpenLine, list: OpenList, at: number): number | null {
  const { tokens } = line;
  if (wordAt(tokens, at) !== 'for') return null;
  let next = at + 1;
  while (next - at <= LONGEST_PURPOSE && isPurposeWord(line, next)) next += 1;
  const [first, last] = [tokens[at + 1], tokens[next - 1]];
  if (first === undefined || last === undefined || next === at + 1) return null;
  const purpose = textBetween(line, { from: first.from, to: last.to }).replace(/^the /iu, '');
  if (line.sentence.length === 0) {
    line.purpose = purpose;
    // `For the binding, cut`, under the heading of a fabric: that fabric, or one of its own.
    const isOther =
      list.headingRole !== null && line.role === null && /^(?:binding|backing)$/iu.test(purpose);
    if (isOther) mark(line, 'fabric-unclear', at, next);
  }
  for (const patch of line.sentence) patch.purpose ??= purpose;
  return isWordOf(tokens, next, CUT_VERBS) ? next + 1 : next;
}

/** `(4) 3 in squares (corners)`. */
export function sectionStep(line: OpenLine, at: number): number | null {
  const end = isMark(line.tokens, at, '(') ? skipWords(line.tokens, at + 1, SECTION_WORDS) : at;
  const [first, last] = [line.tokens[at + 1], line.tokens[end - 1]];
  if (end < at + 2 || first === undefined || last === undefined || !isMark(line.tokens, end, ')'))
    return null;
  const section = textBetween(line, { from: first.from, to: last.to });
  for (const patch of line.sentence) patch.purpose ??= section;
  return end + 1;
}

function isPurposeWord({ tokens }: OpenLine, at: number): boolean {
  const word = wordAt(tokens, at);
  if (word === null) {
    const number = tokens[at];
    const isLabel =
      number?.kind === 'number' &&
      number.whole !== null &&
      /^(?:block|border|row)$/u.test(tokens[at - 1]?.text ?? '');
    return isLabel;
  }
  const isHalfSquare = MAY_END_SO.has(word) && wordAt(tokens, at + 1) === 'square';
  return isHalfSquare || !NEVER.has(word);
}

/** `for each block`, `per block`: the counts are multiplied by the blocks to make. */
export function eachBlockStep(line: OpenLine, list: OpenList, at: number): number | null {
  const phrases = [
    'for each block',
    'per block',
    'each block',
    'for one block',
    'for every block',
    'in each block',
  ];
  const ends = phrases.flatMap((phrase) => afterPhrase(line.tokens, at, phrase) ?? []);
  const next = ends[0];
  if (next === undefined) return null;
  line.isForEachBlock = true;
  if ((list.block?.makes ?? null) === null) mark(line, 'block-count-missing', at, next);
  return next;
}

/** `in all`, `for all blocks`: the counts of the line are not for one block, whatever its heading says. */
export function allBlocksStep(line: OpenLine, at: number): number | null {
  const phrases = ['in all', 'in total', 'for all blocks', 'for all the blocks'];
  const [next] = phrases.flatMap((phrase) => afterPhrase(line.tokens, at, phrase) ?? []);
  if (next === undefined) return null;
  line.isForAllBlocks = true;
  return next;
}

/** `(48 total)`, `for a total of 48 squares`: must be the count that was read. */
export function totalStep(line: OpenLine, list: OpenList, at: number): number | null {
  const { tokens } = line;
  const patch = list.lastItem;
  if (patch === null || patch.line !== line) return null;
  const lead = [
    'for a total of',
    'a total of',
    'total of',
    'to make',
    'to yield',
    'yields',
    'you need',
    'total',
  ];
  const start =
    lead.flatMap((phrase) => afterPhrase(tokens, at, phrase) ?? [])[0] ??
    (isMark(tokens, at, '=', '(') ? at + 1 : at);
  const whole = readWhole(tokens, isMark(tokens, start, '=', ':') ? start + 1 : start);
  if (whole === null) return null;
  const saysTotal = start > at + 1 || wordAt(tokens, whole.next) === 'total' || isMark(tokens, at, '=');
  if (!saysTotal || tokens[whole.next]?.kind === 'unit') return null;
  let { next } = whole;
  next = skipWords(tokens, next, AFTER_TOTAL);
  if (whole.value !== patch.cut) mark(line, 'count-differs', at, next);
  return next;
}

const AFTER_TOTAL = new Set([
  'total',
  'in',
  'all',
  'square',
  'squares',
  'rectangle',
  'rectangles',
  'pieces',
  'patches',
  'strips',
]);

/** `(A)`, `label A`, `patch B2`: the name of a patch changes nothing. */
export function labelStep(line: OpenLine, at: number): number | null {
  const { tokens } = line;
  const word = wordAt(tokens, at);
  const isNamed = word === 'label' || word === 'labeled' || word === 'labelled' || word === 'patch';
  const start = isNamed || isMark(tokens, at, '(') ? at + 1 : at;
  if (start === at) return null;
  const begin = isWordOf(tokens, start, new Set(['these', 'them', 'as', 'patch', 'piece']))
    ? start + 1
    : start;
  const token = tokens[begin];
  if (token?.kind !== 'word' || !/^\p{L}\d{0,2}$/u.test(token.text)) return null;
  if (isNamed) return begin + 1;
  return isMark(tokens, begin + 1, ')') ? begin + 2 : null;
}
