import type { z } from 'zod';
import { lengthFromInches } from '#core/units/length';
import { edgeTerm, exactEdge } from '../cut-edge';
import { polygonOf, rectangleAt, wholeShape } from '../cut-shapes';
import { type Computed, type PatchUnit, sizeField, unitSizes } from '../patch-unit';
import { halfSquarePatch, squarePatch } from '../triangle-patch';

export const squareInASquareSizes = unitSizes(
  'square-in-a-square',
  'Square in a square',
  { side: sizeField('Side', 'Of the outer square. The center is set on point.') },
  { side: lengthFromInches(4) },
);

export const squareInASquare: PatchUnit<Computed<z.infer<typeof squareInASquareSizes>>> = {
  kind: 'square-in-a-square',
  fabrics: { first: 'the center', second: 'the corners' },
  cutMeans: 'the center square',
  plan: ({ side }, seam) => {
    const half = side / 2;
    const outer = edgeTerm('F', 'finished side of the outer square', side);
    const center = exactEdge('F/√2 + 2s', side / Math.SQRT2 + 2 * seam, [outer]);
    const corner = edgeTerm('F/2', 'half of it, the short side of a corner', half);
    return {
      width: side,
      length: side,
      outline: rectangleAt(0, 0, side, side),
      finishedPatches: [
        { patch: 0, polygon: polygonOf([half, 0], [side, half], [half, side], [0, half]) },
        { patch: 1, polygon: polygonOf([0, 0], [half, 0], [0, half]) },
        { patch: 1, polygon: polygonOf([side, 0], [side, half], [half, 0]) },
        { patch: 1, polygon: polygonOf([side, side], [half, side], [side, half]) },
        { patch: 1, polygon: polygonOf([0, side], [0, half], [half, side]) },
      ],
      patches: [
        squarePatch(
          { name: 'Center square', role: 'first', takes: 1, makes: 1 },
          center,
          wholeShape(center.exact, center.exact),
        ),
        halfSquarePatch({ name: 'Corner square', role: 'second', takes: 2, makes: 1 }, corner, seam),
      ],
    };
  },
  fromCut: (sizes, seam) => {
    const finished = (sizes.side - 2 * seam) * Math.SQRT2;
    return { sizes: { ...sizes, side: finished }, formula: 'F = (C − 2s)√2', cut: sizes.side, finished };
  },
};
