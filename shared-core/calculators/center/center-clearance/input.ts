import { z } from 'zod';
import { choiceField, countField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import {
  LENGTH_ZERO,
  lengthFromExact,
  lengthFromInches,
  lengthFromMillimeters,
  lengthTimes,
} from '#core/units/length';
import { coverField } from '#core/calculators/binding/binding-fields';
import { holeOfProject } from '#core/calculators/curves/inner-binding/input';
import { outlineBounds } from '#core/calculators/outline/outline-measures';
import { seamField } from '#core/calculators/shared-fields';

const farthest = lengthFromMillimeters(2_000);

const onePatch = z
  .object({
    what: z.literal('one-patch'),
    patchShape: choiceField(['square', 'circle', 'polygon'], { title: 'Shape of the center patch' }),
    patchAcross: lengthField({
      title: 'Center patch across',
      help: 'Finished size: the side of a square, the diameter of a circle, or twice the distance from the middle of a polygon to its sides.',
    }),
    patchSides: countField({ title: 'Sides of the polygon', minimum: 3, maximum: 24 }),
    offsetAcross: lengthField({
      title: 'Hole is to the right of the middle of the patch by',
      help: 'Use a minus number for left.',
      minimum: lengthTimes(farthest, -1),
      maximum: farthest,
    }),
    offsetDown: lengthField({
      title: 'and below it by',
      help: 'Use a minus number for above.',
      minimum: lengthTimes(farthest, -1),
      maximum: farthest,
    }),
    accuracy: lengthField({
      title: 'How accurately you mark the center',
      help: 'The center may be off by this much in any direction.',
      minimum: LENGTH_ZERO,
      maximum: lengthFromInches(2),
    }),
  })
  .readonly();
export type OnePatch = z.infer<typeof onePatch>;

const STARTING_ACCURACY = lengthFromInches(1 / 8);

function startingPatch(patchAcross: OnePatch['patchAcross']): OnePatch {
  return {
    what: 'one-patch',
    patchShape: 'square',
    patchAcross,
    patchSides: 6,
    offsetAcross: LENGTH_ZERO,
    offsetDown: LENGTH_ZERO,
    accuracy: STARTING_ACCURACY,
  };
}

const seamsMeet = z
  .object({
    what: z.literal('seams-meet'),
    seams: countField({
      title: 'Seams that meet there',
      help: 'Count them once around the middle: a ring of 12 wedges has 12, four blocks have 4.',
      minimum: 2,
      maximum: 120,
    }),
  })
  .readonly();
export type SeamsMeet = z.infer<typeof seamsMeet>;

export const centerClearanceInput = z
  .object({
    middle: z
      .discriminatedUnion('what', [
        onePatch.meta({ examples: [startingPatch(lengthFromInches(24))] }),
        seamsMeet.meta({ examples: [{ seams: 8 }] }),
      ])
      .meta({
        title: 'In the middle of the top',
        description:
          'Wedges, stars and blocks that meet in the middle have seams there, and the hole crosses them all.',
      }),
    holeDiameter: lengthField({ title: 'Hole diameter', help: 'Of the cut edge, before it is bound.' }),
    seamAllowance: seamField('From the cut edge to the stitching of the inner binding.'),
    backCover: coverField(),
  })
  .readonly();
export type CenterClearanceInput = z.infer<typeof centerClearanceInput>;

/** A project has no size of a center patch, so it starts as a 24 in square, or as large as the project if that is smaller. */
export function centerClearanceFromProject(measurements: Measurements): CenterClearanceInput {
  const { settings, outline } = measurements;
  const { width, length } = outlineBounds(outline);
  return {
    middle: startingPatch(lengthFromExact(Math.min(lengthFromInches(24), width, length), 'down')),
    holeDiameter: holeOfProject(measurements),
    seamAllowance: settings.seamAllowance,
    backCover: settings.backCover,
  };
}
