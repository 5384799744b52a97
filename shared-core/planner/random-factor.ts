import type { Spread } from '#core/domain/spread';

/** The standard normal's upper quartile. */
const QUARTILE = 0.6744897501960817;
/** A case this far out is a mistake, not a delay. */
const FARTHEST = 3;

/**
 * A factor for a standard normal number: 1 for 0, `low` and `high` at the quartiles, and between them a curve that never falls
 * below zero (log-normal on either side of the middle).
 */
export function factorOf({ low, high }: Spread, normal: number): number {
  const bounded = Math.min(FARTHEST, Math.max(-FARTHEST, normal));
  const quartile = bounded < 0 ? 1 / low : high;
  return Math.exp((Math.log(quartile) * bounded) / QUARTILE);
}

/** Standard normal numbers, two from two even ones (Box and Muller 1958). `random` gives numbers in [0, 1). */
export function normalNumbers(random: () => number): () => number {
  let spare: number | null = null;
  return () => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    const [radius, angle] = [Math.sqrt(-2 * Math.log(1 - random())), 2 * Math.PI * random()];
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
}
