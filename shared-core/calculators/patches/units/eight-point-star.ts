import type { z } from 'zod';
import { lengthFromInches } from '#core/units/length';
import { edgeTerm, exactEdge } from '../cut-edge';
import { polygonOf, quarteredShape, rectangleAt, wholeShape } from '../cut-shapes';
import {
  type Computed,
  type CutPatch,
  type FinishedPatch,
  type PatchUnit,
  sizeField,
  unitSizes,
} from '../patch-unit';
import { squarePatch } from '../triangle-patch';
import { diamondPatch } from './diamond';

/** How often the side of a diamond goes into the side of the block. */
const DIAMONDS_IN_SIDE = 2 + Math.SQRT2;

export const eightPointStarSizes = unitSizes(
  'eight-point-star',
  'Eight-point star of diamonds',
  { side: sizeField('Side', 'Of the block. The star touches every side twice.') },
  { side: lengthFromInches(12) },
);

export const eightPointStar: PatchUnit<Computed<z.infer<typeof eightPointStarSizes>>> = {
  kind: 'eight-point-star',
  fabrics: { first: 'the star', second: 'the background' },
  cutMeans: 'the strip the diamonds are cut from',
  plan: ({ side }, seam) => ({
    width: side,
    length: side,
    outline: rectangleAt(0, 0, side, side),
    finishedPatches: piecesOf(side),
    patches: patchesOf(side, seam),
  }),
  fromCut: (sizes, seam) => {
    const finished = (sizes.side - 2 * seam) * Math.SQRT2 * DIAMONDS_IN_SIDE;
    const formula = 'W = (C − 2s)·√2·(2 + √2)';
    return { sizes: { ...sizes, side: finished }, formula, cut: sizes.side, finished };
  },
};

function patchesOf(side: number, seam: number): readonly CutPatch[] {
  const part = side / DIAMONDS_IN_SIDE;
  const block = edgeTerm('W', 'finished side of the block', side);
  const diamond = edgeTerm('D', 'side of a diamond, W/(2 + √2)', part);
  const corner = exactEdge('W/(2 + √2) + 2s', part + 2 * seam, [block]);
  const longSide = part * Math.SQRT2 + seam * (2 + 2 * Math.SQRT2);
  const triangle = exactEdge('W√2/(2 + √2) + s(2 + 2√2)', longSide, [block]);
  return [
    { ...diamondPatch(diamond, '45', seam), name: 'Diamond', role: 'first', takes: 8, makes: 1 },
    squarePatch(
      { name: 'Corner square', role: 'second', takes: 4, makes: 1 },
      corner,
      wholeShape(corner.exact, corner.exact),
    ),
    squarePatch(
      { name: 'Square for side triangles', role: 'second', takes: 1, makes: 1 },
      triangle,
      quarteredShape(longSide),
    ),
  ];
}

/** A quarter of the star: two diamonds, a corner square and a side triangle, turned four times. */
function piecesOf(side: number): readonly FinishedPatch[] {
  const part = side / DIAMONDS_IN_SIDE;
  const [near, tip] = [part * Math.SQRT1_2, side / 2];
  const quarter: readonly (readonly [number, readonly (readonly [number, number])[]])[] = [
    [
      0,
      [
        [0, 0],
        [part, 0],
        [tip, near],
        [near, near],
      ],
    ],
    [
      0,
      [
        [0, 0],
        [near, near],
        [near, tip],
        [0, part],
      ],
    ],
    [
      1,
      [
        [tip, near],
        [tip, tip],
        [near, tip],
        [near, near],
      ],
    ],
    [
      2,
      [
        [tip, -near],
        [tip, near],
        [part, 0],
      ],
    ],
  ];
  const turns = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ] as const;
  return turns.flatMap(([cos, sin]) =>
    quarter.map(([patch, corners]) => {
      const turned = corners.map(([x, y]) => [tip + x * cos - y * sin, tip + x * sin + y * cos] as const);
      return { patch, polygon: polygonOf(...turned) };
    }),
  );
}
