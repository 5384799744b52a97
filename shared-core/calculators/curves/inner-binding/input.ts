import { z } from 'zod';
import { choiceField, flagField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { outlineSlit } from '#core/calculators/outline/outline-measures';
import { type Length, LENGTH_ZERO, lengthFromExact, lengthFromInches } from '#core/units/length';
import {
  coverField,
  foldField,
  squareStepField,
  squareStepOfSettings,
  stripWidthField,
  thicknessField,
} from '#core/calculators/binding/binding-fields';
import {
  cutStepField,
  cutStepOfSettings,
  fabricWidthField,
  seamField,
} from '#core/calculators/shared-fields';
import { grainField, limitFields, STARTING_LIMITS } from '../curve-fields';

export const innerBindingInput = z
  .object({
    holeDiameter: lengthField({ title: 'Hole diameter', help: 'Of the cut edge, before it is bound.' }),
    stripWidth: stripWidthField(),
    seamAllowance: seamField(
      'From the cut edge to the stitching. It is also the width you see on the front.',
    ),
    fold: foldField(),
    grain: grainField(),
    quiltThickness: thicknessField(),
    backCover: coverField(),
    hasSlit: flagField({ title: 'A slit runs from the edge to the hole' }),
    slitLength: lengthField({
      title: 'Length of the slit',
      help: 'From the outer edge to the hole.',
      minimum: LENGTH_ZERO,
    }),
    bindLegs: flagField({
      title: 'The slit is bound with the hole',
      help: 'One strip goes along one side of the slit, around the hole and along the other side.',
    }),
    legGrain: choiceField(['bias', 'straight'], { title: 'Sides of the slit' }).optional().meta({
      title: 'Strip for the sides of the slit',
      help: 'They are straight, so straight grain works there and saves bias. The hole takes bias.',
    }),
    join: choiceField(['tuck', 'diagonal'], {
      title: 'How the ends join',
      help: 'Tuck: fold the start and slip the end into it. Diagonal: sew the ends together first.',
    }),
    startFold: lengthField({
      title: 'Fold at the start',
      isSeldom: true,
      minimum: LENGTH_ZERO,
      maximum: lengthFromInches(4),
    }),
    overlap: lengthField({
      title: 'Ends overlap by',
      isSeldom: true,
      minimum: LENGTH_ZERO,
      maximum: lengthFromInches(6),
    }),
    tuck: lengthField({
      title: 'Length tucked into the fold',
      isSeldom: true,
      minimum: LENGTH_ZERO,
      maximum: lengthFromInches(4),
    }),
    diagonalRoom: lengthField({
      title: 'Smallest hole for a diagonal join',
      isSeldom: true,
      help: 'In a smaller hole, the ends are hard to sew together in place (common practice: 8 in).',
    }),
    ...limitFields(),
    fabricWidth: fabricWidthField()
      .optional()
      .meta({ title: 'Usable fabric width', help: 'Without the selvages.' }),
    squareStep: squareStepField(),
    cutStep: cutStepField(),
  })
  .readonly();
export type InnerBindingInput = z.infer<typeof innerBindingInput>;

/** If the project has no hole yet, it starts as 6 1/2 in. */
export function innerBindingFromProject(measurements: Measurements): InnerBindingInput {
  const { settings, hole, hasSlit, outline } = measurements;
  const half = lengthFromInches(1 / 2);
  const slit = hole === null || !hasSlit ? 0 : Math.max(0, outlineSlit(outline, hole));
  return {
    holeDiameter: holeOfProject(measurements),
    stripWidth: settings.innerStripWidth,
    seamAllowance: settings.seamAllowance,
    fold: 'double',
    grain: 'bias',
    quiltThickness: settings.quiltThickness,
    backCover: settings.backCover,
    hasSlit,
    slitLength: lengthFromExact(slit, 'up'),
    bindLegs: hasSlit,
    legGrain: 'bias',
    join: 'tuck',
    startFold: half,
    overlap: half,
    tuck: lengthFromInches(1 / 4),
    diagonalRoom: lengthFromInches(8),
    ...STARTING_LIMITS,
    fabricWidth: settings.fabricWidth,
    squareStep: squareStepOfSettings(settings),
    cutStep: cutStepOfSettings(settings),
  };
}

/** Answers saved before the fabric was asked for have no width: they take the usual one. */
export function usableWidth({ fabricWidth }: Pick<InnerBindingInput, 'fabricWidth'>): Length {
  return fabricWidth ?? STARTING_SETTINGS.fabricWidth;
}

/** The diameter of the project's hole, or 6 1/2 in if it has none. */
export function holeOfProject({ hole }: Pick<Measurements, 'hole'>): Length {
  return hole === null ? lengthFromInches(6.5) : hole.diameter;
}
