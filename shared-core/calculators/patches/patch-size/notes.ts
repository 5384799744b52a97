import { polygonArea } from '#core/geometry/polygon';
import { lengthFromInches } from '#core/units/length';
import type { Note } from '#core/calculators/explanation';
import { givenLength, lengthNearest } from '#core/calculators/quantities';
import type { PatchSizeWork } from './work';
import { patchUnits, planUnit, type UnitSizes } from '../patch-units';
import { PIECING_CAUTIONS } from '../piecing-cautions';

export function patchSizeNotes(work: PatchSizeWork): readonly Note[] {
  const { input } = work;
  const unitTips = patchUnits[input.unit.unit].tips?.(input.unit) ?? [];
  return [
    ...customaryNote(work),
    ...trimNote(work),
    ...joinNote(work),
    ...unitTips.map((says): Note => ({ kind: 'tip', says, values: {} })),
    ...PIECING_CAUTIONS,
  ];
}

function customaryNote({ input, plan }: PatchSizeWork): readonly Note[] {
  if (input.rounding === 'exact' || input.sizesAre === 'cut') return [];
  const quarter = lengthFromInches(1 / 4);
  const atQuarter = planUnit(input.unit, quarter);
  const isLost = atQuarter.patches.some(({ along }, index) => {
    return along.customary !== null && plan.patches[index]?.along.customary === null;
  });
  if (!isLost) return [];
  return [
    {
      kind: 'warning',
      says: 'The customary add-ons fit only a {quarter} seam. With a {seam} seam, the exact sizes are used and rounded up.',
      values: { quarter: givenLength(quarter), seam: givenLength(input.seamAllowance) },
    },
  ];
}

function trimNote({ input, fromCut, plan, sized }: PatchSizeWork): readonly Note[] {
  const isRectangle = Math.abs(polygonArea(plan.outline) - plan.width * plan.length) < 1;
  const isLarger = sized.some(({ across }) => across.rounded - across.exact > 1);
  if (!isLarger || !isRectangle) return [];
  const unfinished = (size: number) => lengthNearest(size + 2 * input.seamAllowance);
  const sizes = (fromCut?.sizes ?? input.unit) as UnitSizes;
  const part = patchUnits[sizes.unit].partToTrim?.(sizes);
  const { width, length } = part ?? plan;
  return [
    {
      kind: 'tip',
      says:
        part === undefined
          ? 'Cut sizes are rounded up, so the unit comes out a little large. Trim it to {width} by {length} before you sew it to its neighbors.'
          : `Cut sizes are rounded up. Trim ${part.name} to {width} by {length} before you sew the block. Trimming the finished block would cut off points.`,
      values: { width: unfinished(width), length: unfinished(length) },
    },
  ];
}

function joinNote({ needed }: PatchSizeWork): readonly Note[] {
  if (!needed.strips.some(({ isJoined }) => isJoined)) return [];
  return [
    {
      kind: 'tip',
      says: 'Some strips are longer than the fabric is wide. Join strips end to end first, then cut them to length.',
      values: {},
    },
  ];
}
