import type { Knapsack } from './strip-knapsack';
import type { StripModel } from './strip-model';
import { demandShare, heightLeft, heightsLeft, type PricedDemands, type StripDemand } from './strip-demands';
import {
  computePrices,
  emptySimplex,
  mostOverpaidRow,
  pivot,
  type Simplex,
  surplusDirection,
} from './simplex';
import { bestRows, valuesByHeight } from './strip-knapsack';

/** A strip as a column of the linear program: its height, and the number of copies of each type in it. */
interface StripColumn {
  readonly height: number;
  readonly types: readonly number[];
  readonly counts: readonly number[];
}

/**
 * The linear program of strips: the least total height of strips that hold every patch, where a fraction of a strip counts
 * (Gilmore and Gomory 1965). Its value is a lower bound for every 2-stage layout, and its prices are the cost of each patch
 * in strip height. Its rows are first the types and then the demands.
 */
export interface StripProgram extends Simplex {
  readonly knapsack: Knapsack;
  readonly demands: readonly StripDemand[];
  readonly columns: StripColumn[];
  readonly columnKeys: Set<string>;
  /** Proven lower bound of the total height, rounded up to whole units. */
  bound: number;
  isSolved: boolean;
}

/**
 * The program with one kind of strip for every type, which is a first solution. Demands that it does not meet are met at a
 * price higher than any strip. A program with other demands can share the columns of `like`.
 */
export function stripProgram(
  knapsack: Knapsack,
  demands: readonly StripDemand[] = [],
  like?: StripProgram,
): StripProgram {
  const { model } = knapsack;
  const { types } = model;
  const rows = types + demands.length;
  const program: StripProgram = {
    ...emptySimplex(rows),
    knapsack,
    demands,
    columns: like?.columns ?? [],
    columnKeys: like?.columnKeys ?? new Set(),
    bound: like?.bound ?? 0,
    isSolved: false,
  };
  for (let type = 0; type < types; type++) {
    const column = plainColumn(model, type);
    if (like === undefined) program.columns.push(column);
    program.cost[type] = column.height;
    program.inverse[type * rows + type] = 1 / column.counts[0]!;
    program.amount[type] = model.copies[type]! / column.counts[0]!;
  }
  for (const [index, demand] of demands.entries()) addDemand(program, demand, types + index);
  return program;
}

/** Cost of not meeting a demand: more than any way to meet it with strips. */
const LACKING = 1e6;

function addDemand(program: StripProgram, demand: StripDemand, row: number): void {
  const { rows, inverse, amount, cost } = program;
  const { model } = program.knapsack;
  let met = 0;
  for (let type = 0; type < model.types; type++)
    met += demandShare(model, demand, cost[type]!) * amount[type]!;
  const lacking = (demand.isLeast ? demand.count : -demand.count) - met;
  const sign = lacking > 0 ? 1 : -1;
  for (let type = 0; type < model.types; type++) {
    const part = demandShare(model, demand, cost[type]!) * inverse[type * rows + type]!;
    inverse[row * rows + type] = -sign * part;
  }
  inverse[row * rows + row] = sign;
  amount[row] = Math.abs(lacking);
  cost[row] = lacking > 0 ? LACKING : 0;
}

function plainColumn(model: StripModel, type: number): StripColumn {
  let best: StripColumn | undefined;
  for (const [s, height] of model.heights.entries()) {
    const width = model.widths[s * model.types + type]!;
    if (width === 0) continue;
    const count = Math.max(1, Math.min(model.copies[type]!, Math.floor(model.stripWidth / width)));
    if (best === undefined || height / count < best.height / best.counts[0]!) {
      best = { height, types: [type], counts: [count] };
    }
  }
  if (best === undefined) throw new Error('A patch wider than the strip reached the strip program.');
  return best;
}

/**
 * A strip is added only if it saves more than this share of its height; otherwise rounding errors would never let the
 * program finish.
 */
const LEAST_SAVING = 1e-7;
const PIVOTS_PER_YIELD = 10;
const NEW_COLUMNS_PER_ROUND = 12;
const HEIGHTS_PER_ROUND = 30;

/**
 * Solves the program by column generation until no strip would improve it. Prices and bound can be used at any time. Yields
 * the work since the last yield, in inner-loop steps.
 */
export function* solveStripProgram(program: StripProgram): Generator<number, void> {
  const { model } = program.knapsack;
  const pivotWork = model.types * model.types;
  const pricingWork = model.kindWidth.length * model.stripWidth;
  while (!program.isSolved) {
    for (let pivots = 1; improveOnce(program); pivots++) {
      if (pivots % PIVOTS_PER_YIELD === 0) yield PIVOTS_PER_YIELD * pivotWork;
    }
    program.isSolved = !addColumns(program);
    yield pricingWork * 4 + pivotWork;
  }
  proveBound(program, true);
}

/** Makes one pivot toward a better mix of the existing columns; false if there is none. */
function improveOnce(program: StripProgram): boolean {
  const { prices, columns } = program;
  computePrices(program);
  const overpaid = mostOverpaidRow(program);
  if (overpaid >= 0) return pivot(program, surplusDirection(program, overpaid), 0);
  let best: StripColumn | undefined;
  let saving = LEAST_SAVING;
  const heights = new Map(
    Array.from(program.knapsack.model.heights, (height) => [
      height,
      heightLeft(pricedDemands(program), height),
    ]),
  );
  for (const column of columns) {
    let worth = -heights.get(column.height)!;
    for (let i = 0; i < column.types.length; i++) worth += prices[column.types[i]!]! * column.counts[i]!;
    if (worth / column.height > saving) {
      saving = worth / column.height;
      best = column;
    }
  }
  return best !== undefined && pivot(program, columnDirection(program, best), best.height);
}

function columnDirection(program: StripProgram, column: StripColumn): Float64Array {
  const { rows, inverse, demands } = program;
  const { model } = program.knapsack;
  const direction = new Float64Array(rows);
  const shares = demands.map((demand) => demandShare(model, demand, column.height));
  for (let row = 0; row < rows; row++) {
    let sum = 0;
    for (let i = 0; i < column.types.length; i++) {
      sum += inverse[row * rows + column.types[i]!]! * column.counts[i]!;
    }
    for (let i = 0; i < shares.length; i++) sum += inverse[row * rows + model.types + i]! * shares[i]!;
    direction[row] = sum;
  }
  return direction;
}

/** Looks for strips worth more than their height at the current prices; false if there are none. */
function addColumns(program: StripProgram): boolean {
  const { knapsack, prices, columnKeys: knownColumns, columns } = program;
  const { model } = knapsack;
  for (let row = 0; row < program.rows; row++) prices[row] = Math.max(0, prices[row]!);
  const worths = proveBound(program, false);
  const priced = pricedDemands(program);
  const left = Float64Array.from(model.heights, (height) => heightLeft(priced, height));
  const saving = (s: number) => (worths[s]! - left[s]!) / model.heights[s]!;
  const promising = Array.from(worths.keys())
    .filter((s) => saving(s) > LEAST_SAVING)
    .sort((a, b) => saving(b) - saving(a));
  let added = 0;
  for (const [tried, s] of promising.entries()) {
    if (added > NEW_COLUMNS_PER_ROUND || (tried > HEIGHTS_PER_ROUND && added > 0)) break;
    const height = model.heights[s]!;
    bestRows(
      knapsack,
      { values: prices, copies: model.copies },
      { height: s, forced: -1, atMost: 1, tolerance: 0, start: 0 },
      (value, counts) => {
        if (value <= left[s]! + height * LEAST_SAVING) return;
        const types = Array.from(counts.keys()).filter((type) => counts[type]! > 0);
        const column = { height, types, counts: types.map((type) => counts[type]!) };
        const key = `${s}:${types.join()}:${column.counts.join()}`;
        if (knownColumns.has(key)) return;
        knownColumns.add(key);
        columns.push(column);
        added++;
      },
    );
  }
  return added > 0;
}

/** The demands of a program with its prices. */
function pricedDemands({ knapsack, demands, prices }: StripProgram): PricedDemands {
  return { model: knapsack.model, demands, prices };
}

/** Prices are rounded down to whole steps of 1 over this, so that their sums are exact. */
const PRICE_STEPS = 2 ** 20;
/** The bound is lowered by this much, relative and absolute, so that rounding errors never raise it. */
const BOUND_TOLERANCE = 1e-9;

/**
 * Scales the prices until no strip is worth more than its height less its contribution to the demands. The sum of the scaled
 * prices is then a bound (Farley 1990). `isExact` spends more time on patches that may turn. Returns the largest value of a
 * strip for each height.
 */
function proveBound(program: StripProgram, isExact: boolean): Float64Array {
  const { knapsack, demands } = program;
  const { model } = knapsack;
  const { copies, types } = model;
  const values = Float64Array.from(model.share, (_, type) =>
    Math.floor(Math.max(0, program.prices[type]!) * PRICE_STEPS),
  );
  const left = heightsLeft(pricedDemands(program));
  const worths = new Float64Array(model.heights.length);
  valuesByHeight(knapsack, { values, copies }, (s, row) => {
    worths[s] = row[model.stripWidth]! / PRICE_STEPS;
  });
  const ratio = (s: number) => (worths[s] === 0 ? 0 : worths[s]! / left.heights[s]!);
  let worst = 0;
  for (const s of Array.from(worths.keys()).sort((a, b) => ratio(b) - ratio(a))) {
    if (ratio(s) <= worst) break;
    if (isExact) {
      const search = { height: s, forced: -1, atMost: 0, tolerance: 0, start: 0 };
      worths[s] = bestRows(knapsack, { values, copies }, search, () => undefined) / PRICE_STEPS;
    }
    worst = Math.max(worst, ratio(s));
  }
  const sum = values.reduce((total, price, type) => total + price * copies[type]!, 0) / PRICE_STEPS;
  const asked = demands.reduce((total, { isLeast, count }, index) => {
    const price = left.scale * Math.max(0, program.prices[types + index]!);
    return total + price * (isLeast ? count : -count);
  }, 0);
  const proved = asked + (worst > 0 ? sum / worst : 0);
  program.bound = Math.max(program.bound, Math.ceil(proved * (1 - BOUND_TOLERANCE) - BOUND_TOLERANCE));
  return worths;
}
