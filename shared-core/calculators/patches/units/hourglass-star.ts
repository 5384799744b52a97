import type { z } from 'zod';
import { lengthFromInches } from '#core/units/length';
import { edgeTerm } from '../cut-edge';
import { polygonOf, rectangleAt } from '../cut-shapes';
import { type Computed, type PatchUnit, sizeField, unitSizes } from '../patch-unit';
import { rectanglePatch } from '../rectangle-patch';
import { quarterSquarePatch } from '../triangle-patch';
import { fourTurns } from './geese-star';

export const hourglassStarSizes = unitSizes(
  'hourglass-star',
  'Star of quarter-square triangles',
  { side: sizeField('Side', 'Of the block: nine squares, four of them made of quarter-square triangles.') },
  { side: lengthFromInches(9) },
);

export const hourglassStar: PatchUnit<Computed<z.infer<typeof hourglassStarSizes>>> = {
  kind: 'hourglass-star',
  fabrics: { first: 'the background', second: 'the points', third: 'the center' },
  cutMeans: 'the center square',
  plan: ({ side }, seam) => {
    const [third, far, middle] = [side / 3, (2 * side) / 3, side / 6];
    const square = { width: third, length: third, seam } as const;
    const longSide = edgeTerm('T', 'a third of the finished block', third);
    const top = [side / 2, middle] as const;
    const above = [
      { patch: 2, polygon: polygonOf([third, 0], [far, 0], top) },
      { patch: 3, polygon: polygonOf([far, 0], [far, third], top) },
      { patch: 2, polygon: polygonOf([far, third], [third, third], top) },
      { patch: 3, polygon: polygonOf([third, third], [third, 0], top) },
      { patch: 1, polygon: rectangleAt(0, 0, third, third) },
    ];
    const counted = { takes: 2, makes: 1 } as const;
    return {
      width: side,
      length: side,
      outline: rectangleAt(0, 0, side, side),
      finishedPatches: [
        { patch: 0, polygon: rectangleAt(third, third, third, third) },
        ...fourTurns(above, side),
      ],
      patches: [
        rectanglePatch({ ...square, name: 'Center square', role: 'third' }),
        rectanglePatch({ ...square, name: 'Corner square', role: 'first', takes: 4 }),
        quarterSquarePatch({ ...counted, name: 'Square for triangles', role: 'first' }, longSide, seam),
        quarterSquarePatch({ ...counted, name: 'Square to go with it', role: 'second' }, longSide, seam),
      ],
    };
  },
  partToTrim: ({ side }) => ({ name: 'each square of four triangles', width: side / 3, length: side / 3 }),
  fromCut: (sizes, seam) => {
    const finished = 3 * (sizes.side - 2 * seam);
    return { sizes: { ...sizes, side: finished }, formula: 'W = 3(C − 2s)', cut: sizes.side, finished };
  },
};
