import { z } from 'zod';
import { countField, flagField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { LENGTH_ZERO, lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import { roundDownTo } from '#core/units/rounding';
import { outlineBounds } from '../outline/outline-measures';
import { seamField } from '../shared-fields';

/** As small as a sheet of paper is thick, as large as a seam: what a maker may be off by. */
function offField(title: string, help: string) {
  return lengthField({ title, help, minimum: LENGTH_ZERO, maximum: lengthFromInches(1 / 4) });
}

export const accuracyInput = z
  .object({
    seamOff: offField(
      'Your seams are off by',
      'At most, wider or narrower than the seam allowance, on one side.',
    ),
    cutOff: offField('Your cuts are off by', 'At most, for the width of one patch.'),
    blockSize: lengthField({ title: 'Block', help: 'Finished, from side to side.' }),
    patchesAcross: countField({ title: 'Patches across a block', minimum: 1, maximum: 40 }),
    blocksAcross: countField({ title: 'Blocks across the top', minimum: 1, maximum: 60 }),
    blocksDown: countField({ title: 'Blocks down the top', minimum: 1, maximum: 60 }),
    trimsBlocks: flagField({
      title: 'Blocks are trimmed to size',
      help: 'Squared up with the ruler before they are joined: a block is then no more off than a cut.',
    }),
    seamAllowance: seamField(),
    tolerance: lengthField({
      title: 'A block may be off by',
      help: 'More than this cannot be eased into its neighbor.',
      minimum: lengthFromInches(1 / 64),
      maximum: lengthFromInches(2),
    }),
  })
  .readonly();
export type AccuracyInput = z.infer<typeof accuracyInput>;

/** As many blocks of 9 in as the piece has room for, each of three patches, sewn within 1/32 in. */
export function accuracyFromProject({ outline, settings }: Measurements): AccuracyInput {
  const isInch = settings.unitSystem === 'inch';
  const blockSize = isInch ? lengthFromInches(9) : lengthFromMillimeters(225);
  const off = isInch ? lengthFromInches(1 / 32) : lengthFromMillimeters(0.8);
  const bounds = outlineBounds(outline);
  const fitting = (size: number) => Math.min(60, Math.max(1, roundDownTo(size / blockSize, 1)));
  return {
    seamOff: off,
    cutOff: off,
    blockSize,
    patchesAcross: 3,
    blocksAcross: fitting(bounds.width),
    blocksDown: fitting(bounds.length),
    trimsBlocks: false,
    seamAllowance: settings.seamAllowance,
    tolerance: isInch ? lengthFromInches(1 / 8) : lengthFromMillimeters(3),
  };
}
