import type { StripModel } from './strip-model';

/** Room for the knapsacks of one model, made once. */
export interface KnapsackRoom {
  /** Best value by width, of the patches low enough so far. */
  readonly row: Float64Array;
  /** Best value by number of types looked at and width. */
  readonly table: Float64Array;
  readonly type: Int32Array;
  readonly width: Int32Array;
  readonly most: Int32Array;
  readonly value: Float64Array;
  readonly counts: Int32Array;
}

export function knapsackRoom(model: StripModel): KnapsackRoom {
  return {
    row: new Float64Array(model.stripWidth + 1),
    table: new Float64Array((model.types + 1) * (model.stripWidth + 1)),
    type: new Int32Array(model.types),
    width: new Int32Array(model.types),
    most: new Int32Array(model.types),
    value: new Float64Array(model.types),
    counts: new Int32Array(model.types),
  };
}

/**
 * Runs up through the strip heights and calls `atHeight` with the best value by strip width so far. A patch that may turn
 * can be counted once in either turning, so the values are never too low; without turning they are exact.
 */
export function valuesByHeight(
  model: StripModel,
  room: KnapsackRoom,
  values: Float64Array,
  copies: Uint16Array,
  atHeight: (s: number, row: Float64Array) => void,
): void {
  const { row } = room;
  row.fill(0);
  let kind = 0;
  for (let s = 0; s < model.heights.length; s++) {
    for (; kind < model.kindLevel.length && model.kindLevel[kind]! <= s; kind++) {
      const type = model.kindType[kind]!;
      const width = model.kindWidth[kind]!;
      const most = Math.min(copies[type]!, (model.stripWidth / width) | 0);
      if (most > 0 && values[type]! > 0) addCopies(row, 0, model.stripWidth, width, values[type]!, most);
    }
    atHeight(s, row);
  }
}

/** Adds up to `most` copies to a knapsack row in bundles of 1, 2, 4 ... copies. */
function addCopies(
  row: Float64Array,
  start: number,
  room: number,
  width: number,
  value: number,
  most: number,
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
  /** A type that has to be in the row once at least, or -1. */
  readonly forced: number;
  /** How many rows to give at most. */
  readonly atMost: number;
  /** How much less than the best a row may be worth. */
  readonly tolerance: number;
  /** Which type comes first: another start gives other rows where more are within the tolerance than asked for. */
  readonly start: number;
}

const MOST_STEPS = 2000;
/** Best rows first: the tolerance opens step by step until enough rows are found. */
const TOLERANCE_STEPS = [0, 0.1, 0.3, 1] as const;

/**
 * Fills one strip: gives the value of the best row, and hands up to `atMost` rows within the tolerance to `found`, with
 * their counts by type (a scratch array: copy what you keep).
 */
export function bestRows(
  model: StripModel,
  room: KnapsackRoom,
  values: Float64Array,
  copies: Uint16Array,
  search: RowSearch,
  found: (value: number, counts: Int32Array) => void,
): number {
  const { table, counts } = room;
  const { height, forced } = search;
  const forcedWidth = forced >= 0 ? model.widths[height * model.types + forced]! : 0;
  const base = forced >= 0 ? values[forced]! : 0;
  const space = model.stripWidth - forcedWidth;
  const stride = model.stripWidth + 1;
  const used = chooseTypes(model, room, values, copies, search, space);
  table.fill(0, 0, space + 1);
  for (let i = 0; i < used; i++) {
    table.copyWithin((i + 1) * stride, i * stride, i * stride + space + 1);
    addCopies(table, (i + 1) * stride, space, room.width[i]!, room.value[i]!, room.most[i]!);
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
    const type = room.type[i - 1]!;
    const width = room.width[i - 1]!;
    for (let n = Math.min(room.most[i - 1]!, (left / width) | 0); n >= 0; n--) {
      const more = worth + n * room.value[i - 1]!;
      if (more + table[(i - 1) * stride + left - n * width]! < threshold) continue;
      counts[type]! += n;
      walk(i - 1, left - n * width, more);
      counts[type]! -= n;
    }
  };
  for (const share of TOLERANCE_STEPS) {
    threshold = best - share * search.tolerance - 1e-9;
    steps = 0;
    if (given < search.atMost && threshold < ceiling) walk(used, space, 0);
    ceiling = threshold;
  }
  return base + best;
}

/** Lists the types that the strip can take beside the forced one; gives their number. */
function chooseTypes(
  model: StripModel,
  room: KnapsackRoom,
  values: Float64Array,
  copies: Uint16Array,
  { height, forced, start }: RowSearch,
  space: number,
): number {
  let used = 0;
  for (let i = 0; i < model.types; i++) {
    const type = (i + start) % model.types;
    const width = model.widths[height * model.types + type]!;
    if (width === 0 || width > space || values[type]! <= 0) continue;
    const most = Math.min(copies[type]! - (type === forced ? 1 : 0), (space / width) | 0);
    if (most <= 0) continue;
    room.type[used] = type;
    room.width[used] = width;
    room.most[used] = most;
    room.value[used] = values[type]!;
    used++;
  }
  return used;
}
