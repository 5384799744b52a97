/**
 * A linear program (least cost, with a minimum for every row) in the revised simplex method with a dense basis inverse. Each
 * row has one basic column: `amount` is the quantity used, and `cost` is the cost of one unit.
 */
export interface Simplex {
  readonly rows: number;
  /** Inverse of the basis, row by row. */
  readonly inverse: Float64Array;
  readonly amount: Float64Array;
  /** 0 for a column that absorbs a surplus. */
  readonly cost: Float64Array;
  /** What one more unit in each row would cost. */
  readonly prices: Float64Array;
}

/** Smaller direction entries are rounding errors and cannot be pivots. */
const SMALLEST_PIVOT = 1e-9;
/** Ratios closer than this are a tie, which the larger pivot wins. */
const RATIO_TIE = 1e-12;
/** A price below this is negative and not a rounding error. */
const NEGATIVE_PRICE = -1e-9;

export function emptySimplex(rows: number): Simplex {
  return {
    rows,
    inverse: new Float64Array(rows * rows),
    amount: new Float64Array(rows),
    cost: new Float64Array(rows),
    prices: new Float64Array(rows),
  };
}

/** Computes the prices from the basis. */
export function computePrices({ rows, prices, cost, inverse }: Simplex): void {
  prices.fill(0);
  for (let row = 0; row < rows; row++) {
    const c = cost[row]!;
    if (c === 0) continue;
    for (let of = 0; of < rows; of++) prices[of]! += c * inverse[row * rows + of]!;
  }
}

/** The row with the most negative price, where a surplus lowers the cost; -1 if there is none. */
export function mostOverpaidRow({ rows, prices }: Simplex): number {
  let overpaid = -1;
  for (let row = 0; row < rows; row++) {
    if (prices[row]! < (overpaid < 0 ? NEGATIVE_PRICE : prices[overpaid]!)) overpaid = row;
  }
  return overpaid;
}

/** How the basic amounts change per unit of surplus in a row. */
export function surplusDirection({ rows, inverse }: Simplex, of: number): Float64Array {
  return Float64Array.from({ length: rows }, (_, row) => -inverse[row * rows + of]!);
}

/** Brings the column with this direction and cost into the basis; false if no amount of it is feasible. */
export function pivot(simplex: Simplex, direction: Float64Array, cost: number): boolean {
  const { rows, inverse, amount } = simplex;
  const leaving = leavingRow(simplex, direction);
  if (leaving < 0) return false;
  const step = Math.max(0, amount[leaving]! / direction[leaving]!);
  for (let row = 0; row < rows; row++) amount[row]! -= step * direction[row]!;
  amount[leaving] = step;
  const scale = 1 / direction[leaving]!;
  const start = leaving * rows;
  for (let of = 0; of < rows; of++) inverse[start + of]! *= scale;
  for (let row = 0; row < rows; row++) {
    const factor = direction[row]!;
    if (row === leaving || factor === 0) continue;
    for (let of = 0; of < rows; of++) inverse[row * rows + of]! -= factor * inverse[start + of]!;
  }
  simplex.cost[leaving] = cost;
  return true;
}

/** The row whose basic column is used up first; -1 if none is. */
function leavingRow({ rows, amount }: Simplex, direction: Float64Array): number {
  let leaving = -1;
  let step = Infinity;
  for (let row = 0; row < rows; row++) {
    if (direction[row]! <= SMALLEST_PIVOT) continue;
    const ratio = amount[row]! / direction[row]!;
    const isTie = Math.abs(ratio - step) < RATIO_TIE && direction[row]! > direction[leaving]!;
    if (ratio < step - RATIO_TIE || isTie) {
      step = ratio;
      leaving = row;
    }
  }
  return leaving;
}
