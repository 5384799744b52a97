import { z } from 'zod';
import { countField, flagField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { LENGTH_ZERO, lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import { roundDownTo } from '#core/units/rounding';
import { outlineBounds } from '../outline/outline-measures';
import { seamField } from '../shared-fields';

/** How far a cut or a seam is off: up to the usual seam allowance. */
function offField(title: string, help: string) {
  return lengthField({ title, help, minimum: LENGTH_ZERO, maximum: lengthFromInches(1 / 4) });
}

export const accuracyInput = z
  .object({
    seamOff: offField(
      'Your seams are off by',
      'The most that the stitching is off the seam line, to either side.',
    ),
    cutOff: offField('Your cuts are off by', 'The most that one patch is too wide or too narrow.'),
    blockSize: lengthField({ title: 'Block size', help: 'Finished size, from side to side.' }),
    patchesAcross: countField({ title: 'Patches across a block', minimum: 1, maximum: 40 }),
    blocksAcross: countField({ title: 'Blocks across the top', minimum: 1, maximum: 60 }),
    blocksDown: countField({ title: 'Blocks down the top', minimum: 1, maximum: 60 }),
    trimsBlocks: flagField({
      title: 'Blocks are trimmed to size',
      help: 'Squared up with a ruler before they are joined. A block is then off by no more than a cut.',
    }),
    seamAllowance: seamField(),
    tolerance: lengthField({
      title: 'A block may be off by',
      help: 'If it is off by more, it can’t be eased into the next block.',
      minimum: lengthFromInches(1 / 64),
      maximum: lengthFromInches(2),
    }),
  })
  .readonly();
export type AccuracyInput = z.infer<typeof accuracyInput>;

/** As many 9 in blocks as fit into the project, each of three patches, sewn as accurately as the settings say. */
export function accuracyFromProject({ outline, settings }: Measurements): AccuracyInput {
  const isInch = settings.unitSystem === 'inch';
  const blockSize = isInch ? lengthFromInches(9) : lengthFromMillimeters(225);
  const bounds = outlineBounds(outline);
  const fitting = (size: number) => Math.min(60, Math.max(1, roundDownTo(size / blockSize, 1)));
  return {
    seamOff: settings.seamOff,
    cutOff: settings.cutOff,
    blockSize,
    patchesAcross: 3,
    blocksAcross: fitting(bounds.width),
    blocksDown: fitting(bounds.length),
    trimsBlocks: false,
    seamAllowance: settings.seamAllowance,
    tolerance: isInch ? lengthFromInches(1 / 8) : lengthFromMillimeters(3),
  };
}
