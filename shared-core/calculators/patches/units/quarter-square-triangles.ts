import type { z } from 'zod';
import { lengthFromInches } from '#core/units/length';
import { edgeTerm } from '../cut-edge';
import { polygonOf, rectangleAt } from '../cut-shapes';
import { type Computed, type PatchUnit, sizeField, unitSizes } from '../patch-unit';
import { quarterSquarePatch } from '../triangle-patch';

export const quarterSquareTriangleSizes = unitSizes(
  'quarter-square-triangles',
  'Quarter-square triangles',
  { side: sizeField('Side', 'Of the square that four triangles make. Two squares make two of them.') },
  { side: lengthFromInches(3) },
);

export const quarterSquareTriangles: PatchUnit<Computed<z.infer<typeof quarterSquareTriangleSizes>>> = {
  kind: 'quarter-square-triangles',
  fabrics: { first: 'two of the triangles', second: 'the other two triangles' },
  cutMeans: 'the squares that are sewn together',
  plan: ({ side }, seam) => {
    const longSide = edgeTerm('F', 'finished side', side);
    const middle = [side / 2, side / 2] as const;
    return {
      width: side,
      length: side,
      outline: rectangleAt(0, 0, side, side),
      finishedPatches: [
        { patch: 0, polygon: polygonOf([0, 0], [side, 0], middle) },
        { patch: 1, polygon: polygonOf([side, 0], [side, side], middle) },
        { patch: 0, polygon: polygonOf([side, side], [0, side], middle) },
        { patch: 1, polygon: polygonOf([0, side], [0, 0], middle) },
      ],
      patches: [
        quarterSquarePatch({ name: 'Square', role: 'first', takes: 1, makes: 2 }, longSide, seam),
        quarterSquarePatch(
          { name: 'Square to go with it', role: 'second', takes: 1, makes: 2 },
          longSide,
          seam,
        ),
      ],
    };
  },
  fromCut: (sizes, seam) => {
    const finished = sizes.side - seam * (2 + 2 * Math.SQRT2);
    return { sizes: { ...sizes, side: finished }, formula: 'F = C − s(2 + 2√2)', cut: sizes.side, finished };
  },
};
