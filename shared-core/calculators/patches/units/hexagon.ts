import type { z } from 'zod';
import { lengthFromInches } from '#core/units/length';
import { edgeTerm, exactEdge } from '../cut-edge';
import { polygonOf, stripShape } from '../cut-shapes';
import { type Computed, type PatchUnit, sizeField, unitSizes } from '../patch-unit';

const ROOT_3 = Math.sqrt(3);

export const hexagonSizes = unitSizes(
  'hexagon',
  'Hexagon',
  { side: sizeField('Side', 'Half the width from point to point.') },
  { side: lengthFromInches(2) },
);

export const hexagon: PatchUnit<Computed<z.infer<typeof hexagonSizes>>> = {
  kind: 'hexagon',
  fabrics: { first: 'the hexagons' },
  cutMeans: 'the strip, which is the width from side to side',
  plan: ({ side }, seam) => {
    const term = edgeTerm('F', 'finished side', side);
    const strip = exactEdge('F√3 + 2s', side * ROOT_3 + 2 * seam, [term]);
    const cutSide = exactEdge('F + 2s/√3', side + (2 * seam) / ROOT_3, [term]);
    const outline = hexagonPolygon(side, side * ROOT_3);
    return {
      width: 2 * side,
      length: side * ROOT_3,
      outline,
      finishedPatches: [{ patch: 0, polygon: outline }],
      patches: [
        {
          name: 'Hexagon',
          role: 'first',
          across: strip,
          along: cutSide,
          shape: stripShape(hexagonPolygon(cutSide.exact, strip.exact), 2 * cutSide.exact, 2 * cutSide.exact),
          takes: 1,
          makes: 1,
          source: 'fabric',
        },
      ],
    };
  },
  fromCut: (sizes, seam) => {
    const finished = (sizes.side - 2 * seam) / ROOT_3;
    return { sizes: { ...sizes, side: finished }, formula: 'F = (C − 2s)/√3', cut: sizes.side, finished };
  },
};

/** With sides at the top and bottom. */
function hexagonPolygon(side: number, height: number) {
  const [left, right, middle] = [side / 2, 1.5 * side, height / 2];
  return polygonOf([left, 0], [right, 0], [2 * side, middle], [right, height], [left, height], [0, middle]);
}
