/** Straight-line least squares by making the columns perpendicular, one after the other. Plain numbers, in the units of the caller. */

export interface Fitted {
  /** How many columns are not made of the ones before them. Only these have a coefficient; the others count as 0. */
  readonly found: readonly boolean[];
  /** The weighted sum of the squares of what the columns do not explain. */
  readonly leftOver: number;
  /** Observations less coefficients found. */
  readonly freedom: number;
  /** A sum of the coefficients, each times its part, and how much the scatter of one observation of weight 1 counts in it, squared. */
  readonly sumOf: (parts: readonly number[]) => { readonly value: number; readonly spread: number };
}

/** A column of which less than this share (squared) is left beside the others is made of them. */
const NOTHING_LEFT = 1e-8;

/** Least squares of `off` by `columns`, all of one length, with a positive weight for each observation. */
export function fitColumns(
  columns: readonly (readonly number[])[],
  off: readonly number[],
  weights: readonly number[],
): Fitted {
  const product = productWith(weights);
  const bases: Basis[] = [];
  for (const column of columns) bases.push(nextBasis(column, bases, product));
  const effects = bases.map(({ left, square }) => (square === 0 ? 0 : product(left, off) / square));
  const rest = bases.reduce((kept, { left }, at) => without(kept, left, effects[at] ?? 0), off);
  const found = bases.map(({ square }) => square > 0);
  return {
    found,
    leftOver: product(rest, rest),
    freedom: off.length - found.filter(Boolean).length,
    sumOf: (parts) => sumOf(parts, bases, effects),
  };
}

/** What is left of the last column beside the ones before it: all zero if it is made of them. */
export function leftBeside(
  column: readonly number[],
  others: readonly (readonly number[])[],
  weights: readonly number[],
): readonly number[] {
  const product = productWith(weights);
  const bases: Basis[] = [];
  for (const other of others) bases.push(nextBasis(other, bases, product));
  return nextBasis(column, bases, product).left;
}

type Product = (one: readonly number[], other: readonly number[]) => number;

interface Basis {
  readonly left: readonly number[];
  /** 0 if nothing is left. */
  readonly square: number;
  /** How much of each basis before it the column holds. */
  readonly holds: readonly number[];
}

function productWith(weights: readonly number[]): Product {
  return (one, other) =>
    weights.reduce((sum, weight, at) => sum + weight * (one[at] ?? 0) * (other[at] ?? 0), 0);
}

function nextBasis(column: readonly number[], before: readonly Basis[], product: Product): Basis {
  const holds: number[] = [];
  let left = column;
  for (const { left: basis, square } of before) {
    const share = square === 0 ? 0 : product(left, basis) / square;
    holds.push(share);
    left = without(left, basis, share);
  }
  const square = product(left, left);
  if (square <= NOTHING_LEFT * product(column, column))
    return { left: column.map(() => 0), square: 0, holds };
  return { left, square, holds };
}

function without(from: readonly number[], taken: readonly number[], times: number): readonly number[] {
  return from.map((value, at) => value - times * (taken[at] ?? 0));
}

/** The parts are turned into parts of the perpendicular columns, whose effects do not depend on each other. */
function sumOf(
  parts: readonly number[],
  bases: readonly Basis[],
  effects: readonly number[],
): { readonly value: number; readonly spread: number } {
  const turned: number[] = [];
  let [value, spread] = [0, 0];
  bases.forEach(({ square, holds }, at) => {
    const part = holds.reduce((left, share, before) => left - share * (turned[before] ?? 0), parts[at] ?? 0);
    turned.push(square === 0 ? 0 : part);
    if (square === 0) return;
    value += part * (effects[at] ?? 0);
    spread += part ** 2 / square;
  });
  return { value, spread };
}
