import type { Measurements } from '#core/domain/measurements';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromInches } from '#core/units/length';

/**
 * The sample project behind every field that is left out: a hexagon 48 in across the flats with a slit to a round hole of
 * 6 1/2 in, and the settings of a new workshop.
 */
export const SAMPLE_MEASUREMENTS: Measurements = {
  outline: { shape: 'hexagon', acrossFlats: lengthFromInches(48) },
  hole: { diameter: lengthFromInches(6.5) },
  hasSlit: true,
  settings: STARTING_SETTINGS,
};
