import { lengthFromInches } from '#core/units/length';
import { roundDownTo } from '#core/units/rounding';
import { type BareUnit, openList, type OpenLine, type OpenPatch } from './list/open-list';
import { readLine } from './list/read-line';
import type { ListLine, ListPatch, ListReading, ListShape, ListStrips, MarkCode } from './list-reading';

/**
 * Reads a cutting list line by line, exactly as a pattern has it. A size without a unit is in `bareUnit`. Every word of a line is
 * either understood or marked; text of any kind and length is read, in time that grows with its length.
 */
export function readCuttingList(text: string, bareUnit: BareUnit): ListReading {
  const list = openList(bareUnit);
  const open = text.split(/\r\n|[\n\r\u2028\u2029]/u).map((line) => readLine(line, list));
  for (const line of open) for (const patch of line.patches) checkPatch(patch);
  const lines = open.map(lineOf);
  const used = new Set(lines.flatMap(rolesOf));
  return {
    lines,
    roles: [...list.names.names].filter((role) => used.has(role)),
    patches: lines.flatMap(({ patches }) => patches),
    stated: lines.flatMap(({ stated }) => stated),
    hasBareSizes: list.hasBareSizes,
  };
}

function rolesOf({ patches, stated }: ListLine): readonly (string | null)[] {
  return [...patches.map(({ role }) => role), ...stated.map((one) => ('role' in one ? one.role : null))];
}

function lineOf(line: OpenLine): ListLine {
  const { text, kind, role, block, stated, marks } = line;
  const strips = line.patches.filter((patch) => patch.cutUpInto.length > 0).map(stripsOf);
  const patches = line.patches.filter((patch) => patch.cutUpInto.length === 0).map(patchOf);
  return {
    text,
    kind,
    role,
    block,
    strips,
    patches,
    stated,
    marks: marks.toSorted((one, other) => one.from - other.from),
  };
}

function stripsOf({ cut, width, length, role }: OpenPatch): ListStrips {
  return { count: cut, width, length: typeof length === 'number' ? length : null, role };
}

function patchOf(patch: OpenPatch): ListPatch {
  const { width, length, cut, diagonals, role, block, purpose } = patch;
  return {
    shape: shapeOf(patch),
    width,
    length: typeof length === 'number' ? length : null,
    cut,
    count: diagonals === 0 ? cut : 2 * diagonals * cut,
    role,
    block,
    purpose,
  };
}

function shapeOf({ width, length, diagonals }: OpenPatch): ListShape {
  if (typeof length !== 'number') return 'strip';
  if (width !== length) return diagonals === 0 ? 'rectangle' : 'half-rectangle-triangle';
  if (diagonals === 0) return 'square';
  return diagonals === 1 ? 'half-square-triangle' : 'quarter-square-triangle';
}

/** What only the whole list shows: strips that are too few, strips of no length, diagonals of what is no square. */
function checkPatch(patch: OpenPatch): void {
  const { line, length, cutUpInto, diagonals, width } = patch;
  const markIt = (code: MarkCode) => line.marks.push({ code, from: patch.from, to: patch.to });
  if (length === 'unsaid' && cutUpInto.length === 0) markIt('strip-length-missing');
  if (diagonals > 0 && (typeof length !== 'number' || (diagonals === 2 && width !== length))) {
    markIt('which-patches');
  }
  if (cutUpInto.length > 0 && !areEnough(patch)) {
    const last = cutUpInto.at(-1) ?? patch;
    last.line.marks.push({ code: 'more-than-strips-give', from: last.from, to: last.to });
  }
}

/** Wider than most fabric for piecing, so that only a slip has more patches than this gives. */
const WIDEST_USUAL_FABRIC = lengthFromInches(45);

/** Whether the strips are long enough for all that is cut from them, each kind in as many rows as the strip is wide. */
function areEnough({ cut, width, length, cutUpInto }: OpenPatch): boolean {
  const long = typeof length === 'number' ? length : WIDEST_USUAL_FABRIC;
  const taken = cutUpInto.map((patch) => {
    const other = typeof patch.length === 'number' ? patch.length : patch.width;
    const ways = [
      [patch.width, other],
      [other, patch.width],
    ] as const;
    const perStrip = ways.map(
      ([across, along]) => roundDownTo(width / across, 1) * roundDownTo(long / along, 1),
    );
    return patch.cut / Math.max(0, ...perStrip);
  });
  const isOne = taken.length === 1;
  const strips = taken.reduce((sum, part) => sum + part, 0);
  return isOne ? strips <= cut : strips <= cut * 1.15;
}
