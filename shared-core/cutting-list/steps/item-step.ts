import type { Length } from '#core/units/length';
import { type OpenLine, type OpenList, type OpenPatch, mark, takeRole } from '../list/open-list';
import { isFabricWordOf } from '../list/fabric-names';
import { type ListItem, readItem, textOf } from '../parts/read-item';
import type { Side } from '../parts/read-size';
import type { Tokens } from '../parts/token';

/** Reads one item and adds its patches to the line. Gives the place after it, or null if there is none. */
export function itemStep(line: OpenLine, list: OpenList, at: number): number | null {
  const words = { bareUnit: list.bareUnit, isFabricWord: (word: string) => isFabricWordOf(list.names, word) };
  const item = readItem(line.tokens, at, words);
  if (item === null) return null;
  line.kind = 'cut';
  // Two items without so much as a comma between them: one number may belong to the other.
  if (line.itemEnd === at) mark(line, 'number-unclear', at, item.next);
  line.itemEnd = item.next;
  addItem(line, list, item.value, at, item.next);
  return item.next;
}

export function addItem(line: OpenLine, list: OpenList, item: ListItem, at: number, end: number): void {
  if (item.problem !== null) {
    mark(line, item.problem, at, end);
    if (item.problem !== 'sides-differ') return;
  }
  if (item.sides.some((side) => side.kind === 'length' && side.unit === null)) list.hasBareSizes = true;
  const sizes = sizesOf(line, list, item, at, end);
  if (sizes === null || item.count === null) return;
  const from = line.tokens[at]?.from ?? 0;
  const to = line.tokens[end - 1]?.to ?? from;
  const patch: OpenPatch = {
    line,
    shape: item.shape,
    ...sizes,
    cut: item.count,
    diagonals: 0,
    role: null,
    hasOwnRole: false,
    purpose: null,
    block: null,
    cutUpInto: [],
    cutFrom: null,
    from,
    to,
  };
  nameOwnFabric(line, list, patch, item.fabric);
  if (line.subcut !== null) joinToStrips(line, patch, at, end);
  line.patches.push(patch);
  line.sentence = [...line.sentence.slice(1 - MOST_IN_SENTENCE), patch];
  if (patch.cutFrom === null && isStrip(patch)) {
    const isSameRun = list.strips.at(-1)?.line === line;
    list.strips = isSameRun ? [...list.strips.slice(1 - MOST_STRIPS), patch] : [patch];
  }
  list.lastItem = patch;
}

/** More kinds of strips than any line cuts. */
const MOST_STRIPS = 40;
const MOST_IN_SENTENCE = 40;

function isStrip({ shape, length }: OpenPatch): boolean {
  return shape === 'strip' || length === 'fabric';
}

function nameOwnFabric(line: OpenLine, list: OpenList, patch: OpenPatch, fabric: Tokens): void {
  if (fabric.length === 0) return;
  const role = takeRole(list, textOf(line.text, fabric));
  if (role === null) line.marks.push({ code: 'fabric-unclear', from: patch.from, to: patch.to });
  patch.role = role;
  patch.hasOwnRole = true;
}

type Sizes = Pick<OpenPatch, 'width' | 'length'>;

function sizesOf(line: OpenLine, list: OpenList, item: ListItem, at: number, end: number): Sizes | null {
  const lengths = item.sides.flatMap((side) => (side.kind === 'length' ? [side.length] : []));
  const [first, second] = lengths;
  const isAcross = item.sides.some((side: Side) => side.kind === 'fabric-width');
  const strips = line.subcut?.strips ?? [];
  if (first === undefined) {
    // `subcut into (16) squares` of strips of one width
    const width = item.shape === 'square' ? onlyWidth(strips) : null;
    if (width !== null && !isAcross) return { width, length: width };
    mark(line, 'no-size', at, end);
    return null;
  }
  if (isAcross) return { width: first, length: 'fabric' };
  if (second !== undefined) return { width: first, length: second };
  if (item.shape === 'square') return { width: first, length: first };
  if (line.subcut !== null) {
    const width = onlyWidth(strips);
    if (width !== null) return { width, length: first };
    mark(line, 'no-size', at, end);
    return null;
  }
  if (item.shape === 'strip') return { width: first, length: list.stripsAreAcross ? 'fabric' : 'unsaid' };
  mark(line, item.shape === null ? 'no-shape' : 'no-size', at, end);
  return null;
}

function onlyWidth(strips: readonly OpenPatch[]): Length | null {
  const [first, ...more] = strips;
  return first !== undefined && more.every(({ width }) => width === first.width) ? first.width : null;
}

/** Patches are cut from the strips of their own width where there are strips of several widths. */
function joinToStrips(line: OpenLine, patch: OpenPatch, at: number, end: number): void {
  const { strips, isEach } = line.subcut ?? { strips: [], isEach: false };
  const ofWidth = strips.filter(({ width }) => width === patch.width || width === patch.length);
  const [from, ...others] = strips.length === 1 ? strips : ofWidth;
  if (from === undefined || others.length > 0) {
    mark(line, strips.length === 0 ? 'no-strips' : 'which-patches', at, end);
    return;
  }
  patch.cutFrom = from;
  patch.role = patch.hasOwnRole ? patch.role : null;
  if (isEach) patch.cut *= from.cut;
  from.cutUpInto.push(patch);
}
