import { z } from 'zod';
import {
  choiceField,
  countField,
  flagField,
  lengthField,
  percentField,
  textField,
} from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import { roundDownTo } from '#core/units/rounding';
import { outlineBounds } from '../outline/outline-measures';
import { roundingField } from '../patches/patch-size/input';
import { unitSizesField } from '../patches/patch-units';
import {
  cutStepField,
  cutStepOfSettings,
  fabricWidthField,
  seamField,
  yardageStepField,
  yardageStepOfSettings,
} from '../shared-fields';

const fabricLabel = textField({ title: 'Fabric', minimum: 1, maximum: 120, isFabricName: true });
const blockName = textField({ title: 'Block', minimum: 1, maximum: 60 });

const topFabricSchema = z
  .object({
    label: textField({ title: 'Name', minimum: 1, maximum: 120 }),
    isDirectional: flagField({
      title: 'Directional print',
      help: 'Patches of this fabric must not be turned.',
    }),
  })
  .readonly();

const blockUnitSchema = z
  .object({
    unit: unitSizesField.meta({ title: 'Patch or unit' }),
    times: countField({ title: 'How many in a block', minimum: 1, maximum: 400 }),
    fabrics: z.array(fabricLabel).min(1).max(3).readonly().meta({
      title: 'Fabrics',
      description:
        'The first, second and third fabric of the unit. If there are fewer, the last one is used for the rest.',
    }),
  })
  .readonly();

const blockKindSchema = z
  .object({
    name: blockName,
    width: lengthField({ title: 'Width', help: 'Finished.' }),
    length: lengthField({ title: 'Length', help: 'Finished.' }),
    units: z.array(blockUnitSchema).max(20).readonly().meta({ title: 'Patches and units' }),
  })
  .readonly();
export type BlockKind = z.infer<typeof blockKindSchema>;

const corners = choiceField(['butted', 'mitered', 'cornerstones'], { title: 'Corners' });

const roundSchema = z.discriminatedUnion('round', [
  z
    .object({
      round: z.literal('border'),
      width: lengthField({ title: 'Width', help: 'Finished.' }),
      fabric: fabricLabel,
      corners,
      cornerFabric: textField({
        title: 'Cornerstone fabric',
        help: 'Only for cornerstones.',
        isFabricName: true,
      }),
    })
    .readonly(),
  z
    .object({
      round: z.literal('blocks'),
      block: blockName,
      corner: textField({ title: 'Block in the corners', minimum: 1, maximum: 60 }),
    })
    .readonly(),
]);
export type Round = z.infer<typeof roundSchema>;

const roundsSchema = z
  .array(roundSchema)
  .max(12)
  .readonly()
  .meta({ title: 'Rounds', description: 'From the inside out.' });

const rowSchema = z
  .object({
    blocks: z
      .array(
        z
          .object({
            block: blockName,
            times: countField({ title: 'How many side by side', minimum: 1, maximum: 60 }),
          })
          .readonly(),
      )
      .min(1)
      .max(20)
      .readonly()
      .meta({ title: 'Blocks from left to right' }),
    times: countField({ title: 'How many rows like this', minimum: 1, maximum: 60 }),
  })
  .readonly();

const sashingSchema = z
  .object({
    width: lengthField({ title: 'Width', help: 'Finished, between the blocks.' }),
    fabric: fabricLabel,
    cornerFabric: textField({
      title: 'Cornerstone fabric',
      help: 'Leave blank for long sashing strips between the rows.',
    }),
  })
  .readonly();
export type Sashing = z.infer<typeof sashingSchema>;

const ringSchema = z
  .object({ width: lengthField({ title: 'Width', help: 'Finished.' }), fabric: fabricLabel })
  .readonly();

const layoutSchema = z.discriminatedUnion('layout', [
  z
    .object({
      layout: z.literal('rows'),
      rows: z.array(rowSchema).min(1).max(30).readonly().meta({ title: 'Rows from the top' }),
      sashing: sashingSchema.nullable().meta({ title: 'Sashing' }),
      rounds: roundsSchema,
    })
    .readonly(),
  z.object({ layout: z.literal('center'), block: blockName, rounds: roundsSchema }).readonly(),
  z
    .object({
      layout: z.literal('rings'),
      sides: choiceField(['six', 'eight', 'ten', 'twelve'], { title: 'Sides' }),
      centerAcross: lengthField({ title: 'Center from side to side', help: 'Finished.' }),
      centerFabric: fabricLabel,
      rings: z.array(ringSchema).min(1).max(30).readonly().meta({ title: 'Rings from the inside out' }),
    })
    .readonly(),
]);
export type Layout = z.infer<typeof layoutSchema>;
export type LayoutOf<Kind extends Layout['layout']> = Extract<Layout, { layout: Kind }>;

export const topInput = z
  .object({
    fabrics: z.array(topFabricSchema).min(1).max(40).readonly().meta({ title: 'Fabrics' }),
    blocks: z.array(blockKindSchema).max(20).readonly().meta({ title: 'Blocks' }),
    layout: layoutSchema.meta({ title: 'Layout' }),
    seamAllowance: seamField(),
    fabricWidth: fabricWidthField(),
    rounding: roundingField,
    cutStep: cutStepField(),
    yardageStep: yardageStepField(),
    safetyExtraPercent: percentField({ title: 'Safety extra on fabric', minimum: 0, maximum: 100 }),
  })
  .readonly();
export type TopInput = z.infer<typeof topInput>;

/** Starts with as many nine-patch blocks as fit into the project. */
export function topFromProject({ outline, settings }: Measurements): TopInput {
  const isInch = settings.unitSystem === 'inch';
  const patch = isInch ? lengthFromInches(3) : lengthFromMillimeters(75);
  const block = isInch ? lengthFromInches(9) : lengthFromMillimeters(225);
  const bounds = outlineBounds(outline);
  const fitting = (size: number) => Math.min(60, Math.max(1, roundDownTo(size / block, 1)));
  const across = fitting(bounds.width);
  const down = Math.min(fitting(bounds.length), Math.max(1, roundDownTo(1_600 / across, 1)));
  const square = { unit: 'square', side: patch } as const;
  return {
    fabrics: [
      { label: 'Light', isDirectional: false },
      { label: 'Dark', isDirectional: false },
    ],
    blocks: [
      {
        name: 'Nine-patch',
        width: block,
        length: block,
        units: [
          { unit: square, times: 5, fabrics: ['Dark'] },
          { unit: square, times: 4, fabrics: ['Light'] },
        ],
      },
    ],
    layout: {
      layout: 'rows',
      rows: [{ blocks: [{ block: 'Nine-patch', times: across }], times: down }],
      sashing: null,
      rounds: [],
    },
    seamAllowance: settings.seamAllowance,
    fabricWidth: settings.fabricWidth,
    rounding: isInch ? 'customary' : 'exact',
    cutStep: cutStepOfSettings(settings),
    yardageStep: yardageStepOfSettings(settings),
    safetyExtraPercent: settings.safetyExtraPercent,
  };
}
