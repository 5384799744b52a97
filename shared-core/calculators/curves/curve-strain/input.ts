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
import type { BoundCurve, CurveStrains, StrainVerdict } from '../strain';
import { grainField, limitFields, STARTING_LIMITS } from '../curve-fields';

export const curveStrainInput = z
  .object({
    side: choiceField(['inside', 'outside'], {
      title: 'Which edge',
      help: 'Inside: the edge of a hole or a scoop. Outside: a round edge of the piece.',
    }),
    radius: lengthField({ title: 'Radius of the edge', help: 'Of the cut edge; half of what it is across.' }),
    arc: numberField({
      title: 'How much of the circle',
      help: '360 is all of it; a rounded corner is 90.',
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

/** The hole if there is one, else the outside bend, else a rounded corner of 3 in. */
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

/** The curve as the strain formulas know it, in either fold. */
export function curveOf(asked: CurveStrainInput, fold: BindingFold): BoundCurve {
  return {
    side: asked.side,
    radius: asked.radius,
    seam: asked.seamAllowance,
    fold,
    strip: asked.stripWidth,
    cover: asked.backCover,
  };
}

export interface CurveStrainDetails {
  readonly seamRadius: number;
  /** Along the arc, at the cut edge and at the stitching. */
  readonly edgeLength: number;
  readonly seamLine: number;
  readonly strains: CurveStrains;
  readonly verdict: StrainVerdict;
  /** How far a strip cut to the length of the edge instead of the stitching would have to stretch (inside) or be eased (outside). */
  readonly cutToEdgeStrain: number;
  /** At the limit from which it is hard. */
  readonly widestStrip: number;
  readonly smallestRadius: number;
}
