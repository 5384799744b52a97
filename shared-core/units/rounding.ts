/**
 * Rounding by name and direction. A value within DUST of a step counts as being on it (for nearest: of halfway between two
 * counts as halfway), so that the last bits of √2, π or 1.005 never push a cut to the next eighth or drop a cent. DUST is a
 * millionth of the step or of one unit, whichever is less: with lengths, a millionth of 1/320 mm.
 */
const DUST = 1e-6;

export type RoundingDirection = 'up' | 'down' | 'nearest';

/** Smallest multiple of `step` that is at least `value`. Throws RangeError unless `value` is finite and `step` positive. */
export function roundUpTo(value: number, step: number): number {
  return positiveZero(Math.ceil(inSteps(value - dustOf(step), step)) * step);
}

/** Largest multiple of `step` that is at most `value`. Throws RangeError unless `value` is finite and `step` positive. */
export function roundDownTo(value: number, step: number): number {
  return positiveZero(Math.floor(inSteps(value + dustOf(step), step)) * step);
}

/** Multiple of `step` nearest to `value`; halfway goes away from zero. Throws RangeError as the others do. */
export function roundNearest(value: number, step: number): number {
  const steps = inSteps(Math.abs(value), step);
  const whole = Number.isInteger(steps) ? steps : Math.floor(steps + 0.5 + dustOf(step) / step);
  return positiveZero(Math.sign(value) * whole * step);
}

export function roundTo(value: number, step: number, direction: RoundingDirection): number {
  switch (direction) {
    case 'up':
      return roundUpTo(value, step);
    case 'down':
      return roundDownTo(value, step);
    case 'nearest':
      return roundNearest(value, step);
  }
}

function dustOf(step: number): number {
  return DUST * Math.min(1, step);
}

function inSteps(value: number, step: number): number {
  if (!(step > 0) || !Number.isFinite(step)) throw new RangeError(`Cannot round to steps of ${String(step)}`);
  const steps = value / step;
  if (!Number.isFinite(steps))
    throw new RangeError(`Cannot round ${String(value)} to steps of ${String(step)}`);
  return steps;
}

function positiveZero(value: number): number {
  return value === 0 ? 0 : value;
}
