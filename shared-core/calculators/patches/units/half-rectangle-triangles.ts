import type { z } from 'zod';
import { lengthFromInches } from '#core/units/length';
import { edgeTerm, exactEdge } from '../cut-edge';
import { halvedShape, polygonOf, rectangleAt } from '../cut-shapes';
import { type Computed, type CutPatch, type PatchUnit, sizeField, unitSizes } from '../patch-unit';

export const halfRectangleTriangleSizes = unitSizes(
  'half-rectangle-triangles',
  'Half-rectangle triangles',
  { width: sizeField('Width', 'Of the rectangle that two triangles make.'), length: sizeField('Length') },
  { width: lengthFromInches(2), length: lengthFromInches(4) },
);

type Sizes = Computed<z.infer<typeof halfRectangleTriangleSizes>>;

export const halfRectangleTriangles: PatchUnit<Sizes> = {
  kind: 'half-rectangle-triangles',
  fabrics: { first: 'one half', second: 'the other half' },
  cutMeans: 'the width of the rectangles that are cut on the diagonal',
  plan: ({ width, length }, seam) => ({
    width,
    length,
    outline: rectangleAt(0, 0, width, length),
    finishedPatches: [
      { patch: 0, polygon: polygonOf([0, 0], [width, 0], [0, length]) },
      { patch: 1, polygon: polygonOf([width, length], [0, length], [width, 0]) },
    ],
    patches: [
      { ...halvedRectangle(width, length, seam), name: 'Rectangle', role: 'first' },
      { ...halvedRectangle(width, length, seam), name: 'Rectangle to go with it', role: 'second' },
    ],
  }),
  fromCut: (sizes, seam) => {
    const diagonal = Math.hypot(sizes.width, sizes.length);
    const finished = sizes.width - seam - (seam * (diagonal + sizes.width)) / sizes.length;
    const length = sizes.length - seam - (seam * (diagonal + sizes.length)) / sizes.width;
    return {
      sizes: { ...sizes, width: finished, length },
      formula: 'W = C − s − s(D + C)/E',
      terms: [edgeTerm('E', 'cut length', sizes.length), edgeTerm('D', 'cut diagonal', diagonal)],
      cut: sizes.width,
      finished,
    };
  },
  tips: () => [
    'The two diagonals are not the same: cut all rectangles right side up for one direction, or layer them right sides together for mirrored pairs.',
  ],
};

/** A sharp corner of angle α adds s/tan(α/2) to its side, the right angle adds s. */
function halvedRectangle(width: number, length: number, seam: number): Omit<CutPatch, 'name' | 'role'> {
  const diagonal = Math.hypot(width, length);
  const terms = [
    edgeTerm('W', 'finished width', width),
    edgeTerm('L', 'finished length', length),
    edgeTerm('D', 'finished diagonal, √(W² + L²)', diagonal),
  ];
  const across = exactEdge('W + s + s(D + W)/L', width + seam + (seam * (diagonal + width)) / length, terms);
  const along = exactEdge('L + s + s(D + L)/W', length + seam + (seam * (diagonal + length)) / width, terms);
  const shape = halvedShape(across.exact, along.exact);
  return { across, along, shape, takes: 1, makes: 2, source: 'fabric', standsUp: true };
}
