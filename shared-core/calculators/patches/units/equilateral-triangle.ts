import type { z } from 'zod';
import { lengthFromInches } from '#core/units/length';
import { edgeTerm, exactEdge } from '../cut-edge';
import { polygonOf, stripShape } from '../cut-shapes';
import { type Computed, type PatchUnit, sizeField, unitSizes } from '../patch-unit';

const ROOT_3 = Math.sqrt(3);

export const equilateralTriangleSizes = unitSizes(
  'equilateral-triangle',
  'Equilateral triangle',
  { side: sizeField('Side', 'All three sides are equal.') },
  { side: lengthFromInches(4) },
);

export const equilateralTriangle: PatchUnit<Computed<z.infer<typeof equilateralTriangleSizes>>> = {
  kind: 'equilateral-triangle',
  fabrics: { first: 'the triangles' },
  cutMeans: 'the strip',
  plan: ({ side }, seam) => {
    const term = edgeTerm('F', 'finished side', side);
    const strip = exactEdge('F√3/2 + 3s', (side * ROOT_3) / 2 + 3 * seam, [term]);
    const cutSide = exactEdge('F + 2s√3', side + 2 * seam * ROOT_3, [term]);
    const height = (side * ROOT_3) / 2;
    const outline = polygonOf([0, height], [side / 2, 0], [side, height]);
    const cut = polygonOf([0, strip.exact], [cutSide.exact / 2, 0], [cutSide.exact, strip.exact]);
    return {
      width: side,
      length: height,
      outline,
      finishedPatches: [{ patch: 0, polygon: outline }],
      patches: [
        {
          name: 'Triangle',
          role: 'first',
          across: strip,
          along: cutSide,
          shape: stripShape(cut, cutSide.exact, cutSide.exact / 2),
          takes: 1,
          makes: 1,
          source: 'fabric',
        },
      ],
    };
  },
  fromCut: (sizes, seam) => {
    const finished = ((sizes.side - 3 * seam) * 2) / ROOT_3;
    return { sizes: { ...sizes, side: finished }, formula: 'F = 2(C − 3s)/√3', cut: sizes.side, finished };
  },
};
