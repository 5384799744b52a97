import type { StripModel } from './strip-model';

/** A model of strips with the arrays that its knapsacks reuse. */
export interface Knapsack {
  readonly model: StripModel;
  /** Best value by width, from the patches up to the current height. */
  readonly row: Float64Array;
  /** Best value by number of types included and by width. */
  readonly table: Float64Array;
  readonly type: Int32Array;
  readonly width: Int32Array;
  readonly most: Int32Array;
  readonly value: Float64Array;
  readonly counts: Int32Array;
}

export function knapsackOf(model: StripModel): Knapsack {
  return {
    model,
    row: new Float64Array(model.stripWidth + 1),
    table: new Float64Array((model.types + 1) * (model.stripWidth + 1)),
    type: new Int32Array(model.types),
    width: new Int32Array(model.types),
    most: new Int32Array(model.types),
    value: new Float64Array(model.types),
    counts: new Int32Array(model.types),
  };
}

/** The patches to fill strips with: the remaining copies of each type, and the value of one copy. */
export interface StripStock {
  readonly values: Float64Array;
  readonly copies: Uint16Array;
}

/**
 * Goes through the strip heights, lowest first, and calls `atHeight` with the best value by strip width. A patch that may turn
 * can be counted once in each turning, so the values can be too high but never too low; without turning they are exact.
 */
export function valuesByHeight(
  { model, row }: Knapsack,
  { values, copies }: StripStock,
  atHeight: (s: number, row: Float64Array) => void,
): void {
  row.fill(0);
  let kind = 0;
  for (let s = 0; s < model.heights.length; s++) {
    for (; kind < model.kindLevel.length && model.kindLevel[kind]! <= s; kind++) {
      const type = model.kindType[kind]!;
      const width = model.kindWidth[kind]!;
      const most = Math.min(copies[type]!, Math.floor(model.stripWidth / width));
      const value = values[type]!;
      if (most > 0 && value > 0) addCopies(row, 0, model.stripWidth, { width, value, most });
    }
    atHeight(s, row);
  }
}

interface KnapsackItem {
  readonly width: number;
  readonly value: number;
  /** The most copies. */
  readonly most: number;
}

/** Adds copies of an item to a knapsack row in bundles of 1, 2, 4 ... copies. */
function addCopies(
  row: Float64Array,
  start: number,
  room: number,
  { width, value, most }: KnapsackItem,
): void {
  let left = most;
  for (let bundle = 1; left > 0; bundle *= 2) {
    const copies = Math.min(bundle, left);
    left -= copies;
    const wide = copies * width;
    const worth = copies * value;
    for (let x = room; x >= wide; x--) {
      const better = row[start + x - wide]! + worth;
      if (better > row[start + x]!) row[start + x] = better;
    }
  }
}

export interface RowSearch {
  /** Number of the strip's height. */
  readonly height: number;
  /** A type that must be in the row, or -1. */
  readonly forced: number;
  /** The most rows to return. */
  readonly atMost: number;
  /** How much less than the best a row may be worth. */
  readonly tolerance: number;
  /** Which type comes first: when more rows than asked for are within the tolerance, another start returns others. */
  readonly start: number;
}

/** Sums of the same values in a different order differ by less than this. */
const ROUNDING_ERROR = 1e-9;

const MOST_STEPS = 2000;
/** Shares of the tolerance, tried in turn until enough rows are found, so that the best rows come first. */
const TOLERANCE_STEPS = [0, 0.1, 0.3, 1] as const;

/**
 * Fills one strip: returns the value of the best row, and calls `found` with up to `atMost` rows within the tolerance and
 * their counts by type (an array that is reused: copy what you keep).
 */
export function bestRows(
  knapsack: Knapsack,
  stock: StripStock,
  search: RowSearch,
  found: (value: number, counts: Int32Array) => void,
): number {
  const { model, table, counts } = knapsack;
  const { height, forced } = search;
  const forcedWidth = forced >= 0 ? model.widths[height * model.types + forced]! : 0;
  const base = forced >= 0 ? stock.values[forced]! : 0;
  const space = model.stripWidth - forcedWidth;
  const stride = model.stripWidth + 1;
  const used = chooseTypes(knapsack, stock, search, space);
  table.fill(0, 0, space + 1);
  for (let i = 0; i < used; i++) {
    table.copyWithin((i + 1) * stride, i * stride, i * stride + space + 1);
    addCopies(table, (i + 1) * stride, space, itemOf(knapsack, i));
  }
  const best = table[used * stride + space]!;
  counts.fill(0);
  if (forced >= 0) counts[forced] = 1;
  let threshold = 0;
  let ceiling = Infinity;
  let given = 0;
  let steps = 0;
  const walk = (i: number, left: number, worth: number): void => {
    if (given >= search.atMost || steps++ > MOST_STEPS) return;
    if (i === 0) {
      if (worth >= ceiling) return;
      given++;
      found(base + worth, counts);
      return;
    }
    const type = knapsack.type[i - 1]!;
    const width = knapsack.width[i - 1]!;
    for (let n = Math.min(knapsack.most[i - 1]!, Math.floor(left / width)); n >= 0; n--) {
      const more = worth + n * knapsack.value[i - 1]!;
      if (more + table[(i - 1) * stride + left - n * width]! < threshold) continue;
      counts[type]! += n;
      walk(i - 1, left - n * width, more);
      counts[type]! -= n;
    }
  };
  for (const share of TOLERANCE_STEPS) {
    threshold = best - share * search.tolerance - ROUNDING_ERROR;
    steps = 0;
    if (given < search.atMost && threshold < ceiling) walk(used, space, 0);
    ceiling = threshold;
  }
  return base + best;
}

function itemOf({ width, value, most }: Knapsack, index: number): KnapsackItem {
  return { width: width[index]!, value: value[index]!, most: most[index]! };
}

/** Lists the types that fit the strip besides the forced one; returns their number. */
function chooseTypes(
  knapsack: Knapsack,
  { values, copies }: StripStock,
  { height, forced, start }: RowSearch,
  space: number,
): number {
  const { model } = knapsack;
  let used = 0;
  for (let i = 0; i < model.types; i++) {
    const type = (i + start) % model.types;
    const width = model.widths[height * model.types + type]!;
    if (width === 0 || width > space || values[type]! <= 0) continue;
    const most = Math.min(copies[type]! - (type === forced ? 1 : 0), Math.floor(space / width));
    if (most <= 0) continue;
    knapsack.type[used] = type;
    knapsack.width[used] = width;
    knapsack.most[used] = most;
    knapsack.value[used] = values[type]!;
    used++;
  }
  return used;
}
