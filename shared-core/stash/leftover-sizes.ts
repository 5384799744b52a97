import type { LeftoversOfSide } from '#core/domain/stash-numbers';
import { lengthFromInches, lengthFromUnits, type Length, UNITS_PER_MILLIMETER } from '#core/units/length';
import type { UnitSystem } from '#core/units/unit-system';

/** Leftovers whose shorter side is at least `from` and less than `below`. The first size has no `from`, the last no `below`. */
export interface LeftoverSize {
  readonly from: Length | null;
  readonly below: Length | null;
  readonly pieces: number;
  readonly area: number;
}

/** Where one size ends and the next starts: common widths of strips and squares (common practice). */
const BOUNDS: Readonly<Record<UnitSystem, readonly Length[]>> = {
  inch: [1.5, 2.5, 5, 10, 18].map((inches) => lengthFromInches(inches)),
  metric: [40, 65, 125, 250, 450].map((millimeters) => lengthFromUnits(millimeters * UNITS_PER_MILLIMETER)),
};

/** Sorts leftovers by their shorter side into six sizes, smallest first. A size without leftovers is listed too. */
export function leftoverSizes(
  sides: readonly LeftoversOfSide[],
  system: UnitSystem,
): readonly LeftoverSize[] {
  const bounds = BOUNDS[system];
  return [...bounds, null].map((below, index) => {
    const from = bounds[index - 1] ?? null;
    const ofSize = sides.filter(
      ({ side }) => (from === null || side >= from) && (below === null || side < below),
    );
    return {
      from,
      below,
      pieces: ofSize.reduce((sum, { pieces }) => sum + pieces, 0),
      area: ofSize.reduce((sum, { area }) => sum + area, 0),
    };
  });
}
