import type { PatchType } from '../tree/cut-plan';
import type { SearchNews } from '../tree/search-news';
import type { StripProgram } from './strip-program';
import { knapsackOf } from './strip-knapsack';
import { stripModel } from './strip-model';
import { searchStrips, treeOfStrips } from './strip-beam';
import { solveStripProgram, stripProgram } from './strip-program';
import { proveWholeStrips } from './whole-strips';

/** Finds a first layout in strips quickly, judged by area; every search starts with it. */
export function* firstStrips(
  patches: readonly PatchType[],
  stripWidth: number,
  news: SearchNews,
): Generator<unknown, void> {
  const model = stripModel(patches, stripWidth);
  const order = {
    values: model.share,
    beamWidth: 1,
    rows: 1,
    heights: 2,
    tolerance: 0,
    start: 0,
    below: Infinity,
  };
  const strips = yield* searchStrips(knapsackOf(model), order);
  if (strips === undefined) throw new Error('The strip search lost a patch.');
  news.layout(heightOf(strips), treeOfStrips(strips, patches, stripWidth));
}

const FIRST_PROGRAM_WORK = 1e7;
const LAST_BEAM_WIDTH = 50_000;
/** Proofs find no layout, so they get only this share of the work that the beams get. */
const PROVING_SHARE = 1 / 8;

/** Beams of the same width before the next width. */
const BEAMS_PER_WIDTH = 3;
const WIDTH_GROWTH = 1.6;
/** How much less than the best row another row may be worth, in strip height. The third beam of each width allows more. */
const TOLERANCE = { near: 0.02, far: 0.3 } as const;
/** The first type of a row moves on by this from beam to beam, so that equal rows are tried in another order. */
const START_STEP = 13;
/** The share of plain area in the value of a patch; the other part is its price. `NOISE` is the share of chance. */
const AREA_SHARE = { much: 0.5, little: 0.02 } as const;
const NOISE = 0.1;

export interface StripTask {
  readonly patches: readonly PatchType[];
  readonly stripWidth: number;
  /** Height of the layout to improve on. */
  readonly first: number;
  /** No layout is lower. */
  readonly bound: number;
  /** Numbers in [0, 1). */
  readonly random: () => number;
}

/**
 * Looks for lower layouts in strips until one meets the bound, with beams of growing width. The beams are judged by the prices
 * of the strip program, which is solved in turns with them. Every second beam counts more of the plain area, and two of
 * three add a little chance.
 */
export function* improveStrips(task: StripTask, news: SearchNews): Generator<unknown, void> {
  const { patches, stripWidth, first, bound, random } = task;
  const knapsack = knapsackOf(stripModel(patches, stripWidth));
  const program = stripProgram(knapsack);
  let best = first;
  const proving = proveStrips(program, () => best);
  yield* workOn(proving, FIRST_PROGRAM_WORK, () => program.isSolved);
  for (let turn = 0; ; turn++) {
    news.bound(program.bound);
    if (best <= Math.max(bound, program.bound)) return;
    const round = Math.floor(turn / BEAMS_PER_WIDTH);
    const beamWidth = Math.floor(WIDTH_GROWTH ** round);
    if (beamWidth > LAST_BEAM_WIDTH) return;
    const beam = searchStrips(knapsack, {
      values: beamValues(program, turn, random),
      beamWidth,
      rows: 4 + round,
      heights: 4 + round,
      tolerance: turn % BEAMS_PER_WIDTH === 2 ? TOLERANCE.far : TOLERANCE.near,
      start: START_STEP * turn,
      below: best,
    });
    let work = 0;
    let step = beam.next();
    for (; step.done !== true; step = beam.next()) {
      work += step.value;
      yield;
    }
    if (step.value !== undefined) {
      best = heightOf(step.value);
      news.layout(best, treeOfStrips(step.value, patches, stripWidth));
    }
    yield* workOn(proving, program.isSolved ? work * PROVING_SHARE : work, () => false);
  }
}

function beamValues(program: StripProgram, turn: number, random: () => number): Float64Array {
  const { prices } = program;
  const noise = turn % BEAMS_PER_WIDTH === 0 ? 0 : NOISE;
  const areaPart = turn % 2 === 1 ? AREA_SHARE.much : AREA_SHARE.little;
  return program.knapsack.model.share.map((share, type) => {
    const value = Math.max(0, prices[type]!) * (1 - areaPart) + share * areaPart;
    return value * (1 + noise * (random() - 0.5));
  });
}

/** Solves the program, then proves a better bound for whole strips. */
function* proveStrips(program: StripProgram, best: () => number): Generator<number, void> {
  yield* solveStripProgram(program);
  yield* proveWholeStrips(program, best);
}

function* workOn(
  work: Generator<number, void>,
  most: number,
  isEnough: () => boolean,
): Generator<unknown, void> {
  let done = 0;
  while (done < most && !isEnough()) {
    const step = work.next();
    if (step.done === true) return;
    done += step.value;
    yield;
  }
}

function heightOf(strips: readonly { readonly height: number }[]): number {
  return strips.reduce((sum, strip) => sum + strip.height, 0);
}
