import type { LeftoversOfSide } from '#core/domain/stash-insight';
import { lengthFromInches, lengthFromUnits, type Length, UNITS_PER_MILLIMETER } from '#core/units/length';
import type { UnitSystem } from '#core/units/unit-system';

/** Leftovers from one size up to below the next; null where there is no smaller or larger size. */
export interface LeftoverSize {
  readonly from: Length | null;
  readonly below: Length | null;
  readonly pieces: number;
  readonly area: number;
}

/** Where one size of leftover ends and the next begins: widths that strips and squares are commonly cut to (common practice). */
const BOUNDS: Readonly<Record<UnitSystem, readonly Length[]>> = {
  inch: [1.5, 2.5, 5, 10, 18].map((inches) => lengthFromInches(inches)),
  metric: [40, 65, 125, 250, 450].map((millimeters) => lengthFromUnits(millimeters * UNITS_PER_MILLIMETER)),
};

/** The leftovers sorted by their shorter side into six sizes, the smallest first; a size without any is there too. */
export function leftoverSizes(
  sides: readonly LeftoversOfSide[],
  system: UnitSystem,
): readonly LeftoverSize[] {
  const bounds = BOUNDS[system];
  return [...bounds, null].map((below, index) => {
    const from = bounds[index - 1] ?? null;
    const those = sides.filter(
      ({ side }) => (from === null || side >= from) && (below === null || side < below),
    );
    return {
      from,
      below,
      pieces: those.reduce((sum, { pieces }) => sum + pieces, 0),
      area: those.reduce((sum, { area }) => sum + area, 0),
    };
  });
}
