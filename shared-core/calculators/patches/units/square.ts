import type { z } from 'zod';
import { lengthFromInches } from '#core/units/length';
import { edgeTerm, plainEdge } from '../cut-edge';
import { rectangleAt, wholeShape } from '../cut-shapes';
import { type Computed, type PatchUnit, sizeField, unitSizes } from '../patch-unit';
import { squarePatch } from '../triangle-patch';

export const squareSizes = unitSizes(
  'square',
  'Square',
  { side: sizeField('Side') },
  { side: lengthFromInches(3) },
);

export const square: PatchUnit<Computed<z.infer<typeof squareSizes>>> = {
  kind: 'square',
  fabrics: { first: 'the squares' },
  cutMeans: 'the square',
  plan: ({ side }, seam) => {
    const edge = plainEdge(edgeTerm('F', 'finished side', side), seam);
    const outline = rectangleAt(0, 0, side, side);
    const counted = { name: 'Square', role: 'first', takes: 1, makes: 1 } as const;
    return {
      width: side,
      length: side,
      outline,
      finishedPatches: [{ patch: 0, polygon: outline }],
      patches: [squarePatch(counted, edge, wholeShape(edge.exact, edge.exact))],
    };
  },
  fromCut: (sizes, seam) => {
    const finished = sizes.side - 2 * seam;
    return { sizes: { ...sizes, side: finished }, formula: 'F = C − 2s', cut: sizes.side, finished };
  },
};
