import {
  CUT_VERBS,
  NUMBER_WORDS,
  RISKY_WORDS,
  SECTION_WORDS,
  SHAPES,
  SUBCUT_VERBS,
} from '../words/trade-words';
import { isMark, isWordOf, type Match, type Tokens, wordAt } from './token';

/** The name of a fabric as the list has it, without `the` and a `fabric` at its end. */
export interface ReadName {
  readonly from: number;
  readonly to: number;
  /** Another name for it in parentheses. */
  readonly alias: { readonly from: number; readonly to: number } | null;
  /** By one of its words it is a fabric, and no part of a quilt or sentence. */
  readonly isSurelyFabric: boolean;
  /** It is only a part of a quilt, such as a border. */
  readonly isSection: boolean;
  /** `and`, `each` or the like: maybe several fabrics. */
  readonly isRisky: boolean;
}

const LONGEST_NAME = 6;
const NUMBERED = new Set(['fabric', 'fabrics', 'color', 'colour', 'print', 'solid', 'block', 'border']);
const BEFORE_NAME = new Set(['the', 'your', 'a', 'an']);

export type IsFabricWord = (word: string) => boolean;

/** Up to six words that could be a name: no verb, shape or size. Ends before any other token. */
export function readName(tokens: Tokens, at: number, isFabricWord: IsFabricWord): Match<ReadName> {
  const start = isWordOf(tokens, at, BEFORE_NAME) && isNameToken(tokens, at + 1) ? at + 1 : at;
  let next = start;
  while (next - start < LONGEST_NAME && isNameToken(tokens, next)) next += 1;
  const [first, last] = [tokens[start], tokens[next - 1]];
  if (first === undefined || last === undefined || next === start) return null;
  const words = tokens.slice(start, next).flatMap((token) => (token.kind === 'word' ? [token.text] : []));
  const isArticle = words.length === 1 && ['the', 'your', 'an'].includes(words[0] ?? '');
  if (words.length === 0 || isArticle) return null;
  const drops = words.length > 1 && words.at(-1) === 'fabric' ? (tokens[next - 2] ?? last) : last;
  const alias = readAlias(tokens, next);
  return {
    value: {
      from: first.from,
      to: drops.to,
      alias: alias?.value ?? null,
      isSurelyFabric:
        words.some((word) => isFabricWord(word)) || words[0] === 'binding' || words[0] === 'backing',
      isSection: words.every((word) => SECTION_WORDS.has(word)),
      isRisky:
        words.some((word) => RISKY_WORDS.has(word) || NUMBER_WORDS.has(word)) || hasAnd(tokens, start, next),
    },
    next: alias?.next ?? next,
  };
}

/** `4 squares from the red and 6 squares from the blue` names one fabric at a time. */
function startsCount(tokens: Tokens, at: number): boolean {
  return (
    tokens[at]?.kind === 'number' || isMark(tokens, at, '(') || NUMBER_WORDS.has(wordAt(tokens, at) ?? '')
  );
}

const ENDS_NAME = new Set(['for', 'from', 'to', 'into', 'at', 'on', 'by', 'in', 'as', 'that', 'then']);

function isNameToken(tokens: Tokens, at: number): boolean {
  const word = wordAt(tokens, at);
  if (word !== null && (ENDS_NAME.has(word) || (word === 'and' && startsCount(tokens, at + 1)))) return false;
  if (word !== null)
    return !CUT_VERBS.has(word) && !SUBCUT_VERBS.has(word) && !SHAPES.has(word) && word !== 'wof';
  const number = tokens[at];
  const isNumbered = number?.kind === 'number' && number.whole !== null && number.whole < 100;
  if (isNumbered) return isWordOf(tokens, at - 1, NUMBERED) && !continuesSize(tokens, at + 1);
  return isMark(tokens, at, '#') && isWordOf(tokens, at - 1, NUMBERED);
}

/** `print 24 squares`: the number is that of the patches, and not of the print. */
function continuesSize(tokens: Tokens, at: number): boolean {
  const token = tokens[at];
  return (
    token?.kind === 'unit' ||
    token?.kind === 'number' ||
    isMark(tokens, at, 'x') ||
    SHAPES.has(wordAt(tokens, at) ?? '')
  );
}

function hasAnd(tokens: Tokens, from: number, to: number): boolean {
  return tokens
    .slice(from, to)
    .some((token) => token.text === 'and' || token.text === 'or' || token.text === 'with');
}

/** `Fabric A (red)`: one to three words in parentheses, no number. */
function readAlias(tokens: Tokens, at: number): Match<{ readonly from: number; readonly to: number }> {
  if (!isMark(tokens, at, '(', '[')) return null;
  let next = at + 1;
  while (next - at <= 4 && wordAt(tokens, next) !== null && !isWordOf(tokens, next, NOT_AN_ALIAS)) next += 1;
  const [first, last] = [tokens[at + 1], tokens[next - 1]];
  if (first === undefined || last === undefined || next === at + 1 || !isMark(tokens, next, ')', ']'))
    return null;
  return { value: { from: first.from, to: last.to }, next: next + 1 };
}

const NOT_AN_ALIAS = new Set([
  'make',
  'each',
  'total',
  'optional',
  'or',
  'and',
  'cut',
  'for',
  'includes',
  'including',
  'per',
]);
