import { z } from 'zod';
import { choiceField, flagField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
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
import { cutStepField, cutStepOfSettings, seamField } from '#core/calculators/shared-fields';
import { grainField, limitFields, STARTING_LIMITS } from '../curve-fields';

export const innerBindingInput = z
  .object({
    holeDiameter: lengthField({ title: 'Hole across', help: 'The cut edge, before it is bound.' }),
    stripWidth: stripWidthField(),
    seamAllowance: seamField('From the cut edge to the stitching; also the width seen on the front.'),
    fold: foldField(),
    grain: grainField(),
    quiltThickness: thicknessField(),
    backCover: coverField(),
    hasSlit: flagField({ title: 'A slit runs from the edge to the hole' }),
    slitLength: lengthField({
      title: 'Slit',
      help: 'From the outer edge to the hole.',
      minimum: LENGTH_ZERO,
    }),
    bindLegs: flagField({
      title: 'The slit is bound with the hole',
      help: 'One strip goes down one side, round the hole and up the other.',
    }),
    joint: choiceField(['tuck', 'diagonal'], {
      title: 'Ends meet',
      help: 'Tuck: the start is folded and the end slips into it. Diagonal: the ends are sewn together first.',
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
      title: 'Tucked into the fold',
      isSeldom: true,
      minimum: LENGTH_ZERO,
      maximum: lengthFromInches(4),
    }),
    diagonalRoom: lengthField({
      title: 'Smallest hole for a diagonal joint',
      isSeldom: true,
      help: 'Below this there is no room to sew the ends together (common practice: 8 in).',
    }),
    ...limitFields(),
    squareStep: squareStepField(),
    cutStep: cutStepField(),
  })
  .readonly();
export type InnerBindingInput = z.infer<typeof innerBindingInput>;

/** A hole of 6 1/2 in stands in where the project has none yet. */
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
    joint: 'tuck',
    startFold: half,
    overlap: half,
    tuck: lengthFromInches(1 / 4),
    diagonalRoom: lengthFromInches(8),
    ...STARTING_LIMITS,
    squareStep: squareStepOfSettings(settings),
    cutStep: cutStepOfSettings(settings),
  };
}

export function holeOfProject({ hole }: Pick<Measurements, 'hole'>): Length {
  return hole === null ? lengthFromInches(6.5) : hole.diameter;
}
