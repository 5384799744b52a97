import type { z } from 'zod';
import { choiceField } from '#core/domain/fields';
import { lengthFromInches } from '#core/units/length';
import { angleTerm, edgeTerm, exactEdge } from '../cut-edge';
import { polygonOf, stripShape } from '../cut-shapes';
import { type Computed, type PatchUnit, sizeField, unitSizes } from '../patch-unit';

const round = choiceField(['six', 'eight'], {
  title: 'Kites around a point',
  help: 'Six make a hexagon, eight an octagon. Each kite has two right angles.',
});

export const kiteSizes = unitSizes(
  'kite',
  'Kite',
  { longSide: sizeField('Long side', 'From the sharp point to the right angle.'), round },
  { longSide: lengthFromInches(3), round: 'six' },
);

type Sizes = Computed<z.infer<typeof kiteSizes>>;

export const kite: PatchUnit<Sizes> = {
  kind: 'kite',
  fabrics: { first: 'the kites' },
  cutMeans: 'the strip',
  plan: ({ longSide, round }, seam) => {
    const half = halfAngle(round);
    const [sine, cosine] = [Math.sin(half), Math.cos(half)];
    const terms = [edgeTerm('L', 'finished long side', longSide), halfAngleTerm(half)];
    const across = exactEdge(
      '2L·sin a + 2s(sin a + cos a)',
      2 * longSide * sine + 2 * seam * (sine + cosine),
      terms,
    );
    const along = exactEdge(
      'L/cos a + s(1/sin a + 1/cos a)',
      longSide / cosine + seam * (1 / sine + 1 / cosine),
      terms,
    );
    const outline = kitePolygon(2 * longSide * sine, longSide / cosine, longSide * cosine);
    const cut = kitePolygon(across.exact, along.exact, (across.exact / 2) * (cosine / sine));
    return {
      width: longSide / cosine,
      length: 2 * longSide * sine,
      outline,
      finishedPatches: [{ patch: 0, polygon: outline }],
      patches: [
        {
          name: 'Kite',
          role: 'first',
          across,
          along,
          shape: stripShape(cut, along.exact, along.exact),
          takes: 1,
          makes: 1,
          source: 'fabric',
        },
      ],
    };
  },
  fromCut: (sizes, seam) => {
    const half = halfAngle(sizes.round);
    const finished = sizes.longSide / (2 * Math.sin(half)) - seam * (1 + 1 / Math.tan(half));
    const formula = 'L = C/(2·sin a) − s(1 + 1/tan a)';
    const terms = [halfAngleTerm(half)];
    return { sizes: { ...sizes, longSide: finished }, formula, terms, cut: sizes.longSide, finished };
  },
};

function halfAngle(round: Sizes['round']): number {
  return round === 'six' ? Math.PI / 6 : Math.PI / 8;
}

function halfAngleTerm(half: number) {
  return angleTerm('a', 'half the sharp angle', (half * 180) / Math.PI);
}

/** Its axis is along the strip: the sharp point is at the left, the right angles are `shoulder` from it. */
function kitePolygon(across: number, along: number, shoulder: number) {
  return polygonOf([0, across / 2], [shoulder, 0], [along, across / 2], [shoulder, across]);
}
