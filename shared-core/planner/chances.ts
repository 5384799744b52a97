import { addDays, type CalendarDate, daysBetween } from '#core/units/calendar-date';
import { seededRandom } from '#core/units/seeded-random';
import { type ProjectFutures, sampleFutures, type SpreadOf } from './futures';
import { FARTHEST_DAY, type ProjectChance } from './schedule';

import type { WorkshopLoad } from './workshop-load';

export const FUTURES = 2_000;
/** Steps worked in all futures together: with more steps there are fewer futures, so that no booking waits for them. */
const STEPS_SAMPLED = 300_000;
const FEWEST_FUTURES = 200;
const NEARLY_SURE = 0.9;
/** Any number does; the same one gives the same answer for the same workshop. */
const SEED = 20_320;

/** The chances of every project, from the same sampled futures of the whole workshop. */
export function chancesOf(
  load: WorkshopLoad,
  spreadOf: SpreadOf,
  count = futuresFor(load),
): readonly ProjectChance[] {
  const futures = sampleFutures(load, spreadOf, { count, random: seededRandom(SEED) });
  return load.projects.map(({ id, dueOn, steps }, project): ProjectChance => {
    const own = futures[project]!;
    const spreads = steps.flatMap((_, step) => spreadOf(project, step) ?? []);
    return {
      id,
      inTime: dueOn === null ? null : shareUpTo(own.finishDays, daysBetween(load.today, dueOn)),
      nearlySureBy: dateOf(load, quantileOf(own.finishDays, NEARLY_SURE)),
      doubtfulStage: doubtfulStageOf(own, steps),
      sendBy: sendByOf(own, dueOn),
      isLearned: spreads.every(({ isLearned }) => isLearned),
    };
  });
}

function futuresFor({ projects }: WorkshopLoad): number {
  const steps = projects.reduce((sum, project) => sum + project.steps.length, 1);
  return Math.min(FUTURES, Math.max(FEWEST_FUTURES, Math.floor(STEPS_SAMPLED / steps)));
}

function dateOf({ today }: WorkshopLoad, day: number): CalendarDate | null {
  return day >= FARTHEST_DAY ? null : addDays(today, day);
}

function sendByOf({ fromSending }: ProjectFutures, dueOn: CalendarDate | null) {
  if (fromSending === null || dueOn === null) return null;
  return addDays(dueOn, -quantileOf(fromSending.days, NEARLY_SURE));
}

/** A stage has one or two steps; their doubts add up. */
function doubtfulStageOf({ doubt }: ProjectFutures, steps: WorkshopLoad['projects'][number]['steps']) {
  const byStage = new Map<string, number>();
  steps.forEach(({ id }, step) => byStage.set(id, (byStage.get(id) ?? 0) + (doubt[step] ?? 0)));
  const [first] = [...byStage].toSorted(([, one], [, other]) => other - one);
  return first === undefined || first[1] === 0 ? null : first[0];
}

/** The share of ascending values up to `most`. */
function shareUpTo(values: Int32Array, most: number): number {
  let low = 0;
  let high = values.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (values[middle]! <= most) low = middle + 1;
    else high = middle;
  }
  return values.length === 0 ? 1 : low / values.length;
}

/** The least value that at least this share of the ascending values does not exceed. */
function quantileOf(values: Int32Array, share: number): number {
  return values[Math.max(0, Math.ceil(values.length * share) - 1)] ?? 0;
}
