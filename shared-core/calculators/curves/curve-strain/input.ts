import { z } from 'zod';
import { choiceField, lengthField, numberField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { type Length, lengthFromExact, lengthFromInches } from '#core/units/length';
import type { BindingFold } from '#core/calculators/binding/strip-width';
import {
  coverField,
  foldField,
  stripWidthField,
  thicknessField,
} from '#core/calculators/binding/binding-fields';
import { outlineTightestRadius } from '#core/calculators/outline/outline-measures';
import { cutStepField, cutStepOfSettings, seamField } from '#core/calculators/shared-fields';
import type { BoundCurve } from '../strain';
import { grainField, limitFields, STARTING_LIMITS } from '../curve-fields';

export const curveStrainInput = z
  .object({
    side: choiceField(['inside', 'outside'], {
      title: 'Which edge',
      help: 'Inside: the edge of a hole or scallop. Outside: a round edge or corner of the project.',
    }),
    radius: lengthField({ title: 'Radius of the edge', help: 'Of the cut edge: half its diameter.' }),
    arc: numberField({
      title: 'How much of the circle',
      help: '360 is the full circle; a rounded corner is 90.',
      unit: 'degrees',
      minimum: 1,
      maximum: 360,
    }),
    stripWidth: stripWidthField(),
    seamAllowance: seamField('From the edge to the stitching.'),
    fold: foldField(),
    grain: grainField(),
    quiltThickness: thicknessField(),
    backCover: coverField(),
    ...limitFields(),
    cutStep: cutStepField(),
  })
  .readonly();
export type CurveStrainInput = z.infer<typeof curveStrainInput>;

/** The hole if there is one, or the tightest outside curve, or a rounded corner with a 3 in radius. */
export function curveStrainFromProject({ outline, hole, settings }: Measurements): CurveStrainInput {
  const bend = outlineTightestRadius(outline);
  const outside = bend === null ? lengthFromInches(3) : atLeastShortest(bend);
  return {
    side: hole === null ? 'outside' : 'inside',
    radius: hole === null ? outside : atLeastShortest(hole.diameter / 2),
    arc: hole === null && bend === null ? 90 : 360,
    stripWidth: hole === null ? settings.bindingStripWidth : settings.innerStripWidth,
    seamAllowance: settings.seamAllowance,
    fold: 'double',
    grain: 'bias',
    quiltThickness: settings.quiltThickness,
    backCover: settings.backCover,
    ...STARTING_LIMITS,
    cutStep: cutStepOfSettings(settings),
  };
}

/** A radius field takes 1/64 in and more. */
function atLeastShortest(radius: number): Length {
  return lengthFromExact(Math.max(radius, lengthFromInches(1 / 64)), 'nearest');
}

/** The curve in the form that the strain formulas take, for either fold. */
export function curveOf(input: CurveStrainInput, fold: BindingFold): BoundCurve {
  return {
    side: input.side,
    radius: input.radius,
    seam: input.seamAllowance,
    fold,
    strip: input.stripWidth,
    thickness: input.quiltThickness,
  };
}
