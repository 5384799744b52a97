import { FARTHEST_DAY } from './date-plan';
import type { WorkCalendar } from './work-calendar';
import type { LoadStep, ProjectLoad, WorkshopLoad } from './workshop-load';

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
  /** At least 1. */
  readonly minutes: Float64Array;
  /** Days from the day a block is done until the next may begin, or until the project is finished. */
  readonly waitAfter: Int32Array;
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

interface Block {
  readonly step: number;
  readonly minutes: number;
  readonly waitAfter: number;
}

interface ProjectBlocks {
  readonly waitBefore: number;
  readonly blocks: readonly Block[];
}

export function stepChainsOf(load: WorkshopLoad, calendar: WorkCalendar): StepChains {
  const projects = load.projects.map(({ steps }) => blocksOfSteps(steps));
  const blocks = projects.flatMap((project) => project.blocks);
  const isFirst = projects.flatMap((project) => project.blocks.map((_, place) => place === 0));
  let merged = -1;
  const mergedOf = blocks.map((_, block) => {
    if (isFirst[block] === true || (blocks[block - 1]?.waitAfter ?? 0) > 0) merged += 1;
    return merged;
  });
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
    projects.map(({ waitBefore, blocks }) => ({ waitBefore, blocks: mergeBlocks(blocks) })),
  );
}

/** The first day on which anything may be done on a project. */
export function firstDayOf({ readyOn }: ProjectLoad, calendar: WorkCalendar): number {
  return readyOn === null ? 0 : clampDay(calendar.dayOf(readyOn), 0);
}

function chainsOf(load: WorkshopLoad, calendar: WorkCalendar, projects: readonly ProjectBlocks[]): Chains {
  const blocks = projects.flatMap((project) => project.blocks);
  const firstBlock = new Int32Array(projects.length + 1);
  projects.forEach(({ blocks: own }, project) => {
    firstBlock[project + 1] = firstBlock[project]! + own.length;
  });
  return {
    count: projects.length,
    firstBlock,
    minutes: Float64Array.from(blocks, ({ minutes }) => minutes),
    waitAfter: Int32Array.from(blocks, ({ waitAfter }) => waitAfter),
    projectOf: Int32Array.from(projects.flatMap(({ blocks: own }, project) => own.map(() => project))),
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

function blocksOfSteps(steps: readonly LoadStep[]): ProjectBlocks {
  const blocks: Block[] = [];
  let waitBefore = 0;
  steps.forEach((step, place) => {
    const last = blocks.at(-1);
    if (step.kind === 'work') {
      if (step.minutes > 0) blocks.push({ step: place, minutes: step.minutes, waitAfter: 0 });
    } else if (last === undefined) waitBefore += step.days;
    else blocks[blocks.length - 1] = { ...last, waitAfter: last.waitAfter + step.days };
  });
  return { waitBefore, blocks };
}

function mergeBlocks(blocks: readonly Block[]): readonly Block[] {
  const merged: Block[] = [];
  for (const block of blocks) {
    const last = merged.at(-1);
    if (last?.waitAfter === 0) {
      merged[merged.length - 1] = { ...block, minutes: last.minutes + block.minutes };
    } else merged.push(block);
  }
  return merged;
}
