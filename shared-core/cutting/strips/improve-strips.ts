import type { CutTree, PatchType } from '../tree/cut-plan';
import type { StripProgram } from './strip-program';
import { knapsackRoom } from './strip-knapsack';
import { stripModel } from './strip-model';
import { searchStrips, treeOfStrips } from './strip-beam';
import { solveStripProgram, stripProgram } from './strip-program';
import { proveWholeStrips } from './whole-strips';

/** What a search reports while it runs, in grid steps. */
export interface SearchNews {
  /** A layout lower than any before. */
  layout(height: number, tree: CutTree): void;
  /** A proven lower bound of the height, which may be weaker than one before. */
  bound(height: number): void;
}

/** One fast layout in strips, by area: the first answer of every search. */
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
  const strips = yield* searchStrips(model, knapsackRoom(model), order);
  if (strips === undefined) throw new Error('The strip search lost a patch.');
  news.layout(heightOf(strips), treeOfStrips(strips, patches, stripWidth));
}

const FIRST_PROGRAM_WORK = 1e7;
const LAST_BEAM_WIDTH = 50_000;
/** Of the beams' work so much is spent on proofs: they give no layout. */
const PROVING_SHARE = 1 / 8;

/**
 * Looks for ever lower layouts in strips until the bound is met: wider and wider beams, judged by the prices of the strip
 * program, which is solved in turns with them; every second beam mixes in the plain area, two of three a little chance.
 */
export function* improveStrips(
  patches: readonly PatchType[],
  stripWidth: number,
  first: number,
  bound: number,
  random: () => number,
  news: SearchNews,
): Generator<unknown, void> {
  const model = stripModel(patches, stripWidth);
  const room = knapsackRoom(model);
  const program = stripProgram(model, room);
  let best = first;
  const proving = proveStrips(program, () => best);
  yield* workOn(proving, FIRST_PROGRAM_WORK, () => program.isSolved);
  for (let turn = 0; ; turn++) {
    news.bound(program.bound);
    if (best <= Math.max(bound, program.bound)) return;
    const round = Math.floor(turn / 3);
    const beamWidth = Math.floor(1.6 ** round);
    if (beamWidth > LAST_BEAM_WIDTH) return;
    const beam = searchStrips(model, room, {
      values: beamValues(program, turn, random),
      beamWidth,
      rows: 4 + round,
      heights: 4 + round,
      tolerance: turn % 3 === 2 ? 0.3 : 0.02,
      start: 13 * turn,
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

function beamValues({ model, prices }: StripProgram, turn: number, random: () => number): Float64Array {
  const noise = turn % 3 === 0 ? 0 : 0.1;
  const areaPart = turn % 2 === 1 ? 0.5 : 0.02;
  return model.share.map((share, type) => {
    const value = Math.max(0, prices[type]!) * (1 - areaPart) + share * areaPart;
    return value * (1 + noise * (random() - 0.5));
  });
}

/** Solves the program, and then proves what it can of whole strips. */
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
