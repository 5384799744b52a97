import { FARTHEST_DAY } from './schedule';
import { blocksOfSteps, isMergedWith, mergeGroups, type ProjectBlocks } from './project-blocks';
import type { WorkCalendar } from './work-calendar';
import type { ProjectLoad, WorkshopLoad } from './workshop-load';

/** The due day of projects that have none. */
export const NEVER_DUE = 1e9;

/**
 * The projects as the planner sees them: blocks of work with waits between them, all in one list.
 *
 *     project 0        project 1
 *     block 0  1       block 2       firstBlock = 0, 2, 3
 */
export interface Chains {
  readonly count: number;
  /** The first block of each project, and the number of blocks at the end. */
  readonly firstBlock: Int32Array;
  /**
   * For each block, the end of its group. The blocks of a group may be worked on side by side. The next group may begin when
   * all blocks of this one are done and their waits are over. Most groups have one block.
   */
  readonly groupEnd: Int32Array;
  /** At least 1. */
  readonly minutes: Float64Array;
  /** Days from the day its group may begin until the block itself may begin. */
  readonly waitBefore: Int32Array;
  /** Days from the day a block is done until the next group may begin, or until the project is finished. */
  readonly waitAfter: Int32Array;
  /** For each block, the least number of days its group takes, because a stage in it waits without any work. */
  readonly groupWait: Int32Array;
  readonly projectOf: Int32Array;
  /** The day a project's first block may begin, or the day the project is finished if it has no blocks. */
  readonly readyDay: Int32Array;
  readonly dueDay: Int32Array;
}

/** Chains in which every step of work is a block of its own. Steps of 0 minutes are left out. */
export interface StepChains extends Chains {
  /** The place of a block among the steps of its project. */
  readonly stepOf: Int32Array;
  /** For each block, the block of the merged chains that it is part of. */
  readonly mergedOf: Int32Array;
}

export function stepChainsOf(load: WorkshopLoad, calendar: WorkCalendar): StepChains {
  const projects = load.projects.map(({ steps }) => blocksOfSteps(steps));
  let merged = -1;
  const mergedOf = projects.flatMap(({ groups }) =>
    groups.flatMap((group, place) =>
      group.blocks.map(() => {
        if (!isMergedWith(groups[place - 1], group)) merged += 1;
        return merged;
      }),
    ),
  );
  const blocks = projects.flatMap(({ groups }) => groups.flatMap((group) => group.blocks));
  return {
    ...chainsOf(load, calendar, projects),
    stepOf: Int32Array.from(blocks, ({ step }) => step),
    mergedOf: Int32Array.from(mergedOf),
  };
}

/** Chains in which steps that follow each other without a wait are one block: there is never a reason to separate them. */
export function mergedChainsOf(load: WorkshopLoad, calendar: WorkCalendar): Chains {
  const projects = load.projects.map(({ steps }) => blocksOfSteps(steps));
  return chainsOf(
    load,
    calendar,
    projects.map(({ waitBefore, groups }) => ({ waitBefore, groups: mergeGroups(groups) })),
  );
}

/** Whether every project is a plain chain, with nothing side by side. */
export function areChainsPlain({ groupEnd, groupWait, waitBefore }: Chains): boolean {
  return groupEnd.every(
    (end, block) => end === block + 1 && groupWait[block] === 0 && waitBefore[block] === 0,
  );
}

/** The first day on which a project may be worked on. */
export function firstDayOf({ readyOn }: ProjectLoad, calendar: WorkCalendar): number {
  return readyOn === null ? 0 : clampDay(calendar.dayOf(readyOn), 0);
}

function chainsOf(load: WorkshopLoad, calendar: WorkCalendar, projects: readonly ProjectBlocks[]): Chains {
  const owned = projects.flatMap(({ groups }, project) =>
    groups.flatMap(({ blocks, wait }) =>
      blocks.map((block, place) => ({ ...block, wait, project, toEnd: blocks.length - place })),
    ),
  );
  const firstBlock = new Int32Array(projects.length + 1);
  for (const { project } of owned) firstBlock[project + 1]! += 1;
  for (let project = 0; project < projects.length; project += 1)
    firstBlock[project + 1]! += firstBlock[project]!;
  return {
    count: projects.length,
    firstBlock,
    groupEnd: Int32Array.from(owned, ({ toEnd }, block) => block + toEnd),
    minutes: Float64Array.from(owned, ({ minutes }) => minutes),
    waitBefore: Int32Array.from(owned, ({ waitBefore }) => waitBefore),
    waitAfter: Int32Array.from(owned, ({ waitAfter }) => waitAfter),
    groupWait: Int32Array.from(owned, ({ wait }) => wait),
    projectOf: Int32Array.from(owned, ({ project }) => project),
    readyDay: Int32Array.from(
      load.projects,
      (project, index) => firstDayOf(project, calendar) + (projects[index]?.waitBefore ?? 0),
    ),
    dueDay: Int32Array.from(load.projects, (project) => dueDayOf(project, calendar)),
  };
}

function dueDayOf({ dueOn }: ProjectLoad, calendar: WorkCalendar): number {
  return dueOn === null ? NEVER_DUE : clampDay(calendar.dayOf(dueOn), -FARTHEST_DAY);
}

function clampDay(day: number, least: number): number {
  return Math.min(FARTHEST_DAY, Math.max(least, day));
}
