import type { Knapsack } from './strip-knapsack';
import type { StripModel } from './strip-model';
import type { CutTree } from '#core/domain/cutting-plan';
import type { PatchType } from '../tree/cut-plan';
import { bestRows, valuesByHeight } from './strip-knapsack';
import { restTree, splitTree } from '../tree/cut-tree';

/** One strip of a layout: its height and the copies of each type in it. */
export interface Strip {
  readonly height: number;
  readonly counts: Int32Array;
}

export interface StripBeamOrder {
  /** The value of a copy of each type, in strip height. */
  readonly values: Float64Array;
  readonly beamWidth: number;
  /**
   * The rows tried for each strip, the strip heights tried for each layout, and how much less than the best a row may be
   * worth.
   */
  readonly rows: number;
  readonly heights: number;
  readonly tolerance: number;
  /** Changes the order of equal rows. */
  readonly start: number;
  /** Only layouts lower than this are returned. */
  readonly below: number;
}

interface PartialStrips {
  readonly remaining: Uint16Array;
  readonly height: number;
  /** Height used beyond the value placed. */
  readonly loss: number;
  readonly placed: number;
  readonly strip: Strip | undefined;
  readonly before: PartialStrips | undefined;
}

/** The first type of a row moves on by this from layout to layout, so that equal rows are tried in another order. */
const START_STEP = 7;

/**
 * Builds layouts strip by strip. Each strip takes the hardest remaining patch and is filled with the most valuable row; the
 * next best rows and other heights are tried as well. Each level keeps the layouts with the least loss per value. With the
 * prices of the strip program as values, the loss is the height of a layout above the bound. Yields its work in inner-loop
 * steps. Returns the strips of the lowest layout, or undefined if none is lower than `below`.
 */
export function* searchStrips(
  knapsack: Knapsack,
  order: StripBeamOrder,
): Generator<number, readonly Strip[] | undefined> {
  const { model } = knapsack;
  const start = {
    remaining: model.copies.slice(),
    height: 0,
    loss: 0,
    placed: 0,
    strip: undefined,
    before: undefined,
  };
  let level: readonly PartialStrips[] = [start];
  let below = order.below;
  let best: PartialStrips | undefined;
  while (level.length > 0) {
    const next = new Map<string, PartialStrips>();
    for (const [index, layout] of level.entries()) {
      const hard = model.hardFirst.find((type) => layout.remaining[type]! > 0);
      if (hard === undefined) continue;
      const heights = stripHeights(knapsack, order, layout, hard);
      for (const s of heights) {
        const tolerance = order.tolerance * model.heights[s]!;
        const start = (order.start + START_STEP * index) % model.types;
        const search = { height: s, forced: hard, atMost: order.rows, tolerance, start };
        const stock = { values: order.values, copies: layout.remaining };
        bestRows(knapsack, stock, search, (value, counts) => {
          const grown = addStrip(model, layout, { height: s, value, counts });
          if (grown.height >= below) return;
          if (grown.remaining.every((copies) => copies === 0)) {
            below = grown.height;
            best = grown;
            return;
          }
          const key = String.fromCharCode(...grown.remaining);
          const rival = next.get(key);
          if (rival === undefined || rival.height > grown.height) next.set(key, grown);
        });
      }
      yield (heights.length + 1) * model.types * model.stripWidth;
    }
    level = [...next.values()]
      .sort((a, b) => a.loss / a.placed - b.loss / b.placed || a.height - b.height)
      .slice(0, order.beamWidth);
  }
  return best && stripsOf(best);
}

/** The strip heights to try for the hardest patch: those with the least loss in the relaxed knapsack. */
function stripHeights(
  knapsack: Knapsack,
  { values, heights }: StripBeamOrder,
  { remaining }: PartialStrips,
  hard: number,
): number[] {
  const { model } = knapsack;
  const live = new Uint8Array(model.heights.length);
  let liveCount = 0;
  for (let kind = 0; kind < model.kindLevel.length; kind++) {
    const s = model.kindLevel[kind]!;
    if (live[s] === 1 || remaining[model.kindType[kind]!] === 0 || model.widths[s * model.types + hard] === 0)
      continue;
    live[s] = 1;
    liveCount++;
  }
  if (liveCount === 1) return [live.indexOf(1)];
  const tried: { s: number; loss: number }[] = [];
  valuesByHeight(knapsack, { values, copies: remaining }, (s, row) => {
    if (live[s] === 0) return;
    const worth = row[model.stripWidth - model.widths[s * model.types + hard]!]! + values[hard]!;
    tried.push({ s, loss: 1 - worth / model.heights[s]! });
  });
  return tried
    .sort((a, b) => a.loss - b.loss)
    .slice(0, heights)
    .map(({ s }) => s);
}

interface StripRow {
  /** Number of the strip's height. */
  readonly height: number;
  readonly value: number;
  readonly counts: Int32Array;
}

function addStrip(model: StripModel, layout: PartialStrips, row: StripRow): PartialStrips {
  const { value, counts } = row;
  const height = trueHeight(model, row.height, counts);
  const remaining = layout.remaining.slice();
  for (let type = 0; type < model.types; type++) remaining[type]! -= counts[type]!;
  return {
    remaining,
    height: layout.height + height,
    loss: layout.loss + height - value,
    placed: layout.placed + value,
    strip: { height, counts: counts.slice() },
    before: layout,
  };
}

/** The height of the tallest patch in the row, with each patch laid as narrow as height number s allows. */
function trueHeight(model: StripModel, s: number, counts: Int32Array): number {
  let tallest = 0;
  for (let kind = 0; kind < model.kindType.length && model.kindLevel[kind]! <= s; kind++) {
    const type = model.kindType[kind]!;
    if (counts[type]! > 0 && model.kindWidth[kind] === model.widths[s * model.types + type]) {
      tallest = Math.max(tallest, model.kindHeight[kind]!);
    }
  }
  return tallest;
}

function stripsOf(last: PartialStrips): Strip[] {
  const strips: Strip[] = [];
  for (let at: PartialStrips | undefined = last; at?.strip !== undefined; at = at.before)
    strips.push(at.strip);
  return strips.reverse();
}

/**
 * Makes a cut tree of the strips: in each strip the tallest patches come first, trimmed to height, and the rest is at the
 * end.
 */
export function treeOfStrips(
  strips: readonly Strip[],
  patches: readonly PatchType[],
  stripWidth: number,
): CutTree {
  return splitTree(
    'across',
    strips.map((strip) => treeOfStrip(strip, patches, stripWidth)),
  );
}

function treeOfStrip({ height, counts }: Strip, patches: readonly PatchType[], stripWidth: number): CutTree {
  const cells: CutTree[] = [];
  for (const [type, count] of counts.entries()) {
    const patch = patches[type];
    if (patch === undefined || count === 0) continue;
    const fitsStraight = patch.height <= height && patch.width <= stripWidth;
    const fitsTurned = patch.mayTurn && patch.width <= height && patch.height <= stripWidth;
    const turned = fitsTurned && (!fitsStraight || patch.height < patch.width);
    const size = turned
      ? { width: patch.height, height: patch.width }
      : { width: patch.width, height: patch.height };
    const cell = splitTree('across', [
      { kind: 'patch', ...size, patch: type, turned },
      restTree(size.width, height - size.height),
    ]);
    cells.push(...new Array<CutTree>(count).fill(cell));
  }
  const tallness = (cell: CutTree) => (cell.kind === 'split' ? cell.parts[0]!.height : cell.height);
  cells.sort((a, b) => tallness(b) - tallness(a) || b.width - a.width);
  const used = cells.reduce((sum, cell) => sum + cell.width, 0);
  return splitTree('along', [...cells, restTree(stripWidth - used, height)]);
}
