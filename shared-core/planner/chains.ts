import { FARTHEST_DAY } from './schedule';
import { blocksOfSteps, isMergedWith, mergeGroups, type ProjectBlocks } from './project-blocks';
import type { WorkCalendar } from './work-calendar';
import type { ProjectLoad, WorkshopLoad } from './workshop-load';

/** The due day of projects that have none. */
export const NEVER_DUE = 1e9;

/**
 * The projects as the planner works on them: blocks of work with waits between them, all in one row.
 *
 *     project 0        project 1
 *     block 0  1       block 2       firstBlock = 0, 2, 3
 */
export interface Chains {
  readonly count: number;
  /** Of each project its first block; one more at the end. */
  readonly firstBlock: Int32Array;
  /**
   * Of each block the end of its group: blocks that may be worked on side by side. The next group may begin when all blocks of
   * one are done and have waited. Mostly a group is one block.
   */
  readonly groupEnd: Int32Array;
  /** At least 1. */
  readonly minutes: Float64Array;
  /** Days from the day its group may begin until the block itself may. */
  readonly waitBefore: Int32Array;
  /** Days from the day a block is done until the next group may begin, or until the project is finished. */
  readonly waitAfter: Int32Array;
  /** Of each block the days its group takes at least: something in it waits without any work. */
  readonly groupWait: Int32Array;
  readonly projectOf: Int32Array;
  /** The day a project's first block may begin; the day it is finished if it has none. */
  readonly readyDay: Int32Array;
  readonly dueDay: Int32Array;
}

/** Every step of work a block of its own; `stepOf` gives its place among the steps of its project. Steps of no minutes are none. */
export interface StepChains extends Chains {
  readonly stepOf: Int32Array;
  /** Of each step's block the block it is part of where steps that follow each other without a wait are one. */
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

/** Steps that follow each other without a wait as one block: there is never a reason to part them. */
export function mergedChainsOf(load: WorkshopLoad, calendar: WorkCalendar): Chains {
  const projects = load.projects.map(({ steps }) => blocksOfSteps(steps));
  return chainsOf(
    load,
    calendar,
    projects.map(({ waitBefore, groups }) => ({ waitBefore, groups: mergeGroups(groups) })),
  );
}

/** Whether every project is a plain chain, nothing in it side by side. */
export function areChainsPlain({ groupEnd, groupWait, waitBefore }: Chains): boolean {
  return groupEnd.every(
    (end, block) => end === block + 1 && groupWait[block] === 0 && waitBefore[block] === 0,
  );
}

/** The first day on which anything may be done on a project. */
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
