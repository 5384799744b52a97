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
import type { CenterPatch } from './center-patch';
import { cutStepField, cutStepOfSettings, seamField } from '#core/calculators/shared-fields';

const farthest = lengthFromMillimeters(2_000);

export const centerClearanceInput = z
  .object({
    holeDiameter: lengthField({ title: 'Hole across', help: 'The cut edge, before it is bound.' }),
    seamAllowance: seamField('From the cut edge to the stitching of the inner binding.'),
    backCover: coverField(),
    patchShape: choiceField(['square', 'circle', 'polygon'], { title: 'Shape of the center patch' }),
    patchAcross: lengthField({
      title: 'Center patch across',
      help: 'Finished: the side of a square, the diameter of a circle, or twice the way from the middle of a polygon to its flats.',
    }),
    patchSides: countField({ title: 'Sides of the polygon', minimum: 3, maximum: 24 }),
    offsetAcross: lengthField({
      title: 'Hole lies to the right of the patch’s middle by',
      help: 'Less than nothing is to the left.',
      minimum: lengthTimes(farthest, -1),
      maximum: farthest,
    }),
    offsetDown: lengthField({
      title: 'and below it by',
      help: 'Less than nothing is above.',
      minimum: lengthTimes(farthest, -1),
      maximum: farthest,
    }),
    accuracy: lengthField({
      title: 'How exactly you place it',
      help: 'The center may be off by this much, in any direction.',
      minimum: LENGTH_ZERO,
      maximum: lengthFromInches(2),
    }),
    cutStep: cutStepField(),
  })
  .readonly();
export type CenterClearanceInput = z.infer<typeof centerClearanceInput>;

/** The project does not know its center patch, so a square of 24 in, or the piece if that is smaller, stands in. */
export function centerClearanceFromProject(measurements: Measurements): CenterClearanceInput {
  const { settings, outline } = measurements;
  const { width, length } = outlineBounds(outline);
  return {
    holeDiameter: holeOfProject(measurements),
    seamAllowance: settings.seamAllowance,
    backCover: settings.backCover,
    patchShape: 'square',
    patchAcross: lengthFromExact(Math.min(lengthFromInches(24), width, length), 'down'),
    patchSides: 6,
    offsetAcross: LENGTH_ZERO,
    offsetDown: LENGTH_ZERO,
    accuracy: lengthFromInches(1 / 8),
    cutStep: cutStepOfSettings(settings),
  };
}

/** The patch as the geometry knows it. */
export function patchOf(asked: CenterClearanceInput): CenterPatch {
  return { shape: asked.patchShape, across: asked.patchAcross, sides: asked.patchSides };
}

export interface CenterClearanceDetails {
  readonly cutRadius: number;
  readonly seamRadius: number;
  /** From the hole's center to the nearest seam of the patch; negative outside the patch. */
  readonly centerToEdge: number;
  /** Fabric of the patch left at the cut edge, the seam line and the fold on the back; negative by how far each sticks out. */
  readonly clearanceAtCut: number;
  readonly clearanceAtSeam: number;
  readonly clearanceAtBack: number;
  /** At the seam line, with the center off by the accuracy in the worst direction. */
  readonly worstClearance: number;
  readonly seamsCrossed: number;
  readonly staysInside: boolean;
  /** Largest hole whose seam line stays inside at this center; not above zero where none does. */
  readonly largestHole: number;
}
