import type { z } from 'zod';
import { lengthFromInches, UNITS_PER_INCH } from '#core/units/length';
import { atQuarterInch, type CutEdge, edgeTerm } from '../cut-edge';
import { polygonOf, quarteredShape } from '../cut-shapes';
import { type Computed, type PatchUnit, sizeField, unitSizes } from '../patch-unit';
import { squarePatch } from '../triangle-patch';

export const sideSettingTriangleSizes = unitSizes(
  'side-setting-triangles',
  'Side setting triangles',
  { block: sizeField('Block', 'Side of the blocks, which are set on point.') },
  { block: lengthFromInches(12) },
);

/** Cut on both diagonals, so that the edge of the top is on straight grain. */
export function sideSettingEdge(block: number, seam: number): CutEdge {
  return {
    formula: 'B√2 + s(2 + 2√2)',
    exact: block * Math.SQRT2 + seam * (2 + 2 * Math.SQRT2),
    terms: [edgeTerm('B', 'finished side of a block', block)],
    customary: atQuarterInch(seam, '1.414 B + 1 1/4 in', 1.414 * block + 1.25 * UNITS_PER_INCH),
  };
}

export const SETTING_TRIANGLES_TIP =
  'This is the exact size. Many makers cut setting triangles larger and trim the finished top, so that the points of the blocks float inside the edge.';

export const sideSettingTriangles: PatchUnit<Computed<z.infer<typeof sideSettingTriangleSizes>>> = {
  kind: 'side-setting-triangles',
  fabrics: { first: 'the triangles' },
  cutMeans: 'the square that is cut into four',
  plan: ({ block }, seam) => {
    const width = block * Math.SQRT2;
    const edge = sideSettingEdge(block, seam);
    const outline = polygonOf([0, 0], [width, 0], [width / 2, width / 2]);
    return {
      width,
      length: width / 2,
      outline,
      finishedPatches: [{ patch: 0, polygon: outline }],
      patches: [
        squarePatch(
          { name: 'Square for side triangles', role: 'first', takes: 1, makes: 4 },
          edge,
          quarteredShape(edge.exact),
        ),
      ],
    };
  },
  fromCut: (sizes, seam) => {
    const finished = (sizes.block - seam * (2 + 2 * Math.SQRT2)) / Math.SQRT2;
    const formula = 'B = (C − s(2 + 2√2))/√2';
    return { sizes: { ...sizes, block: finished }, formula, cut: sizes.block, finished };
  },
  tips: () => [SETTING_TRIANGLES_TIP],
};
