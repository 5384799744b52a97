import type { z } from 'zod';
import { lengthFromInches, UNITS_PER_INCH } from '#core/units/length';
import { atQuarterInch, type CutEdge, edgeTerm } from '../cut-edge';
import { halvedShape, polygonOf } from '../cut-shapes';
import { type Computed, type PatchUnit, sizeField, unitSizes } from '../patch-unit';
import { squarePatch } from '../triangle-patch';
import { SETTING_TRIANGLES_TIP } from './side-setting-triangles';

export const cornerSettingTriangleSizes = unitSizes(
  'corner-setting-triangles',
  'Corner setting triangles',
  { block: sizeField('Block', 'Side of the blocks, which are set on point.') },
  { block: lengthFromInches(12) },
);

/** Cut once on the diagonal, so that both edges of the corner are on straight grain. */
export function cornerSettingEdge(block: number, seam: number): CutEdge {
  return {
    formula: 'B/√2 + s(2 + √2)',
    exact: block / Math.SQRT2 + seam * (2 + Math.SQRT2),
    terms: [edgeTerm('B', 'finished side of a block', block)],
    customary: atQuarterInch(seam, 'B/1.414 + 7/8 in', block / 1.414 + (7 / 8) * UNITS_PER_INCH),
  };
}

export const cornerSettingTriangles: PatchUnit<Computed<z.infer<typeof cornerSettingTriangleSizes>>> = {
  kind: 'corner-setting-triangles',
  fabrics: { first: 'the triangles' },
  cutMeans: 'the square that is cut into two',
  plan: ({ block }, seam) => {
    const leg = block / Math.SQRT2;
    const edge = cornerSettingEdge(block, seam);
    const outline = polygonOf([0, 0], [leg, 0], [0, leg]);
    return {
      width: leg,
      length: leg,
      outline,
      finishedPatches: [{ patch: 0, polygon: outline }],
      patches: [
        squarePatch(
          { name: 'Square for corner triangles', role: 'first', takes: 1, makes: 2 },
          edge,
          halvedShape(edge.exact, edge.exact),
        ),
      ],
    };
  },
  fromCut: (sizes, seam) => {
    const finished = (sizes.block - seam * (2 + Math.SQRT2)) * Math.SQRT2;
    const formula = 'B = (C − s(2 + √2))√2';
    return { sizes: { ...sizes, block: finished }, formula, cut: sizes.block, finished };
  },
  tips: () => [SETTING_TRIANGLES_TIP],
};
