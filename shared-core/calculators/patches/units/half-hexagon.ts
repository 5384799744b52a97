import type { z } from 'zod';
import { lengthFromInches } from '#core/units/length';
import { edgeTerm, exactEdge } from '../cut-edge';
import { polygonOf, stripShape } from '../cut-shapes';
import { type Computed, type PatchUnit, sizeField, unitSizes } from '../patch-unit';

const ROOT_3 = Math.sqrt(3);

export const halfHexagonSizes = unitSizes(
  'half-hexagon',
  'Half hexagon',
  { side: sizeField('Short side', 'The long side, from point to point, is twice as long.') },
  { side: lengthFromInches(2) },
);

export const halfHexagon: PatchUnit<Computed<z.infer<typeof halfHexagonSizes>>> = {
  kind: 'half-hexagon',
  fabrics: { first: 'the half hexagons' },
  cutMeans: 'the strip',
  plan: ({ side }, seam) => {
    const term = edgeTerm('F', 'finished short side', side);
    const strip = exactEdge('F√3/2 + 2s', (side * ROOT_3) / 2 + 2 * seam, [term]);
    const long = exactEdge('2F + 2s√3', 2 * side + 2 * seam * ROOT_3, [term]);
    const cutShort = side + (2 * seam) / ROOT_3;
    const outline = trapezoid(2 * side, side, (side * ROOT_3) / 2);
    return {
      width: 2 * side,
      length: (side * ROOT_3) / 2,
      outline,
      finishedPatches: [{ patch: 0, polygon: outline }],
      patches: [
        {
          name: 'Half hexagon',
          role: 'first',
          across: strip,
          along: long,
          shape: stripShape(
            trapezoid(long.exact, cutShort, strip.exact),
            long.exact,
            (long.exact + cutShort) / 2,
          ),
          takes: 1,
          makes: 1,
          source: 'fabric',
        },
      ],
    };
  },
  fromCut: (sizes, seam) => {
    const finished = ((sizes.side - 2 * seam) * 2) / ROOT_3;
    return { sizes: { ...sizes, side: finished }, formula: 'F = 2(C − 2s)/√3', cut: sizes.side, finished };
  },
};

/** The long side is at the bottom. Every other one is upside down in the strip, so that neighbors share a slanted cut. */
function trapezoid(long: number, short: number, height: number) {
  const inset = (long - short) / 2;
  return polygonOf([inset, 0], [inset + short, 0], [long, height], [0, height]);
}
