import { solveLinear } from './solve-linear';

/** How much one length grows with one unknown. */
export interface Slope {
  readonly unknown: number;
  readonly slope: number;
}

/** Lengths that follow from a few unknowns, such as distances between points of unknown place. */
export interface LengthModel {
  readonly lengthsAt: (unknowns: readonly number[]) => readonly number[];
  /** For each length, its slopes with the unknowns it depends on. */
  readonly slopesAt: (unknowns: readonly number[]) => readonly (readonly Slope[])[];
}

/** The search converges in a few rounds; the limit only guards against lengths that do not converge. */
const MOST_ROUNDS = 50;

/** As a share of the largest unknown: far below a unit, and above rounding error. */
const SMALLEST_STEP = 1e-11;

/** As a share: keeps the equations solvable where a length hardly changes, without a visible effect on the result. */
const DAMPING = 1e-12;

/**
 * The unknowns for which the squares of the changes of the measured lengths add up to the least (Gauss-Newton from `start`). One length
 * may be left out. Null if the lengths do not determine the unknowns.
 */
export function fitLengths(
  model: LengthModel,
  measured: readonly number[],
  start: readonly number[],
  leftOut: number | null = null,
): readonly number[] | null {
  let unknowns = start;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const lengths = model.lengthsAt(unknowns);
    const slopes = model.slopesAt(unknowns);
    const descent = start.map(() => 0);
    const normal = start.map(() => start.map(() => 0));
    slopes.forEach((row, index) => {
      if (index === leftOut) return;
      const off = (measured[index] ?? 0) - (lengths[index] ?? 0);
      addRow(normal, row);
      for (const { unknown, slope } of row) descent[unknown] = (descent[unknown] ?? 0) + slope * off;
    });
    const step = solveLinear(damped(normal), descent);
    if (step === null) return null;
    unknowns = unknowns.map((value, index) => value + (step[index] ?? 0));
    if (largest(step) <= SMALLEST_STEP * largest(unknowns)) break;
  }
  return unknowns.every(Number.isFinite) ? unknowns : null;
}

/** The sums of products of slopes, from which the spread of errors follows. */
export function normalOf(model: LengthModel, unknowns: readonly number[]): readonly (readonly number[])[] {
  const normal = unknowns.map(() => unknowns.map(() => 0));
  for (const row of model.slopesAt(unknowns)) addRow(normal, row);
  return normal;
}

/**
 * By how much an unknown may be off if each measured length is off by `accuracy`, one as likely too long as too short (the errors add
 * up as squares). Null if the lengths do not determine it.
 */
export function uncertaintyOf(
  model: LengthModel,
  unknowns: readonly number[],
  { unknown, accuracy }: { readonly unknown: number; readonly accuracy: number },
): number | null {
  const only = unknowns.map((_, index) => (index === unknown ? 1 : 0));
  const solved = solveLinear(normalOf(model, unknowns), only);
  return solved === null ? null : accuracy * Math.sqrt(Math.max(0, solved[unknown] ?? 0));
}

function addRow(normal: number[][], row: readonly Slope[]): void {
  for (const one of row) {
    const into = normal[one.unknown] ?? [];
    for (const { unknown, slope } of row) into[unknown] = (into[unknown] ?? 0) + one.slope * slope;
  }
}

function damped(normal: readonly (readonly number[])[]): readonly (readonly number[])[] {
  return normal.map((row, index) =>
    row.map((value, column) => (column === index ? value * (1 + DAMPING) : value)),
  );
}

function largest(values: readonly number[]): number {
  return Math.max(...values.map(Math.abs));
}
