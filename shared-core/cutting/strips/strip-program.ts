import type { KnapsackRoom } from './strip-knapsack';
import type { StripDemand } from './strip-demands';
import type { StripModel } from './strip-model';
import { demandShare, heightLeft, heightsLeft } from './strip-demands';
import { bestRows, valuesByHeight } from './strip-knapsack';

/** A strip as a column of the linear program: its height and how many of which types it holds. */
interface StripColumn {
  readonly height: number;
  readonly types: readonly number[];
  readonly counts: readonly number[];
}

/**
 * The linear program of strips: least total height of strips, in fractions, that hold every patch (Gilmore and Gomory
 * 1965). Its value bounds every 2-stage layout from below and its prices say what each patch costs. Rows are the types and then the
 * demands, all of them "at least". Dense basis inverse.
 */
export interface StripProgram {
  readonly model: StripModel;
  readonly room: KnapsackRoom;
  readonly demands: readonly StripDemand[];
  readonly rows: number;
  readonly columns: StripColumn[];
  readonly known: Set<string>;
  readonly inverse: Float64Array;
  readonly amount: Float64Array;
  /** Height of the strip that a row's basic column is; 0 where it takes up what is over, and more than any where it lacks. */
  readonly cost: Float64Array;
  /** Price of one copy of each type, and of each demand, in strip height. */
  readonly prices: Float64Array;
  /** Proven lower bound of the total height, rounded up to whole units. */
  bound: number;
  isSolved: boolean;
}

/**
 * The program with one strip of its own kind for every type, which is a first solution; demands it does not meet are met at a
 * price beyond all strips. Programs with other demands may share the columns of `like`.
 */
export function stripProgram(
  model: StripModel,
  room: KnapsackRoom,
  demands: readonly StripDemand[] = [],
  like?: StripProgram,
): StripProgram {
  const { types } = model;
  const rows = types + demands.length;
  const program: StripProgram = {
    ...{ model, room, demands, rows },
    columns: like?.columns ?? [],
    known: like?.known ?? new Set(),
    inverse: new Float64Array(rows * rows),
    amount: new Float64Array(rows),
    cost: new Float64Array(rows),
    prices: new Float64Array(rows),
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

/** Dearer than any way to meet a demand with strips. */
const LACKING = 1e6;

function addDemand(program: StripProgram, demand: StripDemand, row: number): void {
  const { model, rows, inverse, amount, cost } = program;
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
    const count = Math.max(1, Math.min(model.copies[type]!, (model.stripWidth / width) | 0));
    if (best === undefined || height / count < best.height / best.counts[0]!) {
      best = { height, types: [type], counts: [count] };
    }
  }
  if (best === undefined) throw new Error('A patch wider than the strip reached the strip program.');
  return best;
}

const TINY = 1e-7;
const PIVOTS_A_BREATH = 10;
const NEW_COLUMNS_A_ROUND = 12;
const HEIGHTS_A_ROUND = 30;

/**
 * Solves the program by column generation; prices and bound can be used at any time. Yields the work done since the last
 * breath, in inner-loop steps, until no strip is left that would improve it.
 */
export function* solveStripProgram(program: StripProgram): Generator<number, void> {
  const { model } = program;
  const pivotWork = model.types * model.types;
  const pricingWork = model.kindWidth.length * model.stripWidth;
  while (!program.isSolved) {
    for (let pivots = 1; improveOnce(program); pivots++) {
      if (pivots % PIVOTS_A_BREATH === 0) yield PIVOTS_A_BREATH * pivotWork;
    }
    program.isSolved = !addColumns(program);
    yield pricingWork * 4 + pivotWork;
  }
  proveBound(program, true);
}

/** One pivot towards a better mix of the columns known; false if they are used in the best way. */
function improveOnce(program: StripProgram): boolean {
  const { prices, columns, model } = program;
  computePrices(program);
  let overpaid = -1;
  for (let row = 0; row < program.rows; row++) {
    if (prices[row]! < (overpaid < 0 ? -1e-9 : prices[overpaid]!)) overpaid = row;
  }
  if (overpaid >= 0) return pivot(program, surplusDirection(program, overpaid), 0);
  let best: StripColumn | undefined;
  let saving = TINY;
  const heights = new Map(Array.from(model.heights, (height) => [height, heightLeft(program, height)]));
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

function computePrices({ rows, prices, cost, inverse }: StripProgram): void {
  prices.fill(0);
  for (let row = 0; row < rows; row++) {
    const c = cost[row]!;
    if (c === 0) continue;
    for (let of = 0; of < rows; of++) prices[of]! += c * inverse[row * rows + of]!;
  }
}

function surplusDirection({ rows, inverse }: StripProgram, of: number): Float64Array {
  return Float64Array.from({ length: rows }, (_, row) => -inverse[row * rows + of]!);
}

function columnDirection(program: StripProgram, column: StripColumn): Float64Array {
  const { model, rows, inverse, demands } = program;
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

function pivot(program: StripProgram, direction: Float64Array, cost: number): boolean {
  const { rows, inverse, amount } = program;
  let leaving = -1;
  let step = Infinity;
  for (let row = 0; row < rows; row++) {
    if (direction[row]! <= 1e-9) continue;
    const ratio = amount[row]! / direction[row]!;
    const isTie = Math.abs(ratio - step) < 1e-12 && direction[row]! > direction[leaving]!;
    if (ratio < step - 1e-12 || isTie) {
      step = ratio;
      leaving = row;
    }
  }
  if (leaving < 0) return false;
  step = Math.max(0, step);
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
  program.cost[leaving] = cost;
  return true;
}

/** Looks for strips worth more than their height at today's prices; false if there are none. */
function addColumns(program: StripProgram): boolean {
  const { model, room, prices, known, columns } = program;
  for (let row = 0; row < program.rows; row++) prices[row] = Math.max(0, prices[row]!);
  const worths = proveBound(program, false);
  const left = Float64Array.from(model.heights, (height) => heightLeft(program, height));
  const saving = (s: number) => (worths[s]! - left[s]!) / model.heights[s]!;
  const promising = Array.from(worths.keys())
    .filter((s) => saving(s) > TINY)
    .sort((a, b) => saving(b) - saving(a));
  let added = 0;
  for (const [tried, s] of promising.entries()) {
    if (added > NEW_COLUMNS_A_ROUND || (tried > HEIGHTS_A_ROUND && added > 0)) break;
    const height = model.heights[s]!;
    bestRows(
      model,
      room,
      prices,
      model.copies,
      { height: s, forced: -1, atMost: 1, tolerance: 0, start: 0 },
      (value, counts) => {
        if (value <= left[s]! + height * TINY) return;
        const types = Array.from(counts.keys()).filter((type) => counts[type]! > 0);
        const column = { height, types, counts: types.map((type) => counts[type]!) };
        const key = `${s}:${types.join()}:${column.counts.join()}`;
        if (known.has(key)) return;
        known.add(key);
        columns.push(column);
        added++;
      },
    );
  }
  return added > 0;
}

const PRICE_STEPS = 2 ** 20;

/**
 * Scales the prices until no strip is worth more than its height less what it gives to the demands; what they come to is then a
 * bound (Farley 1990). Prices are cut to whole steps first, so that sums are exact. `isExact` spends more time on patches that may
 * turn. Gives, by height, the largest worth of a strip.
 */
function proveBound(program: StripProgram, isExact: boolean): Float64Array {
  const { model, room, demands } = program;
  const { copies, types } = model;
  const whole = Float64Array.from(model.share, (_, type) =>
    Math.floor(Math.max(0, program.prices[type]!) * PRICE_STEPS),
  );
  const left = heightsLeft(program);
  const worths = new Float64Array(model.heights.length);
  valuesByHeight(model, room, whole, copies, (s, row) => {
    worths[s] = row[model.stripWidth]! / PRICE_STEPS;
  });
  const ratio = (s: number) => (worths[s] === 0 ? 0 : worths[s]! / left.heights[s]!);
  let worst = 0;
  for (const s of Array.from(worths.keys()).sort((a, b) => ratio(b) - ratio(a))) {
    if (ratio(s) <= worst) break;
    if (isExact) {
      const search = { height: s, forced: -1, atMost: 0, tolerance: 0, start: 0 };
      worths[s] = bestRows(model, room, whole, copies, search, () => undefined) / PRICE_STEPS;
    }
    worst = Math.max(worst, ratio(s));
  }
  const sum = whole.reduce((total, price, type) => total + price * copies[type]!, 0) / PRICE_STEPS;
  const asked = demands.reduce((total, { isLeast, count }, index) => {
    const price = left.scale * Math.max(0, program.prices[types + index]!);
    return total + price * (isLeast ? count : -count);
  }, 0);
  const proved = asked + (worst > 0 ? sum / worst : 0);
  program.bound = Math.max(program.bound, Math.ceil(proved * (1 - 1e-9) - 1e-9));
  return worths;
}
