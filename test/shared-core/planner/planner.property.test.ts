import '#test/helpers/fixed-seed';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkDatePlan } from '#core/planner/check-date-plan';
import { moreHours, withExtra } from '#core/planner/more-hours';
import { planDates } from '#core/planner/plan-dates';
import type { Hands, LoadStep, ProjectLoad, WorkshopLoad } from '#core/planner/workshop-load';
import { addDays, daysBetween } from '#core/units/calendar-date';
import { planDate } from '#test/helpers/arbitraries';

const step: fc.Arbitrary<LoadStep> = fc.oneof(
  fc.record({ kind: fc.constant('work' as const), id: fc.constant('s'), minutes: fc.nat(300) }),
  fc.record({ kind: fc.constant('wait' as const), id: fc.constant('s'), days: fc.nat(20) }),
);

const evening = fc.constantFrom(0, 30, 60, 95, 240);

const load: fc.Arbitrary<WorkshopLoad> = planDate.chain((today) =>
  fc.record({
    today: fc.constant(today),
    hands: fc.record({
      weekMinutes: fc.tuple(evening, evening, evening, evening, evening, evening, fc.constantFrom(15, 120)),
      daysOff: fc.array(
        fc.tuple(fc.nat(60), fc.nat(10)).map(([start, days]) => ({
          from: addDays(today, start - 5),
          to: addDays(today, start - 5 + days),
        })),
        { maxLength: 3 },
      ),
    }) satisfies fc.Arbitrary<Hands>,
    projects: fc
      .array(
        fc.record({
          dueOn: fc.option(fc.nat(120).map((days) => addDays(today, days - 20))),
          readyOn: fc.option(fc.nat(30).map((days) => addDays(today, days - 5))),
          steps: fc.array(step, { maxLength: 6 }),
        }),
        { maxLength: 9 },
      )
      .map((projects) =>
        projects.map((one, index): ProjectLoad => ({ ...one, id: `project ${String(index)}` })),
      ),
  }),
);

describe('every plan', () => {
  it('keeps order, capacity, waits and days off, and says the days that it means', () => {
    fc.assert(
      fc.property(load, (workshop) => {
        expect(checkDatePlan(workshop, planDates(workshop))).toEqual([]);
      }),
    );
  });

  it('moves with its days by whole weeks: nothing hangs on the year, the month or the season', () => {
    fc.assert(
      fc.property(load, fc.integer({ min: -600, max: 600 }), (workshop, weeks) => {
        const moved = planDates(moveBy(workshop, 7 * weeks));
        const still = planDates(workshop);
        expect(moved.projects.map(({ lateDays, spareDays }) => [lateDays, spareDays])).toEqual(
          still.projects.map(({ lateDays, spareDays }) => [lateDays, spareDays]),
        );
        expect(moved.sessions.map(({ on }) => on)).toEqual(
          still.sessions.map(({ on }) => addDays(on, 7 * weeks)),
        );
      }),
      { numRuns: 40 },
    );
  });

  it('leaves every project on its day if due days are moved to the days of the plan', () => {
    fc.assert(
      fc.property(load, (workshop) => {
        const { projects } = planDates(workshop);
        const met = workshop.projects.map((project, index) => ({
          ...project,
          dueOn: (projects[index]!.lateDays ?? 0) > 0 ? projects[index]!.finishOn : project.dueOn,
        }));
        expect(planDates({ ...workshop, projects: met }).largestLateDays ?? 0).toBeLessThanOrEqual(0);
      }),
    );
  });

  it('is no later with more hours when hours are what is missing', () => {
    fc.assert(
      fc.property(load, (workshop) => {
        const { extraWeekMinutes, beyondHours } = moreHours(workshop);
        if (extraWeekMinutes === null || beyondHours.length > 0) return;
        const hands = withExtra(workshop.hands, extraWeekMinutes);
        expect(planDates({ ...workshop, hands }).largestLateDays ?? 0).toBeLessThanOrEqual(0);
      }),
      { numRuns: 40 },
    );
  });

  it('works each step alone on its latest days in time as well', () => {
    fc.assert(
      fc.property(load, (workshop) => {
        planDates(workshop).projects.forEach(({ steps, finishOn, lateDays }, index) => {
          if (lateDays === null || finishOn === null) return;
          const lastDay = lateDays > 0 ? finishOn : workshop.projects[index]!.dueOn!;
          const starts = [...steps.map(({ latestStartOn }) => latestStartOn!), lastDay];
          starts.slice(1).forEach((after, place) => {
            const own = workshop.projects[index]!.steps[place]!;
            expect(daysBetween(starts[place]!, after)).toBeGreaterThanOrEqual(
              own.kind === 'wait' ? own.days : 0,
            );
          });
        });
      }),
    );
  });
});

function moveBy(workshop: WorkshopLoad, days: number): WorkshopLoad {
  const { today, hands, projects } = workshop;
  return {
    today: addDays(today, days),
    hands: {
      ...hands,
      daysOff: hands.daysOff.map(({ from, to }) => ({ from: addDays(from, days), to: addDays(to, days) })),
    },
    projects: projects.map((project) => ({
      ...project,
      dueOn: project.dueOn === null ? null : addDays(project.dueOn, days),
      readyOn: project.readyOn === null ? null : addDays(project.readyOn, days),
    })),
  };
}
