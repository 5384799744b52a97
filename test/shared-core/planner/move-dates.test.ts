import { describe, expect, it } from 'vitest';
import { moveDates, withDates } from '#core/planner/move-dates';
import { planDates } from '#core/planner/plan-dates';
import type { ProjectLoad, WorkshopLoad } from '#core/planner/workshop-load';
import { calendarDate } from '#core/units/calendar-date';
import { smallWorkshop } from '#test/helpers/random-workshops';

// 2027-09-13 is a Monday.
const gift = (id: string, dueOn: string | null, minutes: number): ProjectLoad => ({
  id,
  dueOn: dueOn === null ? null : calendarDate(dueOn),
  readyOn: null,
  steps: [{ kind: 'work', id, minutes }],
});
const load = (...projects: readonly ProjectLoad[]): WorkshopLoad => ({
  today: calendarDate('2027-09-13'),
  hands: { weekMinutes: [60, 60, 60, 60, 60, 60, 60], daysOff: [] },
  projects,
});
const moved = (workshop: WorkshopLoad) => moveDates(workshop, planDates(workshop));

describe('the due days to move', () => {
  it('are none if nothing is late', () => {
    expect(moved(load(gift('one', '2027-09-19', 420), gift('no day', null, 900)))).toEqual([]);
  });

  it('are a single one, moved by as few days as possible, if one is enough', () => {
    // Nine hours of work, seven until Sunday: if one gift may take its last two hours until Tuesday, the others are in time.
    const three = ['first', 'second', 'third'].map((id) => gift(id, '2027-09-19', 180));
    const answer = moved(load(...three));
    expect(answer).toEqual([{ id: 'third', dueOn: '2027-09-21' }]);
    expect(planDates(withDates(load(...three), answer)).largestLateDays).toBe(0);
  });

  it('are those of all late projects if no single one is enough', () => {
    const three = ['first', 'second', 'third'].map((id) => gift(id, '2027-09-19', 240));
    expect(moved(load(...three))).toEqual([
      { id: 'third', dueOn: '2027-09-24' },
      { id: 'second', dueOn: '2027-09-20' },
    ]);
  });

  it('are none if there are no hours at all', () => {
    const idle = {
      ...load(gift('never', '2027-09-19', 1)),
      hands: { weekMinutes: [0, 0, 0, 0, 0, 0, 0] as const, daysOff: [] },
    };
    expect(moved(idle)).toEqual([]);
  });

  it('bring every small random workshop in time', () => {
    for (let seed = 1; seed <= 60; seed += 1) {
      const workshop = smallWorkshop(seed);
      const planned = planDates(withDates(workshop, moved(workshop)));
      expect(planned.largestLateDays ?? 0, `workshop ${String(seed)}`).toBeLessThanOrEqual(0);
    }
  });
});
