import type { Length } from '#core/units/length';
import type { LineKind, ListMark, MarkCode, StatedAmount } from '../list-reading';
import type { BlockHeading } from '../parts/read-heading';
import type { ItemShape } from '../parts/read-item';
import type { Tokens } from '../parts/token';
import { addName, type FabricNames, fabricsNamed, noNames } from './fabric-names';

export type BareUnit = 'in' | 'cm' | 'mm';

/** Patches or strips as they are read; later words and lines may still say more of them. */
export interface OpenPatch {
  readonly line: OpenLine;
  readonly shape: ItemShape | null;
  readonly width: Length;
  /** fabric: across its whole width. unsaid: a strip whose length is not given. */
  readonly length: Length | 'fabric' | 'unsaid';
  cut: number;
  diagonals: 0 | 1 | 2;
  role: string | null;
  /** The role was said for these patches, not for the line. */
  hasOwnRole: boolean;
  purpose: string | null;
  block: string | null;
  /** Strips that patches are cut from: no patches themselves. */
  cutUpInto: OpenPatch[];
  cutFrom: OpenPatch | null;
  readonly from: number;
  readonly to: number;
}

export type Column = 'role' | 'count' | 'width' | 'length' | 'size' | 'shape' | 'purpose';

/** What earlier lines say about later ones. Changed while the lines are read, and never seen outside this folder. */
export interface OpenList {
  /** Of a heading; stays until the next heading. */
  headingRole: string | null;
  /** It is a part of the quilt that stands for its fabric. */
  isSectionHeading: boolean;
  /** Said within a line; stays where no heading names a fabric. */
  lineRole: string | null;
  /** The line before took its fabric from within, against the heading. */
  leftHeading: boolean;
  section: string | null;
  block: (Omit<BlockHeading, 'from' | 'to'> & { readonly name: string }) | null;
  strips: readonly OpenPatch[];
  lastItem: OpenPatch | null;
  /** The patches named together last, before a full stop, semicolon or the end of a line. */
  lastSentence: readonly OpenPatch[];
  /** A line ended with `subcut into`, so the next ones may list the patches. */
  pendingSubcut: OpenSubcut | null;
  readonly names: FabricNames;
  bareUnit: BareUnit;
  hasBareSizes: boolean;
  stripsAreAcross: boolean;
  columns: readonly (Column | null)[] | null;
}

interface OpenSubcut {
  readonly strips: readonly OpenPatch[];
  readonly isEach: boolean;
}

/** One line while it is read. */
export interface OpenLine {
  readonly text: string;
  readonly tokens: Tokens;
  kind: LineKind;
  role: string | null;
  block: string | null;
  purpose: string | null;
  readonly patches: OpenPatch[];
  readonly stated: StatedAmount[];
  readonly marks: ListMark[];
  /** Patches since the last full stop or semicolon. */
  sentence: OpenPatch[];
  /** What the next patches are cut from; each: they are counted for each of the strips. */
  subcut: OpenSubcut | null;
  isForEachBlock: boolean;
  isForAllBlocks: boolean;
  /** The place after the item read last. */
  itemEnd: number;
}

export function openList(bareUnit: BareUnit): OpenList {
  return {
    headingRole: null,
    isSectionHeading: false,
    lineRole: null,
    leftHeading: false,
    section: null,
    block: null,
    strips: [],
    lastItem: null,
    lastSentence: [],
    pendingSubcut: null,
    names: noNames(),
    bareUnit,
    hasBareSizes: false,
    stripsAreAcross: false,
    columns: null,
  };
}

export function openLine(text: string, tokens: Tokens): OpenLine {
  return {
    text,
    tokens,
    kind: 'unread',
    role: null,
    block: null,
    purpose: null,
    patches: [],
    stated: [],
    marks: [],
    sentence: [],
    subcut: null,
    isForEachBlock: false,
    isForAllBlocks: false,
    itemEnd: -1,
  };
}

/** Marks the characters of some tokens. */
export function mark(line: OpenLine, code: MarkCode, at: number, end = at + 1): void {
  const [first, last] = [line.tokens[at], line.tokens[Math.max(at, end - 1)]];
  if (first !== undefined && last !== undefined) line.marks.push({ code, from: first.from, to: last.to });
}

export function textBetween(
  line: OpenLine,
  { from, to }: { readonly from: number; readonly to: number },
): string {
  return line.text.slice(from, to).replace(/\s+/gu, ' ').trim();
}

/** The fabric that a name means, added to those of the list if it is new; null if it fits several. */
export function takeRole(list: OpenList, name: string, alias: string | null = null): string | null {
  const [known, ...others] = fabricsNamed(list.names, name);
  if (others.length > 0) return null;
  const role = known ?? name;
  addName(list.names, role, alias);
  return role;
}

/** A heading for a fabric, part or block ends what the lines before it said. */
export function startPart(list: OpenList): void {
  list.headingRole = null;
  list.isSectionHeading = false;
  list.lineRole = null;
  list.leftHeading = false;
  list.section = null;
  list.strips = [];
  list.lastItem = null;
  list.lastSentence = [];
  list.pendingSubcut = null;
}
