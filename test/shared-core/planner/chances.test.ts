import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeWorkCalendar } from '#core/planner/work-calendar';
import { chancesOf } from '#core/planner/chances';
import { stepChainsOf } from '#core/planner/chains';
import { sampleFutures, type StepSpread } from '#core/planner/futures';
import { planDates } from '#core/planner/plan-dates';
import { factorOf } from '#core/planner/random-factor';
import { sampleChains } from '#core/planner/sample-chains';
import type { LoadStep, ProjectLoad, WorkshopLoad } from '#core/planner/workshop-load';
import { addDays, calendarDate, daysBetween } from '#core/units/calendar-date';
import { seededRandom } from '#core/units/seeded-random';
import { largeWorkshop, smallWorkshop } from '#test/helpers/random-workshops';

const TODAY = calendarDate('2027-09-13');
const wait = (id: string, days: number): LoadStep => ({ kind: 'wait', id, days });
const work = (id: string, minutes: number): LoadStep => ({ kind: 'work', id, minutes });

/** An hour a day, every day. */
function workshop(...projects: readonly Omit<ProjectLoad, 'id' | 'readyOn'>[]): WorkshopLoad {
  return {
    today: TODAY,
    hands: { weekMinutes: [60, 60, 60, 60, 60, 60, 60], daysOff: [] },
    projects: projects.map((project, index) => ({
      id: `project ${String(index)}`,
      readyOn: null,
      ...project,
    })),
  };
}

const SPREAD: StepSpread = { low: 0.8, high: 1.4, isLearned: true, already: 0 };
const always = () => SPREAD;

/** The standard normal's share below z, by adding up its density: shares nothing with the program. */
function normalShare(z: number): number {
  const steps = 1_000;
  let sum = 0;
  for (let step = 0; step < steps; step += 1) {
    const x = -8 + ((z + 8) * (step + 0.5)) / steps;
    sum += Math.exp((-x * x) / 2);
  }
  return (sum * (z + 8)) / steps / Math.sqrt(2 * Math.PI);
}

/** The share of factors up to `factor`. */
function factorShare({ low, high }: StepSpread, factor: number): number {
  const z = (0.6745 * Math.log(factor)) / Math.log(factor < 1 ? 1 / low : high);
  if (z < -3) return 0;
  return z >= 3 ? 1 : normalShare(z);
}

/** The chance of every number of days of a wait that is planned with `days`. */
function waitChances(days: number): ReadonlyMap<number, number> {
  const chances = new Map<number, number>();
  for (let day = 0; day <= 6 * days; day += 1) {
    const chance =
      factorShare(SPREAD, (day + 0.5) / days) - (day === 0 ? 0 : factorShare(SPREAD, (day - 0.5) / days));
    if (chance > 0) chances.set(day, chance);
  }
  return chances;
}

describe('a random factor', () => {
  it('is the planned time in the middle and the quartiles at theirs', () => {
    expect(factorOf(SPREAD, 0)).toBe(1);
    expect(factorOf(SPREAD, -0.67449)).toBeCloseTo(0.8, 5);
    expect(factorOf(SPREAD, 0.67449)).toBeCloseTo(1.4, 5);
  });

  it('grows with the number it is made from, and is never zero or less', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -9, max: 9, noNaN: true }),
        fc.double({ min: 0, max: 9, noNaN: true }),
        (z, more) => {
          expect(factorOf(SPREAD, z)).toBeGreaterThan(0);
          expect(factorOf(SPREAD, z + more)).toBeGreaterThanOrEqual(factorOf(SPREAD, z));
        },
      ),
    );
  });
});

describe('the chance to be in time', () => {
  it.each([18, 20, 22, 26])('after one trip planned with 20 days and due in %d is the exact one', (due) => {
    const load = workshop({ dueOn: addDays(TODAY, due), steps: [wait('trip', 20)] });
    const exact = factorShare(SPREAD, (due + 0.5) / 20);
    const [chance] = chancesOf(load, always);
    // 2,000 futures: three standard errors of a share.
    expect(Math.abs(chance!.inTime! - exact)).toBeLessThan(0.034);
  });

  it.each([26, 30, 34, 40])('after two trips of 10 and 20 days and due in %d is their convolution', (due) => {
    const load = workshop({ dueOn: addDays(TODAY, due), steps: [wait('one', 10), wait('two', 20)] });
    let exact = 0;
    for (const [one, first] of waitChances(10))
      for (const [two, second] of waitChances(20)) if (one + two <= due) exact += first * second;
    const [chance] = chancesOf(load, always);
    expect(Math.abs(chance!.inTime! - exact)).toBeLessThan(0.034);
  });

  it('of work by the hour is the share of factors that fit into the days', () => {
    // 600 minutes at 60 a day; due on the evening of the twelfth day: up to 720 minutes, a factor of 1.2.
    const load = workshop({ dueOn: addDays(TODAY, 11), steps: [work('sew', 600)] });
    const [chance] = chancesOf(load, always);
    expect(Math.abs(chance!.inTime! - factorShare(SPREAD, 1.2))).toBeLessThan(0.034);
  });

  it('never falls when it is due later, and its nearly sure day is in time in 9 of 10', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 0, max: 20 }), (seed, more) => {
        const load = smallWorkshop(seed);
        const later = {
          ...load,
          projects: load.projects.map((project) => ({
            ...project,
            dueOn: project.dueOn === null ? null : addDays(project.dueOn, more),
          })),
        };
        const random = () => seededRandom(7);
        const [futures, same] = [load, later].map((one) =>
          sampleFutures(one, always, { count: 60, random: random() }),
        );
        // With all due days moved alike, the order stays.
        load.projects.forEach(({ dueOn }, project) => {
          if (dueOn === null) return;
          const share = (of: typeof futures, due: number) =>
            of![project]!.finishDays.filter((day) => day <= due).length;
          const due = daysBetween(load.today, dueOn);
          expect(share(futures, due + more)).toBeGreaterThanOrEqual(share(futures, due));
          expect(same![project]!.finishDays).toHaveLength(60);
        });
        for (const chance of chancesOf(load, always, 200)) {
          const { dueOn } = load.projects.find(({ id }) => id === chance.id)!;
          if (dueOn === null || chance.nearlySureBy === null) continue;
          if (chance.nearlySureBy <= dueOn) expect(chance.inTime).toBeGreaterThanOrEqual(0.9);
          else expect(chance.inTime).toBeLessThan(0.9);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('is the plan itself where nothing is unsure', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), (seed) => {
        const load = smallWorkshop(seed);
        const plan = planDates(load);
        for (const { id, inTime, doubtfulStage, isLearned } of chancesOf(load, () => undefined, 3)) {
          const { lateDays } = plan.projects.find((one) => one.id === id)!;
          expect([doubtfulStage, isLearned]).toEqual([null, true]);
          if (plan.isProven && lateDays !== null && (plan.largestLateDays ?? 0) <= 0) expect(inTime).toBe(1);
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('sampled chains', () => {
  it('are those of a load with the sampled minutes and days', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 99 }), (seed, other) => {
        const load = smallWorkshop(seed);
        const calendar = makeWorkCalendar(load.today, load.hands);
        const random = seededRandom(other);
        const factors = load.projects.map(({ steps }) => Float64Array.from(steps, () => 0.4 + 2 * random()));
        const sampled = sampleChains(load, stepChainsOf(load, calendar), calendar);
        factors.forEach((own, project) => sampled.set(project, own, () => 0));
        const rebuilt = stepChainsOf(
          {
            ...load,
            projects: load.projects.map((project, at) => ({
              ...project,
              steps: project.steps.map((step, place): LoadStep =>
                step.kind === 'wait'
                  ? { ...step, days: Math.round(step.days * factors[at]![place]!) }
                  : {
                      ...step,
                      minutes: step.minutes && Math.max(1, Math.round(step.minutes * factors[at]![place]!)),
                    },
              ),
            })),
          },
          calendar,
        );
        const { mergedOf: _, ...chains } = sampled.chains;
        const { mergedOf: __, ...expected } = rebuilt;
        expect(chains).toEqual(expected);
      }),
      { numRuns: 60 },
    );
  });
});

describe('the doubt', () => {
  it('comes from the stage that varies most, and a stage prepared and sent out counts once', () => {
    const load = workshop({
      dueOn: addDays(TODAY, 60),
      steps: [work('piecing', 300), work('quilting', 60), wait('quilting', 30), work('binding', 120)],
    });
    const [chance] = chancesOf(load, always);
    expect(chance!.doubtfulStage).toBe('quilting');
  });

  it('leaves the last day to send it out: as long before it is due as 9 of 10 trips and the work after them take', () => {
    const load = workshop({ dueOn: addDays(TODAY, 60), steps: [work('pack', 60), wait('quilting', 20)] });
    let [days, chance] = [0, 0];
    for (const [length, own] of [...waitChances(20)].toSorted(([one], [other]) => one - other)) {
      if (chance >= 0.9) break;
      [days, chance] = [length, chance + own];
    }
    const { sendBy } = chancesOf(load, always)[0]!;
    expect(Math.abs(daysBetween(sendBy!, addDays(TODAY, 60)) - days)).toBeLessThanOrEqual(1);
  });

  it('of a trip that has lasted longer than planned is never over today', () => {
    const load = workshop({ dueOn: TODAY, steps: [wait('quilting', 0)] });
    const overdue = () => ({ ...SPREAD, already: 25 });
    const [chance] = chancesOf(load, overdue);
    expect(chance).toMatchObject({ inTime: 0 });
    expect(chance!.nearlySureBy! > TODAY).toBe(true);
  });

  it('of many projects comes from fewer futures, so that nobody waits for it', () => {
    const load = largeWorkshop(400, 1);
    for (const { inTime } of chancesOf(load, always)) {
      const cases = (inTime ?? 0) * 200;
      expect(cases).toBeCloseTo(Math.round(cases), 9);
    }
  });

  it('is the same for the same workshop', () => {
    const load = smallWorkshop(11);
    expect(chancesOf(load, always, 300)).toEqual(chancesOf(load, always, 300));
  });

  it('is not called learned while one spread is only usual', () => {
    const load = workshop({ dueOn: null, steps: [wait('trip', 9), work('sew', 60)] });
    const mixed = (_: number, step: number) => ({ ...SPREAD, isLearned: step === 0 });
    expect(chancesOf(load, mixed, 20)[0]).toMatchObject({ isLearned: false, inTime: null, sendBy: null });
    expect(chancesOf(load, always, 20)[0]).toMatchObject({ isLearned: true });
  });
});
