import { type Length, lengthFromExact } from '#core/units/length';
import { accuracyInput, type AccuracyInput } from '../accuracy/input';
import { isSameData } from '../complete-input';
import type { SavedQuestion, StartingFields } from '../calculator';
import { type PatchSizeInput, patchSizeInput } from '../patches/patch-size/input';
import { workOutPatches } from '../patches/patch-size/work';
import { type WedgeRingInput, wedgeRingInput } from '../wedge-ring/input';
import { workOutWedgeRing } from '../wedge-ring/work';
import { type Measurement, measurementSchema, type SeamCheckInput, wholeTopSchema } from './input';
import { type Stretch, topStretches } from './top-stretches';

/** How often each size is measured: patches cost nothing to measure, and they tell a cut from a seam. */
const PATCHES = 4;
const BLOCKS = 3;

/**
 * What to measure, from each answer saved with the stage that knows the sizes along the way. A place that was measured already, and is
 * still the same at the same line of `before`, keeps what it measured.
 */
export function sizesToMeasure(
  answers: readonly SavedQuestion[],
  before: unknown,
): readonly StartingFields<SeamCheckInput>[] {
  return answers.flatMap(({ calculator, input }): readonly StartingFields<SeamCheckInput>[] => {
    const fields = fieldsFrom(calculator, input);
    if (fields?.measured === undefined) return [];
    const measured = fields.measured.map((one, at) => ({ ...one, found: foundBefore(one, before, at) }));
    return [{ calculator, fields: { ...fields, measured } }];
  });
}

function foundBefore(planned: Measurement, before: unknown, at: number): Length | null {
  if (typeof before !== 'object' || before === null || !('measured' in before)) return null;
  const read = Array.isArray(before.measured) ? measurementSchema.safeParse(before.measured[at]) : null;
  if (read?.success !== true) return null;
  return isSameData({ ...read.data, found: null }, planned) ? read.data.found : null;
}

function fieldsFrom(calculator: string, input: unknown): Partial<SeamCheckInput> | null {
  if (calculator === 'accuracy') {
    const read = accuracyInput.safeParse(input);
    return read.success ? alongTheRow(accuracyStretches(read.data), read.data.seamAllowance) : null;
  }
  if (calculator === 'wedge-ring') {
    const read = wedgeRingInput.safeParse(input);
    return read.success ? ofRing(read.data) : null;
  }
  if (calculator === 'patch-size') {
    const read = patchSizeInput.safeParse(input);
    return read.success ? ofPatches(read.data) : null;
  }
  const stretches = calculator === 'top' ? topStretches(input) : null;
  return stretches === null ? null : alongTheRow(stretches.row, stretches.seam, stretches.rounds);
}

/** Blocks that are trimmed count as one patch, since only their last cut is off. */
function accuracyStretches(input: AccuracyInput): readonly Stretch[] {
  const { blockSize, patchesAcross, blocksAcross, trimsBlocks } = input;
  const block = { width: blockSize, patches: trimsBlocks ? 1 : patchesAcross };
  return Array.from({ length: blocksAcross }, () => block);
}

/** Single patches, blocks, two blocks, the whole row, and the top after each round, which adds a patch at either end. */
function alongTheRow(
  row: readonly Stretch[],
  seam: Length,
  rounds: readonly Stretch[] = [],
): Partial<SeamCheckInput> | null {
  const [block] = row;
  if (block === undefined) return null;
  const patch = { width: block.width / block.patches, patches: 1 };
  const grown = rounds.map((_, at) => [
    ...row,
    ...rounds.slice(0, at + 1).flatMap((round) => [round, round]),
  ]);
  const sewn = [
    ...Array.from({ length: PATCHES }, () => [patch]),
    ...(block.patches === 1 ? [] : Array.from({ length: BLOCKS }, () => [block])),
    ...(row.length > 2 ? [row.slice(0, 2)] : []),
    ...(row.length > 1 ? [row] : []),
    ...grown,
  ];
  const measured = toMeasure(sewn, seam);
  const top = wholeTopSchema.safeParse(across(grown.at(-1) ?? row, seam));
  return { measured, ring: null, seamAllowance: seam, ...(top.success ? { top: top.data } : {}) };
}

function toMeasure(sewn: readonly (readonly Stretch[])[], seam: number): readonly Measurement[] {
  return sewn.flatMap((parts) => checked({ ...across(parts, seam), end: 'along', found: null }));
}

function across(parts: readonly Stretch[], seam: number): Omit<Measurement, 'end' | 'found'> {
  const width = parts.reduce((sum, part) => sum + part.width, 0);
  const patches = parts.reduce((sum, part) => sum + part.patches, 0);
  return { size: lengthFromExact(width + 2 * seam, 'nearest'), seams: patches - 1, patches };
}

/** Nothing where a size or a number is beyond its field. */
function checked(measurement: Measurement): readonly Measurement[] {
  const read = measurementSchema.safeParse(measurement);
  return read.success ? [read.data] : [];
}

/** Of rectangles as they are cut: single ones, and three sewn side by side, which show two seams. Nothing is known of the top. */
function ofPatches(input: PatchSizeInput): Partial<SeamCheckInput> | null {
  const { unit, seamAllowance } = input;
  const work = unit.unit === 'square' || unit.unit === 'rectangle' ? workOutPatches(input) : null;
  const cut = work?.ok === true ? work.value.sized[0]?.across.rounded : undefined;
  if (cut === undefined || cut <= 2 * seamAllowance) return null;
  const patch = { width: cut - 2 * seamAllowance, patches: 1 };
  const sewn = [
    ...Array.from({ length: PATCHES }, () => [patch]),
    ...Array.from({ length: BLOCKS }, () => [patch, patch, patch]),
  ];
  return { measured: toMeasure(sewn, seamAllowance), top: null, ring: null, seamAllowance };
}

/** Single wedges tell a cut from a seam. */
const WEDGES = 2;
const PAIRS = 3;

/**
 * Wedges before they are sewn and pairs of them, from corner to corner at the inner and at the outer cut edge. A corner is x beside the
 * middle line of its wedge and y from the middle of the ring; the seam runs half a wedge beside that line, so the corner is
 * x · cos t + y · sin t from the seam.
 */
function ofRing(input: WedgeRingInput): Partial<SeamCheckInput> | null {
  const { wedges, innerRadius, outerRadius, seamAllowance } = input;
  if (innerRadius >= outerRadius) return null;
  const { half, fromStrip } = workOutWedgeRing(input);
  const [cos, sin] = [Math.cos(half), Math.sin(half)];
  const corner = (side: number, y: number) => {
    return { fromSeam: (side / 2) * cos + y * sin, alongSeam: y * cos - (side / 2) * sin };
  };
  const innerEdge = innerRadius - seamAllowance;
  const inner = corner(fromStrip.short, innerEdge);
  const outer = corner(fromStrip.long, innerEdge + fromStrip.height);
  const places = (patches: number, sizes: { readonly inner: number; readonly outer: number }) =>
    (['inner', 'outer'] as const).flatMap((end) => {
      const size = lengthFromExact(sizes[end], 'nearest');
      return checked({ size, seams: patches - 1, patches, end, found: null });
    });
  const single = places(1, { inner: fromStrip.short, outer: fromStrip.long });
  const pair = places(2, { inner: 2 * inner.fromSeam, outer: 2 * outer.fromSeam });
  const measured = [
    ...Array.from({ length: WEDGES }, () => single).flat(),
    ...Array.from({ length: PAIRS }, () => pair).flat(),
  ];
  const leg = lengthFromExact(outer.alongSeam - inner.alongSeam, 'nearest');
  return { measured, top: null, ring: { wedges, leg, radius: outerRadius }, seamAllowance };
}
