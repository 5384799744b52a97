import { holeSize } from '#core/calculators/center/hole-size/hole-size';
import type { HoleSizeInput } from '#core/calculators/center/hole-size/input';
import type { Measurements } from '#core/domain/measurements';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromInches as inches } from '#core/units/length';

export const RING: Measurements = {
  outline: { shape: 'circle', diameter: inches(50) },
  hole: { diameter: inches(6.5) },
  hasSlit: false,
  settings: STARTING_SETTINGS,
};
/** Neither bound nor washed, so that the hole stays as it is cut. */
const AS_CUT = { bindingThickness: inches(0), drawUpPercent: 0, washPercent: 0 } as const;
export const starting = (change: Partial<HoleSizeInput> = {}): HoleSizeInput => ({
  ...holeSize.fromProject(RING),
  ...AS_CUT,
  ...change,
});
export const answer = (change: Partial<HoleSizeInput> = {}) => {
  const result = holeSize.calculate(starting(change));
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
};
export const around = (circumference: number, ease = 0.5): Partial<HoleSizeInput> => ({
  from: 'around',
  measure: inches(circumference),
  ease: inches(ease),
});
