import { z } from 'zod';
import { flagField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import {
  type Length,
  lengthFromExact,
  lengthFromInches,
  lengthFromMeters,
  UNITS_PER_METER,
} from '#core/units/length';
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
    falling: diagonal('Diagonal from top left to bottom right'),
    rising: diagonal('Diagonal from top right to bottom left'),
    hasMotif: flagField({
      title: 'There is a motif in the middle',
      help: 'Then measure where its own middle lies.',
    }),
    motifFromLeft: lengthField({ title: 'Motif’s middle from the left side' }),
    motifFromTop: lengthField({ title: 'Motif’s middle from the top side' }),
    accuracy: lengthField({
      title: 'How exactly you measure',
      help: 'Lengths that disagree by more than this are worth measuring again.',
      minimum: lengthFromInches(1 / 64),
      maximum: lengthFromInches(2),
    }),
  })
  .readonly();
export type CenterFindInput = z.infer<typeof centerFindInput>;

/** The finished size of the piece, true to the square, until it is measured. */
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
    falling: diagonalLength,
    rising: diagonalLength,
    hasMotif: false,
    motifFromLeft: lengthFromExact(across / 2, 'nearest'),
    motifFromTop: lengthFromExact(down / 2, 'nearest'),
    accuracy: lengthFromInches(1 / 8),
  };
}

/** A hexagon of ten meters across its flats is wider than a side may be, so sizes are held within the fields. */
function withinFields(size: number): Length {
  return lengthFromExact(Math.min(10 * UNITS_PER_METER, Math.max(lengthFromInches(1), size)), 'nearest');
}
