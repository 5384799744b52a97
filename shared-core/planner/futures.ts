import { NO_SPREAD, type Spread } from '#core/domain/spread';
import { bestOrder } from './best-order';
import { mergedChainsOf, stepChainsOf, type StepChains } from './chains';
import { listSchedule } from './list-schedule';
import { sampleChains } from './sample-chains';
import { FARTHEST_DAY } from './schedule';
import { factorOf, normalNumbers } from './random-factor';
import { makeWorkCalendar, type WorkCalendar } from './work-calendar';
import type { LoadStep, WorkshopLoad } from './workshop-load';

/** What is not sure about a step. */
export interface StepSpread extends Spread {
  /** Days that a wait has lasted already, so that it is known to take longer. */
  readonly already: number;
}

/** The spread of each step, by project and place; undefined for a step that is certain. */
export type SpreadOf = (project: number, step: number) => StepSpread | undefined;

/** Sampled finishes of one project. Days are whole numbers from today. */
export interface ProjectFutures {
  /** In ascending order. */
  readonly finishDays: Int32Array;
  /** For the last wait still to begin: its place among the steps, and the days from sending to the finish, ascending. */
  readonly fromSending: { readonly step: number; readonly days: Int32Array } | null;
  /** For each step, how much its length and the finish go together: the square of their correlation. */
  readonly doubt: readonly number[];
}

/**
 * Futures of the whole workshop, worked in the order that the planner found. Every step takes its planned time times a random
 * factor of its spread, each by itself. The same `random` gives the same futures.
 */
export function sampleFutures(
  load: WorkshopLoad,
  spreadOf: SpreadOf,
  { count, random }: { readonly count: number; readonly random: () => number },
): readonly ProjectFutures[] {
  const calendar = makeWorkCalendar(load.today, load.hands);
  const order = bestOrder(mergedChainsOf(load, calendar), calendar, 'quick');
  const planned = stepChainsOf(load, calendar);
  const keys = Float64Array.from(planned.mergedOf, (block) => order.keys[block]!);
  const normal = normalNumbers(random);
  const tallies = load.projects.map(({ steps }) => emptyTally(count, steps));
  const factors = load.projects.map(({ steps }) => new Float64Array(steps.length));
  const sampled = sampleChains(load, planned, calendar);
  for (let sample = 0; sample < count; sample += 1) {
    factors.forEach((own, project) => {
      for (let step = 0; step < own.length; step += 1)
        own[step] = factorOf(spreadOf(project, step) ?? NO_SPREAD, normal());
      sampled.set(project, own, (step) => spreadOf(project, step)?.already ?? 0);
    });
    const { doneAt, finishDay } = listSchedule(sampled.chains, calendar, keys);
    tallies.forEach((tally, project) => {
      const day = Math.min(FARTHEST_DAY, finishDay[project]!);
      tally.finishDays[sample] = day;
      addToSums(tally, factors[project]!, day);
      if (tally.sending === null) return;
      const begun = sendingDay(tally.sending, sampled.chains, calendar, { doneAt, project });
      tally.fromSending[sample] = day - begun;
    });
  }
  return tallies.map((tally) => futuresOf(tally, count));
}

/** What is added up for one project while the futures are sampled. */
interface Tally {
  readonly finishDays: Int32Array;
  /** The place of the last wait that work comes before. */
  readonly sending: number | null;
  readonly fromSending: Int32Array;
  /** Of each step’s logarithm of its factor, and of that with the finish; the last entry is the finish alone. */
  readonly sums: Float64Array;
  readonly squares: Float64Array;
  readonly products: Float64Array;
}

function emptyTally(count: number, steps: readonly LoadStep[]): Tally {
  const sending = steps.findLastIndex(({ kind }, place) => kind === 'wait' && place > 0);
  return {
    finishDays: new Int32Array(count),
    sending: sending < 0 ? null : sending,
    fromSending: new Int32Array(count),
    sums: new Float64Array(steps.length + 1),
    squares: new Float64Array(steps.length + 1),
    products: new Float64Array(steps.length),
  };
}

function addToSums({ sums, squares, products }: Tally, factors: Float64Array, day: number): void {
  factors.forEach((factor, step) => {
    const change = Math.log(factor);
    sums[step]! += change;
    squares[step]! += change * change;
    products[step]! += change * day;
  });
  sums[factors.length]! += day;
  squares[factors.length]! += day * day;
}

/** The day on which the work before a wait is done. */
function sendingDay(
  sending: number,
  { firstBlock, stepOf, readyDay }: StepChains,
  calendar: WorkCalendar,
  { doneAt, project }: { readonly doneAt: Float64Array; readonly project: number },
): number {
  let day = readyDay[project]!;
  for (let block = firstBlock[project]!; block < firstBlock[project + 1]!; block += 1)
    if (stepOf[block]! < sending) day = Math.max(day, calendar.dayWhenDone(doneAt[block]!));
  return day;
}

function futuresOf({ finishDays, sending, fromSending, sums, squares, products }: Tally, count: number) {
  const finish = products.length;
  const variance = (at: number) => squares[at]! / count - (sums[at]! / count) ** 2;
  return {
    finishDays: finishDays.toSorted(),
    fromSending: sending === null ? null : { step: sending, days: fromSending.toSorted() },
    doubt: Array.from(products, (product, step) => {
      const together = product / count - (sums[step]! / count) * (sums[finish]! / count);
      const apart = variance(step) * variance(finish);
      return apart <= 1e-12 ? 0 : Math.min(1, together ** 2 / apart);
    }),
  };
}
