import { lexLine } from '../parts/lex-line';
import { isMark, isWordOf } from '../parts/token';
import { diagonalStep, triangleCountStep } from '../steps/diagonal-step';
import { fromStep, trailingFabricStep } from '../steps/fabric-step';
import { itemStep } from '../steps/item-step';
import { noteLine } from '../steps/note-line';
import { headingLine, prefixStep } from '../steps/prefix-step';
import {
  allBlocksStep,
  eachBlockStep,
  labelStep,
  purposeStep,
  sectionStep,
  totalStep,
} from '../steps/purpose-step';
import { nameStated, statedStep } from '../steps/stated-step';
import { subcutStep } from '../steps/subcut-step';
import { tableLine } from '../steps/table-line';
import { AND_SO_ON, CUT_VERBS, SECTION_WORDS } from '../words/trade-words';
import { mark, type OpenLine, type OpenList, openLine, startPart, takeRole } from './open-list';

/** Reads a line and what it says of the lines before and after it. Each token is read once, or marked. */
export function readLine(text: string, list: OpenList): OpenLine {
  const line = openLine(text, lexLine(text));
  if (line.tokens.length === 0) {
    line.kind = 'blank';
    list.columns = null;
    return line;
  }
  if (noteLine(line, list) || headingLine(line, list) || tableLine(line, list)) return closeLine(line, list);
  let at = prefixStep(line, list);
  if (isMorePatches(line, at)) line.subcut = list.pendingSubcut;
  while (at < line.tokens.length) at = readStep(line, list, at);
  return closeLine(line, list);
}

/** Whether the line goes on with patches after `subcut into:`: it begins with a number, and names no fabric. */
function isMorePatches({ tokens, role }: OpenLine, at: number): boolean {
  const start = isMark(tokens, at, '(') ? at + 1 : at;
  return role === null && tokens[start]?.kind === 'number';
}

function readStep(line: OpenLine, list: OpenList, at: number): number {
  return (
    statedStep(line, list, at) ??
    eachBlockStep(line, list, at) ??
    allBlocksStep(line, at) ??
    diagonalStep(line, list, at) ??
    subcutStep(line, list, at) ??
    triangleCountStep(line, list, at) ??
    totalStep(line, list, at) ??
    fromStep(line, list, at) ??
    itemStep(line, list, at) ??
    labelStep(line, at) ??
    trailingFabricStep(line, list, at) ??
    sectionStep(line, at) ??
    purposeStep(line, list, at) ??
    verbStep(line, at) ??
    punctuationStep(line, list, at) ??
    notUnderstood(line, at)
  );
}

/** `Cut` begins patches of the fabric itself. */
function verbStep(line: OpenLine, at: number): number | null {
  if (isWordOf(line.tokens, at, CUT_VERBS)) {
    line.subcut = null;
    return isMark(line.tokens, at + 1, ':') ? at + 2 : at + 1;
  }
  return isWordOf(line.tokens, at, AND_SO_ON) ? at + 1 : null;
}

const PUNCTUATION = [',', ';', ':', '.', '-', '(', ')', '[', ']', '|', '\t'];

function punctuationStep(line: OpenLine, list: OpenList, at: number): number | null {
  if (!isMark(line.tokens, at, ...PUNCTUATION)) return null;
  if (isMark(line.tokens, at, '.', ';')) endSentence(line, list);
  return at + 1;
}

function endSentence(line: OpenLine, list: OpenList): void {
  if (line.sentence.length > 0) list.lastSentence = line.sentence;
  line.sentence = [];
}

function notUnderstood(line: OpenLine, at: number): number {
  mark(line, 'not-understood', at);
  return at + 1;
}

/** What is settled only when the whole line is read: fabric, block and purpose of its patches. */
function closeLine(line: OpenLine, list: OpenList): OpenLine {
  endSentence(line, list);
  if (line.kind === 'unread' && line.marks.length > 0) endPart(line, list);
  if (line.kind === 'unread' && line.stated.length > 0) line.kind = 'stated';
  joinMarks(line);
  const role = roleInForce(line, list);
  nameStated(line, role);
  line.block = list.block?.name ?? null;
  const times = timesMade(line, list);
  for (const patch of line.patches) {
    if (patch.cutFrom === null && !patch.hasOwnRole) patch.role = role;
    if (patch.cutFrom !== null && !patch.hasOwnRole) patch.role = patch.cutFrom.role;
    patch.block = line.block;
    patch.purpose ??= line.purpose ?? list.section;
    patch.cut *= times;
  }
  markFabric(line, list, role);
  carryOn(line, list);
  line.role ??= role;
  return line;
}

/** Words that may be a heading of a kind that is not known: nothing below is taken to be of the fabric above. */
function endPart(line: OpenLine, list: OpenList): void {
  const isShort = line.tokens.filter(({ kind }) => kind === 'word').length <= 5;
  const hasSize = line.tokens.some(({ kind }) => kind === 'unit');
  if (!isShort || hasSize) return;
  line.marks.length = 0;
  mark(line, 'name-unclear', 0, line.tokens.length);
  startPart(list);
}

function roleInForce(line: OpenLine, list: OpenList): string | null {
  if (line.role !== null) return line.role;
  if (line.patches.length > 0 && line.patches.every(({ cutFrom }) => cutFrom !== null)) return null;
  const inForce = list.headingRole ?? list.lineRole;
  if (inForce !== null) return inForce;
  // `For the binding, cut (6) strips` names its own fabric where no other is named.
  const { purpose } = line;
  const isSection =
    purpose
      ?.toLowerCase()
      .split(' ')
      .every((word) => SECTION_WORDS.has(word)) ?? false;
  const isOwnFabric = isSection && /binding|border|backing|sashing/u.test(purpose?.toLowerCase() ?? '');
  return isOwnFabric && purpose !== null
    ? takeRole(list, purpose.charAt(0).toUpperCase() + purpose.slice(1))
    : null;
}

function timesMade(line: OpenLine, list: OpenList): number {
  const { block } = list;
  const isForOne = line.isForEachBlock || block?.countsAreFor === 'one';
  return isForOne && !line.isForAllBlocks ? (block?.makes ?? 1) : 1;
}

function markFabric(line: OpenLine, list: OpenList, role: string | null): void {
  for (const { role: own, cutFrom, from, to } of line.patches) {
    if (own === null && (cutFrom === null || cutFrom.line !== line))
      line.marks.push({ code: 'no-fabric', from, to });
  }
  const isBare =
    line.role === null && line.patches.some(({ hasOwnRole, cutFrom }) => !hasOwnRole && cutFrom === null);
  if (isBare && list.leftHeading && role === list.headingRole)
    mark(line, 'fabric-unclear', 0, line.tokens.length);
}

/** What the line leaves to the next one. */
function carryOn(line: OpenLine, list: OpenList): void {
  const isOpenSubcut = line.subcut !== null && line.patches.every(({ cutFrom }) => cutFrom === null);
  const goesOn = line.subcut !== null && line.subcut === list.pendingSubcut;
  if (!goesOn) list.pendingSubcut = isOpenSubcut ? line.subcut : null;
  if (line.role !== null && line.kind === 'heading' && line.patches.length === 0)
    list.headingRole = line.role;
  if (line.role === null || line.patches.length === 0) return;
  // A line in question says nothing for sure of the next one.
  if (list.headingRole === null) list.lineRole = line.marks.length === 0 ? line.role : null;
  else list.leftHeading = line.role !== list.headingRole;
}

/** Words next to each other that were not understood are one mark. */
function joinMarks(line: OpenLine): void {
  const joined: typeof line.marks = [];
  for (const one of line.marks) {
    const before = joined.at(-1);
    const isNext: boolean =
      before?.code === 'not-understood' &&
      one.code === 'not-understood' &&
      line.text.slice(before.to, one.from).trim() === '';
    if (before !== undefined && isNext) joined[joined.length - 1] = { ...before, to: one.to };
    else joined.push(one);
  }
  line.marks.splice(0, line.marks.length, ...joined);
}
