import { expect, it } from 'vitest';
import { planDates } from '#core/planner/plan-dates';
import { weekLoads } from '#core/planner/week-loads';
import type { Hands, LoadStep, ProjectLoad } from '#core/planner/workshop-load';
import { calendarDate } from '#core/units/calendar-date';

// Invented; 2027-09-15 is a Wednesday, so five days are left of its week.
const today = calendarDate('2027-09-15');
const HOUR_A_DAY: Hands = { weekMinutes: [60, 60, 60, 60, 60, 60, 60], daysOff: [] };
const project = (id: string, dueOn: string | null, ...steps: readonly LoadStep[]): ProjectLoad => ({
  id,
  dueOn: dueOn === null ? null : calendarDate(dueOn),
  readyOn: null,
  steps,
});
const work = (minutes: number): LoadStep => ({ kind: 'work', id: 'work', minutes });
const weeksOf = (hands: Hands, ...projects: readonly ProjectLoad[]) => {
  const load = { today, hands, projects };
  return weekLoads(load, planDates(load));
};

it('counts the first week from today, and ends with the last week with work or a due day', () => {
  expect(weeksOf(HOUR_A_DAY, project('one', '2027-09-29', work(400)))).toEqual([
    { from: '2027-09-13', roomMinutes: 300, plannedMinutes: 300, shortMinutes: 0 },
    { from: '2027-09-20', roomMinutes: 420, plannedMinutes: 100, shortMinutes: 0 },
    { from: '2027-09-27', roomMinutes: 420, plannedMinutes: 0, shortMinutes: 0 },
  ]);
});

it('shows the minutes missing by the end of a week, until the hours of later weeks make up for them', () => {
  const [first, second, third] = weeksOf(
    HOUR_A_DAY,
    project('one', '2027-09-19', work(300)),
    project('two', '2027-09-19', work(90)),
    project('three', '2027-10-03', work(300)),
  );
  expect([first, second, third].map((week) => week?.shortMinutes)).toEqual([90, 0, 0]);
});

it('counts work that must be done before a trip in the week before the trip', () => {
  const [first] = weeksOf(
    HOUR_A_DAY,
    project('sent', '2027-10-03', work(360), { kind: 'wait', id: 'trip', days: 14 }, work(60)),
  );
  // It is back on the last day with an hour of work left, so it leaves on Sunday the 19th, and until then there are five hours.
  expect(first?.shortMinutes).toBe(60);
});

it('has no minutes missing for projects without a due day, and skips days off', () => {
  const hands: Hands = { ...HOUR_A_DAY, daysOff: [{ from: today, to: calendarDate('2027-09-19') }] };
  expect(weeksOf(hands, project('some time', null, work(60)))).toEqual([
    { from: '2027-09-13', roomMinutes: 0, plannedMinutes: 0, shortMinutes: 0 },
    { from: '2027-09-20', roomMinutes: 420, plannedMinutes: 60, shortMinutes: 0 },
  ]);
});
