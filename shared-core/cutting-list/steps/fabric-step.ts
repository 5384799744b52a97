import { type OpenLine, type OpenList, mark, takeRole, textBetween } from '../list/open-list';
import { fabricsNamed, isFabricWordOf } from '../list/fabric-names';
import { readName, type ReadName } from '../parts/read-name';
import { isMark, isWordOf, type Match, wordAt } from '../parts/token';
import { CUT_VERBS } from '../words/trade-words';

/** `from the red, cut`: before the patches it is the fabric of the line, after them it is theirs. */
export function fromStep(line: OpenLine, list: OpenList, at: number): number | null {
  const word = wordAt(line.tokens, at);
  const isLoose = word === 'of' || word === 'in';
  if (word !== 'from' && !isLoose) return null;
  const name = nameAt(line, list, at + 1);
  if (name === null || (isLoose && !isKnown(line, list, name.value))) return null;
  if (name.value.isRisky || name.value.isSection) return riskyName(line, at, name.next);
  const role = roleOf(line, list, name.value);
  if (role === null) mark(line, 'fabric-unclear', at, name.next);
  const isBefore = line.sentence.length === 0;
  if (isBefore && !isLoose) {
    line.role = role;
    if (line.kind === 'unread') line.kind = 'heading';
    return isWordOf(line.tokens, name.next, CUT_VERBS) ? name.next + 1 : name.next;
  }
  return setOfItems(line, role) ? name.next : null;
}

/** `48 squares, background` or `48 squares (background)`: a known fabric right after patches. */
export function trailingFabricStep(line: OpenLine, list: OpenList, at: number): number | null {
  if (line.sentence.length === 0) return null;
  const isOpen = isMark(line.tokens, at, '(');
  const name = nameAt(line, list, isOpen ? at + 1 : at);
  if (name === null || name.value.isRisky || !isKnown(line, list, name.value)) return null;
  const end = isOpen ? name.next + 1 : name.next;
  if (isOpen && !isMark(line.tokens, name.next, ')')) return null;
  const isLast = end >= line.tokens.length || isMark(line.tokens, end, '.', ';', ',', ')', '|', '\t');
  if (!isLast) return null;
  const role = roleOf(line, list, name.value);
  if (role === null) mark(line, 'fabric-unclear', at, end);
  return setOfItems(line, role) ? end : null;
}

/** Patches of this sentence without a fabric of their own; false if there are none. */
function setOfItems(line: OpenLine, role: string | null): boolean {
  const open = line.sentence.filter(({ hasOwnRole }) => !hasOwnRole);
  if (open.length === 0) return false;
  for (const patch of open) {
    patch.role = role;
    patch.hasOwnRole = true;
  }
  return true;
}

function riskyName(line: OpenLine, at: number, next: number): number {
  mark(line, 'fabric-unclear', at, next);
  return next;
}

function nameAt(line: OpenLine, list: OpenList, at: number): Match<ReadName> {
  return readName(line.tokens, at, (word) => isFabricWordOf(list.names, word));
}

function isKnown(line: OpenLine, list: OpenList, name: ReadName): boolean {
  return name.isSurelyFabric || fabricsNamed(list.names, textBetween(line, name)).length > 0;
}

/** The fabric of the list that a name means; null if it fits several. */
export function roleOf(line: OpenLine, list: OpenList, name: ReadName): string | null {
  const alias = name.alias === null ? null : textBetween(line, name.alias);
  return takeRole(list, textBetween(line, name), alias);
}
