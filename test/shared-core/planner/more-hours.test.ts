import { describe, expect, it } from 'vitest';
import { moreHours, withExtra } from '#core/planner/more-hours';
import type { Hands, ProjectLoad } from '#core/planner/workshop-load';
import { calendarDate } from '#core/units/calendar-date';

const today = calendarDate('2027-09-13');
const evenings: Hands = { weekMinutes: [60, 60, 60, 60, 60, 0, 0], daysOff: [] };
const gift = (id: string, minutes: number, wait = 0): ProjectLoad => ({
  id,
  dueOn: calendarDate('2027-09-19'),
  readyOn: null,
  steps: [
    { kind: 'work', id, minutes },
    { kind: 'wait', id, days: wait },
  ],
});

describe('more hours', () => {
  it('are none if everything is in time', () => {
    const load = { today, hands: evenings, projects: [gift('small', 300)] };
    expect(moreHours(load)).toEqual({ extraWeekMinutes: 0, beyondHours: [] });
  });

  it('are the hours missing until the due day, in half hours', () => {
    // 6 h 40 min of work and 5 h of evenings until Sunday: 1 h 40 min are missing, so two hours.
    const load = { today, hands: evenings, projects: [gift('one', 200), gift('two', 200)] };
    expect(moreHours(load)).toEqual({ extraWeekMinutes: 120, beyondHours: [] });
  });

  it('cannot help a project that is away past its due day, and are counted without it', () => {
    const load = { today, hands: evenings, projects: [gift('away', 60, 10), gift('here', 300)] };
    expect(moreHours(load)).toEqual({ extraWeekMinutes: 0, beyondHours: ['away'] });
  });

  it('are null if even the longest days are too short', () => {
    const load = { today, hands: evenings, projects: [gift('one', 3000), gift('two', 3000)] };
    expect(moreHours(load)).toEqual({ extraWeekMinutes: null, beyondHours: [] });
  });
});

describe('hands with extra minutes in a week', () => {
  it('work them on the days they already work', () => {
    expect(withExtra(evenings, 300).weekMinutes).toEqual([120, 120, 120, 120, 120, 0, 0]);
  });

  it('work them on all days if they have none, and never more than twelve hours a day', () => {
    const none: Hands = { weekMinutes: [0, 0, 0, 0, 0, 0, 0], daysOff: [] };
    expect(withExtra(none, 70).weekMinutes).toEqual([10, 10, 10, 10, 10, 10, 10]);
    expect(withExtra(evenings, 100_000).weekMinutes).toEqual([720, 720, 720, 720, 720, 0, 0]);
  });
});
