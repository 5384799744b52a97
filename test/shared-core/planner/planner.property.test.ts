import '#test/helpers/fixed-seed';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkSchedule } from '#core/planner/check-schedule';
import { moreHours, withExtra } from '#core/planner/more-hours';
import type { StepDates } from '#core/planner/schedule';
import { planDates } from '#core/planner/plan-dates';
import { groupsOf } from '#core/planner/side-by-side';
import type { Hands, LoadStep, ProjectLoad, WorkshopLoad } from '#core/planner/workshop-load';
import { addDays, type CalendarDate, daysBetween, weekday } from '#core/units/calendar-date';
import { planDate } from '#test/helpers/arbitraries';

const step: fc.Arbitrary<LoadStep> = fc.oneof(
  fc.record({ kind: fc.constant('work' as const), id: fc.constant('s'), minutes: fc.nat(300) }),
  fc.record({ kind: fc.constant('wait' as const), id: fc.constant('s'), days: fc.nat(20) }),
);

/** Stages that the maker works on, that are sent out, or both, some of them side by side with the stage before. */
const stages: fc.Arbitrary<readonly LoadStep[]> = fc
  .array(fc.record({ minutes: fc.nat(300), days: fc.nat(20), shape: fc.nat(2), isBeside: fc.boolean() }), {
    maxLength: 5,
  })
  .map((members) =>
    members.flatMap(({ minutes, days, shape, isBeside }, place): readonly LoadStep[] => {
      const id = `stage ${String(place)}`;
      const flag = isBeside && place > 0 ? { isBeside } : {};
      const work: LoadStep = { kind: 'work', id, minutes };
      const wait: LoadStep = { kind: 'wait', id, days };
      if (shape === 0) return [{ ...work, ...flag }];
      return shape === 1 ? [{ ...wait, ...flag }] : [{ ...work, ...flag }, wait];
    }),
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
          steps: fc.oneof(fc.array(step, { maxLength: 6 }), stages),
        }),
        { maxLength: 9 },
      )
      .map((projects) =>
        projects.map((one, index): ProjectLoad => ({ ...one, id: `project ${String(index)}` })),
      ),
  }),
);

describe('every plan', () => {
  it('keeps the order of steps, hours, waits and days off, and its dates match its work', () => {
    fc.assert(
      fc.property(load, (workshop) => {
        expect(checkSchedule(workshop, planDates(workshop))).toEqual([]);
      }),
    );
  });

  it('moves by whole weeks when all its dates do, so nothing depends on the year, the month or the season', () => {
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

  it('is in time once the late due days are moved to the days of the plan', () => {
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

  it('is in time with the extra hours it asks for', () => {
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

  it('has latest days that leave room for every wait', () => {
    fc.assert(
      fc.property(load, (workshop) => {
        planDates(workshop).projects.forEach(({ steps, finishOn, lateDays }, index) => {
          if (lateDays === null || finishOn === null) return;
          const project = workshop.projects[index]!;
          const ends = latestEnds(project, steps, lateDays > 0 ? finishOn : project.dueOn!);
          project.steps.forEach((own, place) => {
            expect(daysBetween(steps[place]!.latestStartOn!, ends[place]!)).toBeGreaterThanOrEqual(
              own.kind === 'wait' ? own.days : 0,
            );
          });
        });
      }),
    );
  });

  it('has latest starts that can all be kept together: between any two days there are enough hours', () => {
    fc.assert(
      fc.property(load, (workshop) => {
        const windows = latestWindows(workshop);
        for (const { from } of windows) {
          for (const { to } of windows) {
            const within = windows.filter((one) => one.from >= from && one.to <= to);
            const needed = within.reduce((sum, { minutes }) => sum + minutes, 0);
            expect(needed).toBeLessThanOrEqual(roomBetween(workshop, from, to));
          }
        }
      }),
      { numRuns: 60 },
    );
  });
});

/**
 * For each step, the latest day on which the next step starts: the next step of its own stage, otherwise the first of the
 * next stages.
 */
function latestEnds(
  { steps }: ProjectLoad,
  dates: readonly Pick<StepDates, 'latestStartOn'>[],
  lastDay: CalendarDate,
): readonly CalendarDate[] {
  const ends = steps.map(() => lastDay);
  let after = lastDay;
  for (const group of groupsOf(steps).toReversed()) {
    for (const member of group) {
      member.forEach((place, index) => {
        const next = member[index + 1];
        ends[place] = next === undefined ? after : dates[next]!.latestStartOn!;
      });
    }
    after = group.map(([first]) => dates[first!]!.latestStartOn!).toSorted()[0]!;
  }
  return ends;
}

/** For each step of work with a due day, the days from its latest start to the day on which the next step must start. */
function latestWindows(workshop: WorkshopLoad) {
  return planDates(workshop).projects.flatMap(({ steps, finishOn, lateDays }, index) => {
    if (lateDays === null || finishOn === null) return [];
    const project = workshop.projects[index]!;
    const ends = latestEnds(project, steps, lateDays > 0 ? finishOn : project.dueOn!);
    return project.steps.flatMap((one, place) =>
      one.kind === 'work' && one.minutes > 0
        ? [{ from: steps[place]!.latestStartOn!, to: ends[place]!, minutes: one.minutes }]
        : [],
    );
  });
}

/** Minutes of the hands from one day to another, both included, counted day by day. */
function roomBetween({ hands }: WorkshopLoad, from: CalendarDate, to: CalendarDate): number {
  const days = Array.from({ length: Math.max(0, daysBetween(from, to) + 1) }, (_, day) => addDays(from, day));
  const isOff = (day: CalendarDate) => hands.daysOff.some((off) => off.from <= day && day <= off.to);
  return days.reduce((sum, day) => sum + (isOff(day) ? 0 : hands.weekMinutes[weekday(day) - 1]!), 0);
}

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
