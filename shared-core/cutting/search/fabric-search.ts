import type { CutTree } from '#core/domain/cutting-plan';
import type { FabricProblem, FilledSpace } from './fabric-problem';
import type { SheetContext } from './fill-sheets';
import type { PieceSpace } from '../tree/piece-space';
import type { ShortestRun } from './shortest-run';
import { countPatches } from '../tree/cut-tree';
import { fillSheet, fitSheets, sheetContext } from './fill-sheets';
import { fitsSpace } from '../tree/piece-space';
import { shortestRun } from './shortest-run';

/** What a fabric's search reports while it runs. */
export interface FabricNews {
  /** A way to cut, with the copies of each type that it does not place. It is not always better than the one before. */
  plan(filled: readonly FilledSpace[], left: readonly number[]): void;
  /** A proven least height for cutting all patches from fabric to buy. */
  bound(height: number): void;
}

const LAST_PASS = 24;
const FIRST_BUDGET = 60;
const WIDEST_BEAM = 256;
const SINGLES_PER_PASS = 6;

/**
 * Looks for good ways to cut one fabric's patches from its pieces, in passes of growing effort. A pass tries to cut everything
 * from one piece; then piece after piece (small ones first, large ones first, or in random order), with the last piece cut
 * as short as possible; and then from all pieces at once where that avoids buying. Yields between small steps.
 */
export function* searchFabric(problem: FabricProblem, news: FabricNews): Generator<unknown, void> {
  const copies = problem.patches.map((patch) => patch.copies);
  if (copies.every((count) => count === 0)) return;
  const context = sheetContext(problem);
  const singles = singleRuns(problem, copies);
  for (let pass = 0; pass < LAST_PASS; pass++) {
    const budget = FIRST_BUDGET * 2 ** Math.min(pass, 16);
    for (const run of singlesOfPass(singles, pass)) {
      if (!(yield* run.advance(budget))) continue;
      news.plan(
        [{ space: run.space, tree: run.tree()! }],
        copies.map(() => 0),
      );
      if (run.space.source === undefined) news.bound(run.bound());
    }
    if (problem.spaces.length === 0) {
      if (singles.every((run) => run.isFinished())) return;
      continue;
    }
    const beamWidth = Math.min(WIDEST_BEAM, 2 ** Math.floor(pass / 2));
    const order = orderOfPass(problem, pass);
    yield* planInOrder(problem, { context, order, copies, beamWidth, budget }, news);
  }
}

/** Searches that cut everything from one piece: from each large enough piece of the stash, or else from fabric to buy. */
function singleRuns(problem: FabricProblem, copies: readonly number[]): ShortestRun[] {
  const area = areaOf(problem, copies);
  const holdsAll = (space: PieceSpace) =>
    space.width * space.height >= area &&
    problem.patches.every((patch) => patch.copies === 0 || fitsSpace(patch, space));
  const large = problem.spaces.filter(holdsAll);
  const buyable = problem.toBuy !== undefined && holdsAll(problem.toBuy) ? [problem.toBuy] : [];
  return (large.length > 0 ? large : buyable).map((space) => shortestRun(problem, space, copies));
}

function singlesOfPass(singles: readonly ShortestRun[], pass: number): ShortestRun[] {
  const start = (pass * SINGLES_PER_PASS) % Math.max(1, singles.length);
  return [...singles.slice(start), ...singles.slice(0, start)].slice(0, SINGLES_PER_PASS);
}

/** Small pieces first in the first pass, large ones first in the second, then random orders. */
function orderOfPass({ spaces, random }: FabricProblem, pass: number): PieceSpace[] {
  const area = (space: PieceSpace) => space.width * space.height;
  if (pass === 0) return [...spaces].sort((a, b) => area(a) - area(b));
  if (pass === 1) return [...spaces].sort((a, b) => area(b) - area(a));
  return spaces
    .map((space) => ({ space, key: (pass % 2 === 0 ? Math.log(area(space)) : 1) * (0.5 + random()) }))
    .sort((a, b) => a.key - b.key)
    .map(({ space }) => space);
}

interface Pass {
  readonly context: SheetContext;
  readonly order: readonly PieceSpace[];
  readonly copies: readonly number[];
  readonly beamWidth: number;
  readonly budget: number;
}

/** Fills piece after piece in the order of the pass, and all of them together if patches remain. */
function* planInOrder(problem: FabricProblem, pass: Pass, news: FabricNews): Generator<unknown, void> {
  const { context, order, copies, beamWidth, budget } = pass;
  const filled: FilledSpace[] = [];
  let left: readonly number[] = copies;
  const isDone = () => left.every((count) => count === 0);
  for (const space of order) {
    let last: CutTree | undefined;
    for (let sheet = 0; sheet < space.times && !isDone(); sheet++) {
      const whole = yield* cutShort(problem, space, left, budget);
      if (whole !== undefined) {
        filled.push(whole);
        left = left.map(() => 0);
        break;
      }
      const next = sameAgain(last, left) ?? (yield* fillSheet(context, space, left, beamWidth));
      if (next === undefined) break;
      filled.push({ space, tree: next.tree });
      ({ tree: last, left } = next);
    }
  }
  const needsMore = !isDone();
  if (needsMore && problem.toBuy !== undefined) {
    const bought = yield* cutShort(problem, problem.toBuy, left, budget);
    if (bought !== undefined) {
      filled.push(bought);
      left = left.map(() => 0);
    }
  }
  news.plan(filled, left);
  if (!needsMore) return;
  const together = yield* fitSheets(context, order, copies, beamWidth * 4);
  if (together !== undefined)
    news.plan(
      together,
      copies.map(() => 0),
    );
}

/** Cuts the next sheet of a pack like the last one; undefined if not enough patches remain. */
function sameAgain(
  tree: CutTree | undefined,
  left: readonly number[],
): { readonly tree: CutTree; readonly left: readonly number[] } | undefined {
  if (tree === undefined) return undefined;
  const used = countPatches(tree, left.length);
  const after = left.map((count, type) => count - used[type]!);
  return after.every((count) => count >= 0) ? { tree, left: after } : undefined;
}

/** Cuts all remaining patches from one space, as short as the budget allows; undefined if they do not fit. */
function* cutShort(
  problem: FabricProblem,
  space: PieceSpace,
  left: readonly number[],
  budget: number,
): Generator<unknown, FilledSpace | undefined> {
  const fitsAll = problem.patches.every((patch, type) => left[type] === 0 || fitsSpace(patch, space));
  if (!fitsAll || space.width * space.height < areaOf(problem, left)) return undefined;
  const run = shortestRun(problem, space, left);
  yield* run.advance(budget);
  const tree = run.tree();
  return tree && { space, tree };
}

function areaOf({ patches }: FabricProblem, copies: readonly number[]): number {
  return patches.reduce((sum, patch, type) => sum + patch.width * patch.height * copies[type]!, 0);
}
