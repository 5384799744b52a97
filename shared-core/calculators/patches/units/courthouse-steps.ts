import type { z } from 'zod';
import { countField } from '#core/domain/fields';
import { lengthFromInches } from '#core/units/length';
import { rectangleAt } from '../cut-shapes';
import { type Computed, type PatchUnit, sizeField, unitSizes } from '../patch-unit';
import { mergedPatches, type NamedRectangle } from '../rectangle-patch';

export const courthouseStepsSizes = unitSizes(
  'courthouse-steps',
  'Courthouse steps',
  {
    center: sizeField('Center'),
    firstStrip: sizeField('Top and bottom strips', 'Width of the two strips that begin every round.'),
    secondStrip: sizeField('Side strips', 'Width of the two strips that end every round.'),
    rounds: countField({ title: 'Rounds', help: 'Of four strips each.', minimum: 1, maximum: 12 }),
  },
  {
    center: lengthFromInches(2),
    firstStrip: lengthFromInches(1),
    secondStrip: lengthFromInches(1),
    rounds: 4,
  },
);

type Sizes = Computed<z.infer<typeof courthouseStepsSizes>>;

export const courthouseSteps: PatchUnit<Sizes> = {
  kind: 'courthouse-steps',
  fabrics: {
    first: 'the center',
    second: 'the strips at the top and bottom',
    third: 'the strips at the sides',
  },
  cutMeans: 'the center',
  plan: (sizes, seam) => {
    const { center, firstStrip, secondStrip, rounds } = sizes;
    const [width, length] = [center + 2 * rounds * secondStrip, center + 2 * rounds * firstStrip];
    const middle: NamedRectangle = {
      name: 'Center',
      role: 'first',
      source: 'fabric',
      width: center,
      length: center,
      polygon: rectangleAt(rounds * secondStrip, rounds * firstStrip, center, center),
    };
    return {
      width,
      length,
      outline: rectangleAt(0, 0, width, length),
      ...mergedPatches([middle, ...stepsOf(sizes)], seam),
    };
  },
  fromCut: (sizes, seam) => {
    const finished = sizes.center - 2 * seam;
    return {
      sizes: {
        ...sizes,
        center: finished,
        firstStrip: sizes.firstStrip - 2 * seam,
        secondStrip: sizes.secondStrip - 2 * seam,
      },
      formula: 'F = C − 2s (for the center and the strips)',
      cut: sizes.center,
      finished,
    };
  },
  tips: () => [
    'Sew the top and bottom strips of a round first and press them away from the center, then both side strips across their ends.',
  ],
};

/**
 * A round adds a strip above and below, as long as what is there is wide, then one on each side, as long as what is there is tall.
 * The first two are from the second fabric, the others from the third.
 */
function stepsOf({ center, firstStrip: a, secondStrip: b, rounds }: Sizes): readonly NamedRectangle[] {
  return Array.from({ length: rounds }, (_, before): readonly NamedRectangle[] => {
    const [wide, tall] = [center + 2 * before * b, center + 2 * (before + 1) * a];
    const [left, top] = [(rounds - before) * b, (rounds - before - 1) * a];
    const first = {
      name: `Round ${String(before + 1)}, top and bottom`,
      role: 'second',
      source: 'fabric',
      width: wide,
      length: a,
    } as const;
    const last = {
      name: `Round ${String(before + 1)}, sides`,
      role: 'third',
      source: 'fabric',
      width: b,
      length: tall,
    } as const;
    return [
      { ...first, polygon: rectangleAt(left, top, wide, a) },
      { ...first, polygon: rectangleAt(left, top + tall - a, wide, a) },
      { ...last, polygon: rectangleAt(left - b, top, b, tall) },
      { ...last, polygon: rectangleAt(left + wide, top, b, tall) },
    ];
  }).flat();
}
