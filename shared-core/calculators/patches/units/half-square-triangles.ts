import type { z } from 'zod';
import { assertNever } from '#core/assert-never';
import { choiceField } from '#core/domain/fields';
import { lengthFromInches, UNITS_PER_INCH } from '#core/units/length';
import { atQuarterInch, type CutEdge, type EdgeTerm, edgeTerm, exactEdge, halfSquareEdge } from '../cut-edge';
import {
  type CutShape,
  eighthsShape,
  halvedShape,
  polygonOf,
  quarteredShape,
  rectangleAt,
} from '../cut-shapes';
import { type Computed, type PatchUnit, sizeField, unitSizes } from '../patch-unit';
import { squarePatch } from '../triangle-patch';

const atATime = choiceField(['two', 'four', 'eight'], {
  title: 'How many at once',
  help:
    'Two: sewn on both sides of the diagonal. Four: sewn around the edge, which leaves all edges on the bias. ' +
    'Eight: sewn on both sides of both diagonals.',
});

export const halfSquareTriangleSizes = unitSizes(
  'half-square-triangles',
  'Half-square triangles',
  { side: sizeField('Side', 'Of the square that two triangles make.'), atATime },
  { side: lengthFromInches(3), atATime: 'two' },
);

type Sizes = Computed<z.infer<typeof halfSquareTriangleSizes>>;

export const halfSquareTriangles: PatchUnit<Sizes> = {
  kind: 'half-square-triangles',
  fabrics: { first: 'one half', second: 'the other half' },
  cutMeans: 'the squares that are sewn together',
  plan: ({ side, atATime }, seam) => {
    const { edge, shape, makes } = squaresFor(atATime, edgeTerm('F', 'finished side', side), seam);
    return {
      width: side,
      length: side,
      outline: rectangleAt(0, 0, side, side),
      finishedPatches: [
        { patch: 0, polygon: polygonOf([0, 0], [side, 0], [0, side]) },
        { patch: 1, polygon: polygonOf([side, side], [0, side], [side, 0]) },
      ],
      patches: [
        squarePatch({ name: 'Square', role: 'first', takes: 1, makes }, edge, shape),
        squarePatch({ name: 'Square to go with it', role: 'second', takes: 1, makes }, edge, shape),
      ],
    };
  },
  fromCut: (sizes, seam) => {
    const { formula, finished } = finishedFrom(sizes.atATime, sizes.side, seam);
    return { sizes: { ...sizes, side: finished }, formula, cut: sizes.side, finished };
  },
  tips: ({ atATime }) =>
    atATime === 'four'
      ? [
          'Made four at a time, all four edges are on the bias. Starch the squares, and press without pushing.',
        ]
      : [],
};

/** Four at a time: the squares are sewn around the edge, so that each edge is the long side of a triangle that is cut to `F + 2s`. */
function squaresFor(
  atATime: Sizes['atATime'],
  side: EdgeTerm,
  seam: number,
): { readonly edge: CutEdge; readonly shape: CutShape; readonly makes: number } {
  const one = halfSquareEdge(side, seam);
  switch (atATime) {
    case 'two':
      return { edge: one, shape: halvedShape(one.exact, one.exact), makes: 2 };
    case 'four': {
      const exact = (side.exact + 2 * seam) * Math.SQRT2 + 2 * seam;
      return { edge: exactEdge('(F + 2s)√2 + 2s', exact, [side]), shape: quarteredShape(exact), makes: 4 };
    }
    case 'eight': {
      const customary = atQuarterInch(seam, '2F + 1 3/4 in', 2 * side.exact + 1.75 * UNITS_PER_INCH);
      const edge = { ...exactEdge('2(F + s(2 + √2))', 2 * one.exact, [side]), customary };
      return { edge, shape: eighthsShape(edge.exact), makes: 8 };
    }
    default:
      return assertNever(atATime);
  }
}

function finishedFrom(atATime: Sizes['atATime'], cut: number, seam: number) {
  switch (atATime) {
    case 'two':
      return { formula: 'F = C − s(2 + √2)', finished: cut - seam * (2 + Math.SQRT2) };
    case 'four':
      return { formula: 'F = (C − 2s)/√2 − 2s', finished: (cut - 2 * seam) / Math.SQRT2 - 2 * seam };
    case 'eight':
      return { formula: 'F = C/2 − s(2 + √2)', finished: cut / 2 - seam * (2 + Math.SQRT2) };
    default:
      return assertNever(atATime);
  }
}
