import type { KnapsackRoom } from './strip-knapsack';
import type { StripModel } from './strip-model';
import { bestRows, valuesByHeight } from './strip-knapsack';

/** A strip as a column of the linear program: its height and how many of which types it holds. */
interface StripColumn {
  readonly height: number;
  readonly types: readonly number[];
  readonly counts: readonly number[];
}

/**
 * The linear program of strips: least total height of strips, in fractions, that hold every patch (Gilmore and Gomory
 * 1965). Its value bounds every 2-stage layout from below and its prices say what each patch costs. Dense basis inverse.
 */
export interface StripProgram {
  readonly model: StripModel;
  readonly room: KnapsackRoom;
  readonly columns: StripColumn[];
  readonly known: Set<string>;
  readonly inverse: Float64Array;
  readonly amount: Float64Array;
  readonly cost: Float64Array;
  /** Price of one copy of each type, in strip height. */
  readonly prices: Float64Array;
  /** Proven lower bound of the total height, rounded up to whole units. */
  bound: number;
  isSolved: boolean;
}

/** The program with one strip of its own kind for every type, which is a first solution. */
export function stripProgram(model: StripModel, room: KnapsackRoom): StripProgram {
  const { types } = model;
  const program: StripProgram = {
    model,
    room,
    columns: [],
    known: new Set(),
    inverse: new Float64Array(types * types),
    amount: new Float64Array(types),
    cost: new Float64Array(types),
    prices: new Float64Array(types),
    bound: 0,
    isSolved: false,
  };
  for (let type = 0; type < types; type++) {
    const column = plainColumn(model, type);
    program.columns.push(column);
    program.cost[type] = column.height;
    program.inverse[type * types + type] = 1 / column.counts[0]!;
    program.amount[type] = model.copies[type]! / column.counts[0]!;
  }
  return program;
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
  for (let type = 0; type < model.types; type++) {
    if (prices[type]! < (overpaid < 0 ? -1e-9 : prices[overpaid]!)) overpaid = type;
  }
  if (overpaid >= 0) return pivot(program, surplusDirection(program, overpaid), 0);
  let best: StripColumn | undefined;
  let saving = TINY;
  for (const column of columns) {
    let worth = 0;
    for (let i = 0; i < column.types.length; i++) worth += prices[column.types[i]!]! * column.counts[i]!;
    if (worth / column.height - 1 > saving) {
      saving = worth / column.height - 1;
      best = column;
    }
  }
  return best !== undefined && pivot(program, columnDirection(program, best), best.height);
}

function computePrices({ model, prices, cost, inverse }: StripProgram): void {
  const { types } = model;
  prices.fill(0);
  for (let row = 0; row < types; row++) {
    const c = cost[row]!;
    if (c === 0) continue;
    for (let type = 0; type < types; type++) prices[type]! += c * inverse[row * types + type]!;
  }
}

function surplusDirection({ model, inverse }: StripProgram, type: number): Float64Array {
  return Float64Array.from({ length: model.types }, (_, row) => -inverse[row * model.types + type]!);
}

function columnDirection({ model, inverse }: StripProgram, column: StripColumn): Float64Array {
  const direction = new Float64Array(model.types);
  for (let row = 0; row < model.types; row++) {
    let sum = 0;
    for (let i = 0; i < column.types.length; i++) {
      sum += inverse[row * model.types + column.types[i]!]! * column.counts[i]!;
    }
    direction[row] = sum;
  }
  return direction;
}

function pivot(program: StripProgram, direction: Float64Array, cost: number): boolean {
  const { model, inverse, amount } = program;
  const { types } = model;
  let leaving = -1;
  let step = Infinity;
  for (let row = 0; row < types; row++) {
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
  for (let row = 0; row < types; row++) amount[row]! -= step * direction[row]!;
  amount[leaving] = step;
  const scale = 1 / direction[leaving]!;
  const start = leaving * types;
  for (let type = 0; type < types; type++) inverse[start + type]! *= scale;
  for (let row = 0; row < types; row++) {
    const factor = direction[row]!;
    if (row === leaving || factor === 0) continue;
    for (let type = 0; type < types; type++) inverse[row * types + type]! -= factor * inverse[start + type]!;
  }
  program.cost[leaving] = cost;
  return true;
}

/** Looks for strips worth more than their height at today's prices; false if there are none. */
function addColumns(program: StripProgram): boolean {
  const { model, room, prices, known, columns } = program;
  for (let type = 0; type < model.types; type++) prices[type] = Math.max(0, prices[type]!);
  const ratios = proveBound(program, false);
  const promising = Array.from(ratios.keys())
    .filter((s) => ratios[s]! > 1 + TINY)
    .sort((a, b) => ratios[b]! - ratios[a]!);
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
        if (value <= height * (1 + TINY)) return;
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
 * Scales the prices until no strip is worth more than its height; their sum is then a bound (Farley 1990). Prices are cut
 * to whole steps first, so that sums are exact. `isExact` spends more time on patches that may turn. Gives, by height, the
 * largest worth of a strip over its height.
 */
function proveBound(program: StripProgram, isExact: boolean): Float64Array {
  const { model, room, copies } = { ...program, copies: program.model.copies };
  const whole = program.prices.map((price) => Math.floor(Math.max(0, price) * PRICE_STEPS));
  const ratios = new Float64Array(model.heights.length);
  valuesByHeight(model, room, whole, copies, (s, row) => {
    ratios[s] = row[model.stripWidth]! / PRICE_STEPS / model.heights[s]!;
  });
  let worst = 0;
  for (const s of Array.from(ratios.keys()).sort((a, b) => ratios[b]! - ratios[a]!)) {
    if (ratios[s]! <= worst) break;
    if (isExact) {
      const value = bestRows(
        model,
        room,
        whole,
        copies,
        { height: s, forced: -1, atMost: 0, tolerance: 0, start: 0 },
        () => undefined,
      );
      ratios[s] = value / PRICE_STEPS / model.heights[s]!;
    }
    worst = Math.max(worst, ratios[s]!);
  }
  if (worst > 0) {
    const sum = whole.reduce((total, price, type) => total + price * copies[type]!, 0) / PRICE_STEPS;
    program.bound = Math.max(program.bound, Math.ceil((sum / worst) * (1 - 1e-9) - 1e-9));
  }
  return ratios;
}
