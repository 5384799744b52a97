import { z } from 'zod';
import { choiceField, countField, flagField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { type Length, lengthFromExact, lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import { roundDownTo } from '#core/units/rounding';
import { outlineBounds } from '../outline/outline-measures';
import { seamField } from '../shared-fields';

const seamsField = () => countField({ title: 'Seams it crosses', minimum: 0, maximum: 200 });
const patchesField = () => countField({ title: 'Patches side by side', minimum: 1, maximum: 200 });

export const measurementSchema = z
  .object({
    size: lengthField({ title: 'Should measure', help: 'As sewn, from cut edge to cut edge.' }),
    seams: seamsField(),
    patches: patchesField(),
    end: choiceField(['along', 'inner', 'outer'], {
      title: 'Where',
      help: 'On a ring of wedges, the inner or the outer end of the seams. Otherwise along.',
    }),
    found: lengthField({ title: 'Measures', help: 'Blank until you have measured it.' })
      .nullable()
      .meta({ title: 'Measures' }),
  })
  .readonly()
  .meta({ title: 'Measurement' });
export type Measurement = z.infer<typeof measurementSchema>;

export const wholeTopSchema = z
  .object({
    size: lengthField({ title: 'Should measure', help: 'As sewn, from cut edge to cut edge.' }),
    seams: seamsField(),
    patches: patchesField(),
  })
  .readonly();

const ringSchema = z
  .object({
    wedges: countField({ title: 'Wedges', minimum: 3, maximum: 200 }),
    leg: lengthField({
      title: 'From the inner to the outer end',
      help: 'Between the two places where you measure, along a seam.',
      minimum: lengthFromInches(1),
    }),
    radius: lengthField({ title: 'Middle to the outer edge', minimum: lengthFromInches(1) }),
  })
  .readonly();

export const seamCheckInput = z
  .object({
    measured: z
      .array(measurementSchema)
      .max(40)
      .readonly()
      .meta({
        title: 'What you measured',
        description:
          'Blocks, rows or rounds in the order in which you sewed them. Include a few patches before you sew them.',
        examples: [{ size: lengthFromInches(9.5), seams: 2, patches: 3, end: 'along', found: null } as const],
      }),
    cutsAreRight: flagField({
      title: 'The patches are cut right',
      help: 'You have checked them. What is off then comes from the seams alone.',
    }),
    top: wholeTopSchema.nullable().meta({ title: 'The whole top, from side to side' }),
    tolerance: lengthField({
      title: 'The top may be off by',
      help: 'What you can still ease into the next border.',
      minimum: lengthFromInches(1 / 64),
      maximum: lengthFromInches(6),
    }),
    ring: ringSchema.nullable().meta({ title: 'A ring of wedges' }),
    seamAllowance: seamField(),
    guideStep: lengthField({
      title: 'You can move the needle or the guide in steps of',
      help: 'One click of the needle position, or what you can mark for a guide.',
      minimum: lengthFromMillimeters(0.1),
      maximum: lengthFromInches(1 / 8),
    }),
    readTo: lengthField({
      title: 'You read the ruler to',
      help: 'The smallest part of a length that you write down.',
      minimum: lengthFromMillimeters(0.1),
      maximum: lengthFromInches(1 / 2),
    }),
  })
  .readonly();
export type SeamCheckInput = z.infer<typeof seamCheckInput>;

/** Three patches across a block, as many blocks as fit; seven places to measure: four patches before sewing and three blocks. */
export function seamCheckFromProject({ outline, settings }: Measurements): SeamCheckInput {
  const isInch = settings.unitSystem === 'inch';
  const either = (inches: number, millimeters: number): Length =>
    isInch ? lengthFromInches(inches) : lengthFromMillimeters(millimeters);
  const patch = either(3, 75);
  const seam = settings.seamAllowance;
  const blocks = Math.min(40, Math.max(1, roundDownTo(outlineBounds(outline).width / (3 * patch), 1)));
  const across = (patches: number) => ({
    size: lengthFromExact(patches * patch + 2 * seam, 'nearest'),
    seams: patches - 1,
    patches,
  });
  const toMeasure = (patches: number) => ({ ...across(patches), end: 'along', found: null }) as const;
  return {
    measured: [1, 1, 1, 1, 3, 3, 3].map(toMeasure),
    cutsAreRight: false,
    top: across(3 * blocks),
    tolerance: either(1 / 2, 12),
    ring: null,
    seamAllowance: seam,
    guideStep: either(1 / 64, 0.5),
    readTo: either(1 / 16, 1),
  };
}
