import { type OpenLine, type OpenList, mark, startPart } from '../list/open-list';
import { isFabricWordOf } from '../list/fabric-names';
import { readName } from '../parts/read-name';
import { readFabricAmount, readFatQuarters, readStatedSize } from '../parts/read-stated';
import { isMark, skipWords, type Tokens } from '../parts/token';
import { roleOf } from './fabric-step';

/** `1 5/8 yd`, `(4) fat quarters`, `Finished size 54 x 66 in`: what the pattern states of itself. */
export function statedStep(line: OpenLine, list: OpenList, at: number): number | null {
  return sizeStep(line, list, at) ?? amountStep(line, list, at);
}

function sizeStep(line: OpenLine, list: OpenList, at: number): number | null {
  const size = readStatedSize(line.tokens, at, list.bareUnit);
  if (size === null) return null;
  const { of: what, width, length } = size.value;
  line.stated.push({ what, width, length });
  if (line.kind === 'unread') line.kind = 'stated';
  return size.next;
}

function amountStep(line: OpenLine, list: OpenList, at: number): number | null {
  const { tokens } = line;
  const isOpen = isMark(tokens, at, '(');
  const start = isOpen ? at + 1 : at;
  const length = readFabricAmount(tokens, start);
  const quarters = length === null ? (readFatQuarters(tokens, at) ?? readFatQuarters(tokens, start)) : null;
  const read = length ?? quarters;
  if (read === null) return null;
  const isInParentheses = isOpen && isMark(tokens, read.next, ')');
  const end = isInParentheses ? read.next + 1 : read.next;
  const after = line.role === null ? nameAfter(line, list, end) : { role: line.role, next: end };
  const { role } = after;
  // Yards and meters of one amount that do not agree would be added up.
  if (line.stated.some(({ what }) => what === 'fabric')) mark(line, 'amounts-differ', start, read.next);
  if (length !== null) line.stated.push({ what: 'fabric', role, length: length.value });
  if (quarters !== null) line.stated.push({ what: 'fat-quarters', role, count: quarters.value });
  if (line.patches.length === 0) headsWhatFollows(line, list, isInParentheses, after.next);
  return after.next;
}

/** `Background (1 5/8 yd)` is the heading of its patches; `Background: 1 5/8 yd` is a line of a shopping list, and heads nothing. */
function headsWhatFollows(line: OpenLine, list: OpenList, isInParentheses: boolean, next: number): void {
  const isEnd =
    next >= line.tokens.length || (isMark(line.tokens, next, ':') && next + 1 >= line.tokens.length);
  if (!isEnd) return;
  startPart(list);
  line.kind = 'stated';
  if (isInParentheses || isMark(line.tokens, next, ':')) {
    list.headingRole = line.role;
    line.kind = 'heading';
  }
}

const OF = new Set(['of', 'total']);

/** `1 5/8 yd of background fabric`. */
function nameAfter(
  line: OpenLine,
  list: OpenList,
  at: number,
): { readonly role: string | null; readonly next: number } {
  const start = skipWords(line.tokens, at, OF);
  const name = readName(line.tokens, start, (word) => isFabricWordOf(list.names, word));
  if (name === null || name.value.isRisky || hasFor(line.tokens, start, name.next))
    return { role: null, next: at };
  const role = roleOf(line, list, name.value);
  if (role === null) mark(line, 'fabric-unclear', start, name.next);
  line.role = role;
  return { role, next: name.next };
}

function hasFor(tokens: Tokens, from: number, to: number): boolean {
  return tokens.slice(from, to).some(({ text }) => text === 'for' || text === 'from');
}

/** Where an amount names no fabric, it is that of the heading; with neither it is in question. */
export function nameStated(line: OpenLine, role: string | null): void {
  line.stated.forEach((stated, index) => {
    if (!('role' in stated) || stated.role !== null) return;
    if (role !== null) line.stated[index] = { ...stated, role };
    else mark(line, 'no-fabric', 0, line.tokens.length);
  });
}
