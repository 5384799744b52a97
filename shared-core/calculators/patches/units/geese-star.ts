import type { z } from 'zod';
import { lengthFromInches } from '#core/units/length';
import { polygonOf, rectangleAt } from '../cut-shapes';
import { type Computed, type PatchUnit, sizeField, unitSizes } from '../patch-unit';
import { rectanglePatch } from '../rectangle-patch';
import { fourAtATime } from './flying-geese';

export const geeseStarSizes = unitSizes(
  'geese-star',
  'Star of flying geese',
  { side: sizeField('Side', 'Of the block: a square with four geese and four corner squares around it.') },
  { side: lengthFromInches(8) },
);

export const geeseStar: PatchUnit<Computed<z.infer<typeof geeseStarSizes>>> = {
  kind: 'geese-star',
  fabrics: { first: 'the background', second: 'the points', third: 'the center' },
  cutMeans: 'the center square',
  plan: ({ side }, seam) => {
    const [part, half, far] = [side / 4, side / 2, (3 * side) / 4];
    const center = { name: 'Center square', role: 'third', width: half, length: half, seam } as const;
    const corner = {
      name: 'Corner square',
      role: 'first',
      width: part,
      length: part,
      seam,
      takes: 4,
    } as const;
    const above = [
      { patch: 2, polygon: polygonOf([part, 0], [far, 0], [half, part]) },
      { patch: 3, polygon: polygonOf([part, 0], [half, part], [part, part]) },
      { patch: 3, polygon: polygonOf([far, 0], [far, part], [half, part]) },
      { patch: 1, polygon: rectangleAt(0, 0, part, part) },
    ];
    return {
      width: side,
      length: side,
      outline: rectangleAt(0, 0, side, side),
      finishedPatches: [
        { patch: 0, polygon: rectangleAt(part, part, half, half) },
        ...fourTurns(above, side),
      ],
      patches: [rectanglePatch(center), rectanglePatch(corner), ...fourAtATime(part, seam).map(forOneStar)],
    };
  },
  partToTrim: ({ side }) => ({ name: 'each flying-geese unit', width: side / 2, length: side / 4 }),
  fromCut: (sizes, seam) => {
    const finished = 2 * (sizes.side - 2 * seam);
    return { sizes: { ...sizes, side: finished }, formula: 'W = 2(C − 2s)', cut: sizes.side, finished };
  },
};

/** A star takes exactly the four geese that are made at a time. */
function forOneStar<Patch extends { readonly makes: number }>(patch: Patch): Patch {
  return { ...patch, makes: 1 };
}

/** The patches turned four times by a quarter around the middle of a block with this side. */
export function fourTurns<Patch extends { readonly polygon: readonly { x: number; y: number }[] }>(
  patches: readonly Patch[],
  side: number,
): readonly Patch[] {
  const once = (patch: Patch): Patch => ({
    ...patch,
    polygon: patch.polygon.map(({ x, y }) => ({ x: side - y, y: x })),
  });
  const quarter = patches.map(once);
  const half = quarter.map(once);
  return [...patches, ...quarter, ...half, ...half.map(once)];
}
