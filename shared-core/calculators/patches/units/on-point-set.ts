import type { z } from 'zod';
import { countField } from '#core/domain/fields';
import { lengthFromInches } from '#core/units/length';
import { roundUpTo } from '#core/units/rounding';
import { halvedShape, polygonOf, quarteredShape, rectangleAt } from '../cut-shapes';
import {
  type Computed,
  type CutPatch,
  type FinishedPatch,
  type PatchUnit,
  sizeField,
  unitSizes,
} from '../patch-unit';
import { rectanglePatch } from '../rectangle-patch';
import { squarePatch } from '../triangle-patch';
import { cornerSettingEdge } from './corner-setting-triangles';
import { SETTING_TRIANGLES_TIP, sideSettingEdge } from './side-setting-triangles';

export const onPointSetSizes = unitSizes(
  'on-point-set',
  'Set of blocks on point',
  {
    block: sizeField('Block', 'Side of the blocks that stand on their points.'),
    across: countField({ title: 'Blocks across', minimum: 1, maximum: 12 }),
    down: countField({ title: 'Blocks down', minimum: 1, maximum: 12 }),
  },
  { block: lengthFromInches(6), across: 3, down: 4 },
);

type Sizes = Computed<z.infer<typeof onPointSetSizes>>;

export const onPointSet: PatchUnit<Sizes> = {
  kind: 'on-point-set',
  fabrics: { second: 'the squares and triangles around the blocks' },
  cutMeans: 'the blocks, with their seam allowance',
  plan: (sizes, seam) => {
    const diagonal = sizes.block * Math.SQRT2;
    const patches = patchesOf(sizes, seam);
    const place = (name: string, polygon: FinishedPatch['polygon']) => ({
      patch: patches.findIndex((patch) => patch.name === name),
      polygon,
    });
    const [width, length] = [sizes.across * diagonal, sizes.down * diagonal];
    return {
      width,
      length,
      outline: rectangleAt(0, 0, width, length),
      finishedPatches: [
        ...standing(sizes.across, sizes.down, diagonal, diagonal / 2).map((at) => place(BLOCK, at)),
        ...standing(sizes.across - 1, sizes.down - 1, diagonal, diagonal).map((at) => place(FILL, at)),
        ...sideTriangles(sizes, diagonal).map((at) => place(SIDE, at)),
        ...cornerTriangles(width, length, diagonal / 2).map((at) => place(CORNER, at)),
      ],
      patches,
    };
  },
  fromCut: (sizes, seam) => {
    const finished = sizes.block - 2 * seam;
    return { sizes: { ...sizes, block: finished }, formula: 'B = C − 2s', cut: sizes.block, finished };
  },
  tips: () => [SETTING_TRIANGLES_TIP],
};

const [BLOCK, FILL, SIDE, CORNER] = [
  'Block',
  'Square between the blocks',
  'Square for side triangles',
  'Square for corner triangles',
];

function patchesOf({ block, across, down }: Sizes, seam: number): readonly CutPatch[] {
  const sides = 2 * (across + down - 2);
  const square = { width: block, length: block, seam } as const;
  const side = sideSettingEdge(block, seam);
  const corner = cornerSettingEdge(block, seam);
  const counted = { role: 'second', makes: 1 } as const;
  const takesForSides = roundUpTo(sides / 4, 1);
  const between = (across - 1) * (down - 1);
  const blocks = rectanglePatch({
    name: BLOCK,
    role: 'first',
    ...square,
    takes: across * down,
    source: 'sewn',
  });
  const all = [
    blocks,
    rectanglePatch({ name: FILL, role: 'second', ...square, takes: between }),
    squarePatch({ name: SIDE, ...counted, takes: takesForSides }, side, quarteredShape(side.exact)),
    squarePatch({ name: CORNER, ...counted, takes: 2 }, corner, halvedShape(corner.exact, corner.exact)),
  ];
  return all.filter((patch) => patch.takes > 0);
}

/** Squares on point whose middles lie `diagonal` apart, the first `start` from both edges. */
function standing(across: number, down: number, diagonal: number, start: number) {
  return grid(across, down).map(([column, row]) => {
    const [x, y] = [start + column * diagonal, start + row * diagonal];
    const half = diagonal / 2;
    return polygonOf([x, y - half], [x + half, y], [x, y + half], [x - half, y]);
  });
}

function sideTriangles({ across, down }: Sizes, diagonal: number) {
  const half = diagonal / 2;
  const [right, bottom] = [across * diagonal, down * diagonal];
  const along = grid(across - 1, 1).flatMap(([column]) => {
    const x = (column + 1) * diagonal;
    return [
      polygonOf([x - half, 0], [x + half, 0], [x, half]),
      polygonOf([x - half, bottom], [x, bottom - half], [x + half, bottom]),
    ];
  });
  const upright = grid(down - 1, 1).flatMap(([row]) => {
    const y = (row + 1) * diagonal;
    return [
      polygonOf([0, y - half], [half, y], [0, y + half]),
      polygonOf([right, y - half], [right, y + half], [right - half, y]),
    ];
  });
  return [...along, ...upright];
}

function cornerTriangles(width: number, length: number, leg: number) {
  return [
    polygonOf([0, 0], [leg, 0], [0, leg]),
    polygonOf([width, 0], [width, leg], [width - leg, 0]),
    polygonOf([width, length], [width - leg, length], [width, length - leg]),
    polygonOf([0, length], [0, length - leg], [leg, length]),
  ];
}

function grid(across: number, down: number): readonly (readonly [number, number])[] {
  return Array.from({ length: across * down }, (_, index) => {
    const row = (index - (index % across)) / across;
    return [index % across, row] as const;
  });
}
