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
import { searchFabric } from './fabric-search';
import { isBetter, totalsOf } from '../tree/job-totals';
import { fitsSpace, patchTypes, pieceSpace, spaceToBuy, whyImpossible } from '../tree/piece-space';
import { planPack, planPiece } from '../tree/piece-plan';
import { seededRandom } from './seeded-random';
import { renumberPatches } from './strip-run';

/** The two answers side by side. */
export interface JobAnswer {
  readonly leastFabric: JobPlan;
  readonly simplestCuts: JobPlan;
}

/** A job's search in slices; dropping it ends it. */
export interface JobSearch {
  /** Undefined before there is a first plan under both rules. */
  answer(): JobAnswer | undefined;
  isFinished(): boolean;
  /** Runs until `now()` reaches `until` or the search is finished; true if a plan got better. */
  step(now: () => number, until: number): boolean;
}

/** One fabric under one rule: its best plan so far and the search that goes on. */
interface FabricTask {
  readonly fabric: JobFabric;
  readonly rule: CuttingRule;
  readonly impossible: readonly UnplacedPatch[];
  readonly work: Generator<unknown, void>;
  best: FabricPlan | undefined;
  leastLength: number;
  hasNews: boolean;
  isFinished: boolean;
}

interface FabricPlan {
  readonly pieces: readonly PiecePlan[];
  readonly unplaced: readonly UnplacedPatch[];
}

const STEPS_A_TURN = 64;

/**
 * Plans a whole job, every fabric by itself, with simple cuts and with least fabric. Patches that fit no fabric are named and
 * left out; patches in locked parts count as placed; the rest is planned. All searches take turns, so every fabric has a
 * plan soon. `random` gives numbers in [0, 1) and is asked at the start only.
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
    const task = open.find(({ best }) => best === undefined) ?? open[next++ % Math.max(1, open.length)];
    turn = task && { task, left: STEPS_A_TURN - 1 };
    return task;
  };
  return {
    answer: () =>
      tasks.every((task) => task.best !== undefined || task.isFinished)
        ? { leastFabric: joinPlans(job, tasks, 'guillotine'), simplestCuts: joinPlans(job, tasks, '2-stage') }
        : undefined,
    isFinished: () => tasks.every((task) => task.isFinished),
    step(now, until) {
      for (const task of tasks) task.hasNews = false;
      for (let task = taskInTurn(); task !== undefined; task = taskInTurn()) {
        task.isFinished = task.work.next().done === true;
        if (now() >= until) break;
      }
      return tasks.some(({ hasNews }) => hasNews);
    },
  };
}

function fabricTask(job: CuttingJob, fabric: JobFabric, rule: CuttingRule, seed: number): FabricTask {
  const all = withoutLocked(patchTypes(job.patches, fabric), fabric);
  const spaces = fabric.pieces
    .map(pieceSpace)
    .filter(({ width, height, times }) => width > 0 && height > 0 && times > 0);
  const toBuy = fabric.toBuy === undefined ? undefined : spaceToBuy(fabric.toBuy);
  const everywhere = toBuy === undefined ? spaces : [...spaces, toBuy];
  const own = Array.from(all.keys()).filter(
    (index) => all[index]!.copies > 0 && everywhere.some((space) => fitsSpace(all[index]!, space)),
  );
  const patches = own.map((index) => all[index]!);
  const longestAlong = Math.min(job.table.rulerLength, job.table.matLength);
  const problem = {
    patches,
    spaces: spaces.filter((space) => patches.some((patch) => fitsSpace(patch, space))),
    toBuy,
    rule,
    limits: { maxStages: 0, longestAcross: Infinity, longestAlong },
    random: seededRandom(seed),
  };
  const consider = (filled: readonly FilledSpace[], left: readonly number[]): void => {
    const candidate = {
      pieces: [
        ...planFilled(
          job,
          fabric,
          all,
          filled.map(({ space, tree }) => ({ space, tree: renumberPatches(tree, own) })),
        ),
        ...lockedOnly(job, fabric, all, filled),
      ],
      unplaced: left.flatMap((copies, type) => usedUp(job.patches[own[type]!]!.id, copies)),
    };
    if (task.best !== undefined && !isBetter(planTotals(candidate), planTotals(task.best), job.objectives))
      return;
    task.best = candidate;
    task.hasNews = true;
  };
  const bound = (height: number): void => {
    task.leastLength = Math.max(task.leastLength, height);
  };
  const task: FabricTask = {
    fabric,
    rule,
    impossible: all.flatMap((type, index) => whyImpossible(job.patches[index]!, type, everywhere) ?? []),
    work: searchFabric(problem, { plan: consider, bound }),
    best: undefined,
    leastLength: 0,
    hasNews: false,
    isFinished: false,
  };
  if (patches.length === 0) consider([], []);
  return task;
}

/** Patch types less what the locked parts of the fabric's pieces already hold. */
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
function planFilled(
  job: CuttingJob,
  fabric: JobFabric,
  types: readonly PatchType[],
  filled: readonly FilledSpace[],
): PiecePlan[] {
  const packs = [...new Set(filled.map(({ space }) => space.source))].filter(isPack);
  return [
    ...filled
      .filter(({ space }) => !isPack(space.source))
      .map(({ space, tree }) => planPiece(job, fabric, types, space, tree)),
    ...packs.map((pack) => {
      const sheets = filled.filter(({ space }) => space.source === pack);
      return planPack(job, fabric, types, sheets, pack);
    }),
  ];
}

function isPack(piece: JobPiece | undefined): piece is JobPiece {
  return piece?.sheetLength !== undefined;
}

/** Plans of pieces that have locked parts and get nothing new: they stay part of the job. */
function lockedOnly(
  job: CuttingJob,
  fabric: JobFabric,
  types: readonly PatchType[],
  filled: readonly FilledSpace[],
): PiecePlan[] {
  return fabric.pieces
    .filter((piece) => piece.lockedParts.length > 0 && !filled.some(({ space }) => space.source === piece))
    .map((piece) =>
      isPack(piece)
        ? planPack(job, fabric, types, [], piece)
        : planPiece(job, fabric, types, pieceSpace(piece), restTree(0, 0)),
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

/** The plans of all fabrics as one; simple cuts may serve as the plan with least fabric where they are the better one. */
function joinPlans(job: CuttingJob, tasks: readonly FabricTask[], rule: CuttingRule): JobPlan {
  const chosen = job.fabrics.flatMap((fabric) => {
    const [first, ...others] = tasks.filter(
      (task) => task.fabric === fabric && (rule === 'guillotine' || task.rule === rule),
    );
    if (first === undefined) return [];
    return [others.reduce((best, task) => (isBetterTask(job, task, best) ? task : best), first)];
  });
  const pieces = chosen.flatMap((task) => task.best?.pieces ?? []);
  const unplaced = chosen.flatMap((task) => [...task.impossible, ...(task.best?.unplaced ?? [])]);
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
  if (task.best === undefined) return false;
  return than.best === undefined || isBetter(planTotals(task.best), planTotals(than.best), job.objectives);
}

function purchasesOf(
  { fabric, best }: FabricTask,
  tasks: readonly FabricTask[],
  rule: CuttingRule,
): Purchase[] {
  const pieces = best?.pieces ?? [];
  const bound = tasks.find((task) => task.fabric === fabric && task.rule === rule)?.leastLength ?? 0;
  return pieces
    .filter((plan) => plan.piece === undefined)
    .map(({ width, length, tree }) => {
      const leastLength = pieces.length === 1 ? bound : 0;
      return { fabric: fabric.id, width, exactLength: usedLength(tree), length, leastLength };
    });
}

/** Length up to the last cut: what lies behind it goes back on the shelf. */
function usedLength(tree: PiecePlan['tree']): number {
  if (tree.kind !== 'split' || tree.direction === 'along') return tree.height;
  const last = tree.parts.at(-1);
  return last?.kind === 'rest' && last.use !== 'margin' ? tree.height - last.height : tree.height;
}
