import { type OpenLine, type OpenList, mark, startPart, textBetween } from '../list/open-list';
import { fabricsNamed, isFabricWordOf } from '../list/fabric-names';
import { isPlainHeading, readBlockHeading } from '../parts/read-heading';
import { readName, type ReadName } from '../parts/read-name';
import { readFabricAmount, readFatQuarters, readStatedSize } from '../parts/read-stated';
import { isMark, isWordOf, readWhole, type Token, type Tokens } from '../parts/token';
import { CUT_VERBS } from '../words/trade-words';
import { roleOf } from './fabric-step';

/** A line that is a heading as a whole. False if it is another kind of line. */
export function headingLine(line: OpenLine, list: OpenList): boolean {
  if (isPlainHeading(line.tokens)) {
    startPart(list);
    list.block = null;
    line.kind = 'heading';
    return true;
  }
  const block = readBlockHeading(line.tokens);
  if (block === null) return false;
  startBlock(line, list, block);
  line.kind = 'heading';
  return true;
}

function startBlock(
  line: OpenLine,
  list: OpenList,
  block: NonNullable<ReturnType<typeof readBlockHeading>>,
): void {
  startPart(list);
  list.columns = null;
  const { makes, countsAreFor } = block;
  list.block = { name: textBetween(line, block), makes, countsAreFor };
  const isOpen = countsAreFor === null && makes !== null && makes > 1;
  if (isOpen) mark(line, 'each-or-all', 0, line.tokens.length);
  if (countsAreFor === 'one' && makes === null) mark(line, 'block-count-missing', 0, line.tokens.length);
}

/**
 * What stands before the patches of a line: a block, a fabric, a part of the quilt, each with a colon, dash, amount or number after
 * it; or a fabric alone on its line. Gives the place where the rest of the line begins.
 */
export function prefixStep(line: OpenLine, list: OpenList): number {
  const start = blockPrefix(line, list);
  if (readStatedSize(line.tokens, start, list.bareUnit) !== null) return start;
  const name = readName(line.tokens, start, (word) => isFabricWordOf(list.names, word));
  if (name === null || isSentenceLike(line.tokens, start, name.next)) return start;
  const next = afterName(line, list, name.value, name.next);
  if (next === null) return start;
  const isAlone = line.tokens.slice(next).every(saysCutOnly);
  if (name.value.isRisky) {
    mark(line, 'fabric-unclear', start, name.next);
    if (isAlone) startPart(list);
    return next;
  }
  const isUnderFabric =
    list.headingRole !== null &&
    !(isAlone && list.isSectionHeading) &&
    line.stated.length === 0 &&
    !isStatedAmount(line.tokens, next);
  if (name.value.isSection && isUnderFabric) takeSection(line, list, name.value, isAlone);
  else takePrefix(line, list, name.value, isAlone);
  if (isAlone) line.kind = 'heading';
  return isAlone ? line.tokens.length : next;
}

const THE_FOLLOWING = new Set(['the', 'following', 'pieces', 'patches']);

/** `Background, cut the following:` heads the lines below. */
function saysCutOnly({ kind, text }: Token): boolean {
  return kind === 'mark' ? ':-,.'.includes(text) : CUT_VERBS.has(text) || THE_FOLLOWING.has(text);
}

/**
 * `Border: (2) 4 in x 60 in` under a fabric is cut from that fabric. A heading of its own may be of any fabric, and a binding or
 * backing is often one: these are not settled.
 */
function takeSection(line: OpenLine, list: OpenList, name: ReadName, isAlone: boolean): void {
  const section = textBetween(line, name);
  line.purpose = section;
  if (isAlone) {
    startPart(list);
    list.section = section;
  } else if (/binding|backing/iu.test(section)) mark(line, 'fabric-unclear', 0, line.tokens.length);
}

function takePrefix(line: OpenLine, list: OpenList, name: ReadName, isAlone: boolean): void {
  const role = roleOf(line, list, name);
  if (role === null) mark(line, 'fabric-unclear', 0, line.tokens.length);
  line.role = role;
  if (!isAlone) return;
  startPart(list);
  list.headingRole = role;
  list.isSectionHeading = name.isSection;
}

/** `Block 1: (4) 2 1/2 in squares`. */
function blockPrefix(line: OpenLine, list: OpenList): number {
  const colon = line.tokens.findIndex((token) => token.kind === 'mark' && token.text === ':');
  if (colon < 1 || colon > 8) return 0;
  const block = readBlockHeading(line.tokens.slice(0, colon));
  if (block === null) return 0;
  startBlock(line, list, block);
  return colon + 1;
}

const LONGEST_HEADING = 4;
const SENTENCE_WORDS = new Set(
  `to toward towards on with into is are it as by at all sew press join arrange trim place lay make makes use using pin baste quilt repeat refer
  see read before after when if then do don't be will should can may until each from for wash iron square measure draw mark
  follow enjoy`.split(/\s+/u),
);

function isSentenceLike(tokens: Tokens, from: number, to: number): boolean {
  return tokens.slice(from, to).some(({ text }) => SENTENCE_WORDS.has(text));
}

/** The place after the name and what ties it to the rest of the line; null if it is no name of this line. */
function afterName(line: OpenLine, list: OpenList, name: ReadName, at: number): number | null {
  const { tokens } = line;
  const isKnown =
    name.isSurelyFabric || name.isSection || fabricsNamed(list.names, textBetween(line, name)).length > 0;
  if (at >= tokens.length) return isKnown && at <= LONGEST_HEADING + 2 ? at : null;
  if (isMark(tokens, at, ':', '|', '\t')) return at + 1;
  if (isStatedAmount(tokens, at)) return at;
  if (isMark(tokens, at, '-')) return at + 1;
  const isBeforePatches =
    tokens[at]?.kind === 'number' ||
    readWhole(tokens, at) !== null ||
    isWordOf(tokens, at, CUT_VERBS) ||
    isMark(tokens, at, ',');
  return isKnown && isBeforePatches ? at : null;
}

function isStatedAmount(tokens: Tokens, at: number): boolean {
  const start = isMark(tokens, at, '(') ? at + 1 : at;
  return (
    readFabricAmount(tokens, start) !== null ||
    readFatQuarters(tokens, at) !== null ||
    readFatQuarters(tokens, start) !== null
  );
}
