import { z } from 'zod';
import { flagField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { type Length, lengthFromExact, lengthFromInches, lengthFromMeters } from '#core/units/length';
import { outlineBounds } from '#core/calculators/outline/outline-measures';

const side = (title: string) => lengthField({ title, minimum: lengthFromInches(1) });
const diagonal = (title: string) =>
  lengthField({ title, minimum: lengthFromInches(1), maximum: lengthFromMeters(15) });

export const centerFindInput = z
  .object({
    top: side('Top side'),
    right: side('Right side'),
    bottom: side('Bottom side'),
    left: side('Left side'),
    downToRight: diagonal('Diagonal from top left to bottom right'),
    upToRight: diagonal('Diagonal from bottom left to top right'),
    hasMotif: flagField({
      title: 'There is a motif in the middle',
      help: 'Then measure where its middle is.',
    }),
    motifFromLeft: lengthField({ title: 'Middle of the motif from the left side' }),
    motifFromTop: lengthField({ title: 'Middle of the motif from the top side' }),
    accuracy: lengthField({
      title: 'How accurately you measure',
      help: 'If your lengths disagree by more than this, measure them again.',
      minimum: lengthFromInches(1 / 64),
      maximum: lengthFromInches(2),
    }),
  })
  .readonly();
export type CenterFindInput = z.infer<typeof centerFindInput>;

/** The finished size of the project with square corners, until it is measured. */
export function centerFindFromProject({ outline }: Measurements): CenterFindInput {
  const { width, length } = outlineBounds(outline);
  const across = withinFields(width);
  const down = withinFields(length);
  const diagonalLength = lengthFromExact(Math.hypot(across, down), 'nearest');
  return {
    top: across,
    right: down,
    bottom: across,
    left: down,
    downToRight: diagonalLength,
    upToRight: diagonalLength,
    hasMotif: false,
    motifFromLeft: lengthFromExact(across / 2, 'nearest'),
    motifFromTop: lengthFromExact(down / 2, 'nearest'),
    accuracy: lengthFromInches(1 / 8),
  };
}

/** A hexagon of ten meters across its flats is wider than a field allows, so sizes are limited to the field. */
function withinFields(size: number): Length {
  return lengthFromExact(Math.min(lengthFromMeters(10), Math.max(lengthFromInches(1), size)), 'nearest');
}
