import type { CuttingRule, PatchType } from '../tree/cut-plan';
import type {
  CuttingJob,
  JobFabric,
  JobPiece,
  JobPlan,
  PiecePlan,
  Purchase,
  UnplacedPatch,
} from '../tree/cutting-job';
import type { FilledSpace } from './fabric-problem';
import { countPatches, restTree } from '../tree/cut-tree';
import { type FabricNews, searchFabric } from './fabric-search';
import { isBetter, totalsOf } from '../tree/job-totals';
import { fitsSpace, patchTypes, pieceSpace, spaceToBuy, whyImpossible } from '../tree/piece-space';
import { type FabricContext, planPack, planPiece } from '../tree/piece-plan';
import { seededRandom } from '#core/units/seeded-random';
import { renumberPatches } from './strip-run';

/** Two plans for the same job, for the maker to choose from. */
export interface JobAnswer {
  readonly leastFabric: JobPlan;
  readonly simplestCuts: JobPlan;
}

/** A search for the plan of a job, which runs in slices of time. */
export interface JobSearch {
  /** Undefined until every fabric has a plan under both rules. */
  answer(): JobAnswer | undefined;
  isFinished(): boolean;
  /** Runs until `now()` reaches `until` or the search is finished; true if a plan got better. */
  step(now: () => number, until: number): boolean;
}

/** The search for one fabric under one rule. */
interface FabricTask {
  readonly fabric: JobFabric;
  readonly rule: CuttingRule;
  readonly impossible: readonly UnplacedPatch[];
  readonly work: Generator<unknown, void>;
  readonly found: FoundForFabric;
  isFinished: boolean;
}

/** What the search for one fabric has found so far. */
interface FoundForFabric {
  best: FabricPlan | undefined;
  /** No layout of all patches on fabric to buy is shorter. */
  leastLength: number;
  hasNews: boolean;
}

interface FabricPlan {
  readonly pieces: readonly PiecePlan[];
  readonly unplaced: readonly UnplacedPatch[];
}

const STEPS_A_TURN = 64;

/**
 * Plans a whole job: every fabric by itself, once with simple cuts and once with least fabric. Patches that fit no fabric are
 * listed as not placed, and patches in locked parts count as placed. The searches take turns so that every fabric has a plan
 * soon. `random` returns numbers in [0, 1) and is called only at the start.
 */
export function planCutting(job: CuttingJob, random: () => number): JobSearch {
  const tasks = job.fabrics.flatMap((fabric) => {
    const seed = Math.floor(random() * 2 ** 32);
    return [fabricTask(job, fabric, 'guillotine', seed), fabricTask(job, fabric, '2-stage', seed)];
  });
  let next = 0;
  let turn: { readonly task: FabricTask; left: number } | undefined;
  const taskInTurn = (): FabricTask | undefined => {
    if (turn !== undefined && turn.left-- > 0 && !turn.task.isFinished) return turn.task;
    const open = tasks.filter((task) => !task.isFinished);
    const task =
      open.find(({ found }) => found.best === undefined) ?? open[next++ % Math.max(1, open.length)];
    turn = task && { task, left: STEPS_A_TURN - 1 };
    return task;
  };
  return {
    answer: () =>
      tasks.every((task) => task.found.best !== undefined || task.isFinished)
        ? { leastFabric: joinPlans(job, tasks, 'guillotine'), simplestCuts: joinPlans(job, tasks, '2-stage') }
        : undefined,
    isFinished: () => tasks.every((task) => task.isFinished),
    step(now, until) {
      for (const { found } of tasks) found.hasNews = false;
      for (let task = taskInTurn(); task !== undefined; task = taskInTurn()) {
        task.isFinished = task.work.next().done === true;
        if (now() >= until) break;
      }
      return tasks.some(({ found }) => found.hasNews);
    },
  };
}

function fabricTask(job: CuttingJob, fabric: JobFabric, rule: CuttingRule, seed: number): FabricTask {
  const patches = withoutLocked(patchTypes(job.patches, fabric), fabric);
  const spaces = fabric.pieces
    .map(pieceSpace)
    .filter(({ width, height, times }) => width > 0 && height > 0 && times > 0);
  const toBuy = fabric.toBuy === undefined ? undefined : spaceToBuy(fabric.toBuy);
  const everywhere = toBuy === undefined ? spaces : [...spaces, toBuy];
  const own = Array.from(patches.keys()).filter(
    (index) => patches[index]!.copies > 0 && everywhere.some((space) => fitsSpace(patches[index]!, space)),
  );
  const wanted = own.map((index) => patches[index]!);
  const longestAlong = Math.min(job.table.rulerLength, job.table.matLength);
  const problem = {
    patches: wanted,
    spaces: spaces.filter((space) => wanted.some((patch) => fitsSpace(patch, space))),
    toBuy,
    rule,
    limits: { maxStages: 0, longestAcross: Infinity, longestAlong },
    random: seededRandom(seed),
  };
  const found: FoundForFabric = { best: undefined, leastLength: 0, hasNews: false };
  const news = newsOf({ job, fabric, patches }, own, found);
  const task: FabricTask = {
    fabric,
    rule,
    impossible: patches.flatMap((type, index) => whyImpossible(job.patches[index]!, type, everywhere) ?? []),
    work: searchFabric(problem, news),
    found,
    isFinished: false,
  };
  if (wanted.length === 0) news.plan([], []);
  return task;
}

/** Keeps the best plan and the best bound that a search reports; `own` has the index of each of its patches in the job. */
function newsOf(context: FabricContext, own: readonly number[], found: FoundForFabric): FabricNews {
  const { job } = context;
  return {
    plan(filled, left) {
      const inJob = filled.map(({ space, tree }) => ({ space, tree: renumberPatches(tree, own) }));
      const candidate = {
        pieces: [...planFilled(context, inJob), ...lockedOnly(context, filled)],
        unplaced: left.flatMap((copies, type) => usedUp(job.patches[own[type]!]!.id, copies)),
      };
      const { best } = found;
      if (best !== undefined && !isBetter(planTotals(candidate), planTotals(best), job.wishes)) return;
      found.best = candidate;
      found.hasNews = true;
    },
    bound(height) {
      found.leastLength = Math.max(found.leastLength, height);
    },
  };
}

/** The patch types without the copies that are already in locked parts. */
function withoutLocked(types: readonly PatchType[], fabric: JobFabric): PatchType[] {
  const locked = fabric.pieces
    .flatMap((piece) => piece.lockedParts)
    .map((part) => countPatches(part, types.length));
  return types.map((type, index) => {
    const held = locked.reduce((sum, counts) => sum + counts[index]!, 0);
    return { ...type, copies: Math.max(0, type.copies - held) };
  });
}

/** A plan for each space that was filled; sheets of one pack are planned together. */
function planFilled(context: FabricContext, filled: readonly FilledSpace[]): PiecePlan[] {
  const packs = [...new Set(filled.map(({ space }) => space.source))].filter(isPack);
  return [
    ...filled.filter(({ space }) => !isPack(space.source)).map((one) => planPiece(context, one)),
    ...packs.map((pack) => {
      const sheets = filled.filter(({ space }) => space.source === pack);
      return planPack(context, pack, sheets);
    }),
  ];
}

function isPack(piece: JobPiece | undefined): piece is JobPiece {
  return piece?.sheetLength !== undefined;
}

/** Plans for pieces with locked parts in which nothing new is placed: they stay part of the job. */
function lockedOnly(context: FabricContext, filled: readonly FilledSpace[]): PiecePlan[] {
  return context.fabric.pieces
    .filter((piece) => piece.lockedParts.length > 0 && !filled.some(({ space }) => space.source === piece))
    .map((piece) =>
      isPack(piece)
        ? planPack(context, piece, [])
        : planPiece(context, { space: pieceSpace(piece), tree: restTree(0, 0) }),
    );
}

function usedUp(patch: string, copies: number): UnplacedPatch[] {
  return copies === 0 ? [] : [{ patch, copies, reason: 'stash-used-up', helps: [] }];
}

function planTotals({ pieces, unplaced }: FabricPlan): JobPlan['totals'] {
  return totalsOf(
    pieces,
    unplaced.reduce((sum, patch) => sum + patch.copies, 0),
  );
}

/**
 * Joins the plans of all fabrics. Where simple cuts use the fabric better, they also serve as the plan with least fabric.
 */
function joinPlans(job: CuttingJob, tasks: readonly FabricTask[], rule: CuttingRule): JobPlan {
  const chosen = job.fabrics.flatMap((fabric) => {
    const [first, ...others] = tasks.filter(
      (task) => task.fabric === fabric && (rule === 'guillotine' || task.rule === rule),
    );
    if (first === undefined) return [];
    return [others.reduce((best, task) => (isBetterTask(job, task, best) ? task : best), first)];
  });
  const pieces = chosen.flatMap(({ found }) => found.best?.pieces ?? []);
  const unplaced = chosen.flatMap((task) => [...task.impossible, ...(task.found.best?.unplaced ?? [])]);
  const totals = planTotals({ pieces, unplaced });
  const leastArea = pieces.reduce((sum, piece) => sum + piece.areas.patches, 0);
  return {
    rule,
    pieces,
    purchases: chosen.flatMap((task) => purchasesOf(task, tasks, rule)),
    unplaced,
    totals,
    leastArea,
    gap: leastArea === 0 ? 0 : (totals.usedArea - leastArea) / leastArea,
  };
}

function isBetterTask(job: CuttingJob, task: FabricTask, than: FabricTask): boolean {
  const [best, other] = [task.found.best, than.found.best];
  if (best === undefined) return false;
  return other === undefined || isBetter(planTotals(best), planTotals(other), job.wishes);
}

function purchasesOf(
  { fabric, found }: FabricTask,
  tasks: readonly FabricTask[],
  rule: CuttingRule,
): Purchase[] {
  const pieces = found.best?.pieces ?? [];
  const bound = tasks.find((task) => task.fabric === fabric && task.rule === rule)?.found.leastLength ?? 0;
  return pieces
    .filter((plan) => plan.piece === undefined)
    .map(({ width, length, tree }) => {
      const leastLength = pieces.length === 1 ? bound : 0;
      return { fabric: fabric.id, width, exactLength: usedLength(tree), length, leastLength };
    });
}

/** The length up to the last cut; the fabric beyond it goes back on the shelf. */
function usedLength(tree: PiecePlan['tree']): number {
  if (tree.kind !== 'split' || tree.direction === 'along') return tree.height;
  const last = tree.parts.at(-1);
  return last?.kind === 'rest' && last.use !== 'margin' ? tree.height - last.height : tree.height;
}
