import type { z } from 'zod';
import { choiceField } from '#core/domain/fields';
import { lengthFromInches } from '#core/units/length';
import { type EdgeTerm, edgeTerm, exactEdge } from '../cut-edge';
import { polygonOf, stripShape } from '../cut-shapes';
import { type Computed, type CutPatch, type PatchUnit, sizeField, unitSizes } from '../patch-unit';

const angle = choiceField(['60', '45'], {
  title: 'Sharp angle',
  help: 'In degrees. Six diamonds of 60° or eight of 45° make a star.',
});

export const diamondSizes = unitSizes(
  'diamond',
  'Diamond',
  { side: sizeField('Side', 'All four sides are equal.'), angle },
  { side: lengthFromInches(3), angle: '60' },
);

type Angle = '60' | '45';

const SINE: Readonly<Record<Angle, number>> = { '60': Math.sqrt(3) / 2, '45': Math.SQRT1_2 };
const COSINE: Readonly<Record<Angle, number>> = { '60': 1 / 2, '45': Math.SQRT1_2 };
const SINE_WRITTEN: Readonly<Record<Angle, string>> = { '60': '√3/2', '45': '√2/2' };
const SLANT_WRITTEN: Readonly<Record<Angle, string>> = { '60': '4s/√3', '45': '2s√2' };

export const diamond: PatchUnit<Computed<z.infer<typeof diamondSizes>>> = {
  kind: 'diamond',
  fabrics: { first: 'the diamonds' },
  cutMeans: 'the strip',
  plan: ({ side, angle }, seam) => {
    const [reach, height] = [side * COSINE[angle], side * SINE[angle]];
    const outline = polygonOf([0, 0], [side, 0], [side + reach, height], [reach, height]);
    const term = edgeTerm('F', 'finished side', side);
    return {
      width: side + reach,
      length: height,
      outline,
      finishedPatches: [{ patch: 0, polygon: outline }],
      patches: [{ ...diamondPatch(term, angle, seam), name: 'Diamond', role: 'first', takes: 1, makes: 1 }],
    };
  },
  fromCut: (sizes, seam) => {
    const finished = (sizes.side - 2 * seam) / SINE[sizes.angle];
    const formula = `F = (C − 2s)/(${SINE_WRITTEN[sizes.angle]})`;
    return { sizes: { ...sizes, side: finished }, formula, cut: sizes.side, finished };
  },
};

/** Also for stars: a strip, then cuts across it at the angle of the diamond, as far apart as the strip is wide. */
export function diamondPatch(
  side: EdgeTerm,
  angle: Angle,
  seam: number,
): Pick<CutPatch, 'across' | 'along' | 'shape' | 'source'> {
  const [sine, cosine] = [SINE[angle], COSINE[angle]];
  const across = exactEdge(`${side.symbol}·${SINE_WRITTEN[angle]} + 2s`, side.exact * sine + 2 * seam, [
    side,
  ]);
  const along = exactEdge(`${side.symbol} + ${SLANT_WRITTEN[angle]}`, side.exact + (2 * seam) / sine, [side]);
  const reach = along.exact * cosine;
  const cut = polygonOf([0, 0], [along.exact, 0], [along.exact + reach, across.exact], [reach, across.exact]);
  return { across, along, shape: stripShape(cut, along.exact + reach, along.exact), source: 'fabric' };
}
