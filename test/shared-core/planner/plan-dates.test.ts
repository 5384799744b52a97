import { describe, expect, it } from 'vitest';
import { checkSchedule } from '#core/planner/check-schedule';
import { planDates } from '#core/planner/plan-dates';
import type { Hands, LoadStep, ProjectLoad, WorkshopLoad } from '#core/planner/workshop-load';
import { calendarDate } from '#core/units/calendar-date';

/** Invented workshops, small enough to plan by hand. 2027-09-13 is a Monday. */
const MONDAY = calendarDate('2027-09-13');
const HOUR_A_DAY: Hands = { weekMinutes: [60, 60, 60, 60, 60, 60, 60], daysOff: [] };

const work = (minutes: number, id = 'work'): LoadStep => ({ kind: 'work', id, minutes });
const wait = (days: number, id = 'trip'): LoadStep => ({ kind: 'wait', id, days });

function project(id: string, dueOn: string | null, ...steps: readonly LoadStep[]): ProjectLoad {
  return { id, dueOn: dueOn === null ? null : calendarDate(dueOn), readyOn: null, steps };
}

function plan(projects: readonly ProjectLoad[], hands = HOUR_A_DAY, today = MONDAY) {
  const load: WorkshopLoad = { today, hands, projects };
  const dates = planDates(load);
  expect(checkSchedule(load, dates)).toEqual([]);
  return dates;
}

describe('the dates of one project', () => {
  it('follow its work day by day, with a trip in between', () => {
    const { projects } = plan([project('round', '2027-10-31', work(120), wait(10), work(90))]);
    expect(projects[0]).toMatchObject({
      finishOn: '2027-09-25',
      lateDays: -36,
      steps: [
        { startOn: '2027-09-13', endOn: '2027-09-14' },
        { startOn: '2027-09-14', endOn: '2027-09-24' },
        { startOn: '2027-09-24', endOn: '2027-09-25' },
      ],
    });
  });

  it('include the last day to start each step and to send the project out, counted back from the due day', () => {
    const { projects } = plan([project('round', '2027-10-31', work(120), wait(10), work(90))]);
    // 90 minutes until the evening of the 31st start on the 30th. To be back by then it leaves on the 20th, when two hours end.
    expect(projects[0]!.steps.map(({ latestStartOn }) => latestStartOn)).toEqual([
      '2027-10-19',
      '2027-10-20',
      '2027-10-30',
    ]);
    expect(projects[0]!.spareDays).toBe(36);
  });

  it('work on a stage side by side with a trip, and wait for both', () => {
    const beside: LoadStep = { ...work(180, 'binding'), isBeside: true };
    const steps = [work(60, 'top'), work(60, 'trip'), wait(10, 'trip'), beside, work(60, 'bind')];
    const [round] = plan([project('round', '2027-10-31', ...steps)]).projects;
    // Away from the 14th to the 24th; the binding is made on the 15th to the 17th.
    expect(round!.steps.map(({ startOn, endOn }) => [startOn, endOn])).toEqual([
      ['2027-09-13', '2027-09-13'],
      ['2027-09-14', '2027-09-14'],
      ['2027-09-14', '2027-09-24'],
      ['2027-09-15', '2027-09-17'],
      ['2027-09-24', '2027-09-24'],
    ]);
    // It is bound on the 31st, so it is sent on the 21st, with the top done the day before. The binding may wait until the 28th.
    expect(round!.steps.map(({ latestStartOn }) => latestStartOn)).toEqual([
      '2027-10-20',
      '2027-10-21',
      '2027-10-21',
      '2027-10-28',
      '2027-10-31',
    ]);
  });

  it('skip days off and weekdays without hours', () => {
    const hands: Hands = {
      weekMinutes: [60, 60, 0, 60, 60, 0, 0],
      daysOff: [{ from: calendarDate('2027-09-16'), to: calendarDate('2027-09-17') }],
    };
    const { sessions } = plan([project('runner', null, work(180))], hands);
    expect(sessions.map(({ on }) => on)).toEqual(['2027-09-13', '2027-09-14', '2027-09-20']);
  });

  it('count waits across the turn of the year and a leap day correctly', () => {
    const far = plan(
      [project('quilt', '2028-03-01', work(60), wait(60))],
      HOUR_A_DAY,
      calendarDate('2027-12-31'),
    );
    expect(far.projects[0]).toMatchObject({ finishOn: '2028-02-29', lateDays: -1 });
  });

  it('begin when a project that is away is back', () => {
    const away: ProjectLoad = {
      ...project('away', '2027-09-30', work(60)),
      readyOn: calendarDate('2027-09-20'),
    };
    expect(plan([away]).projects[0]).toMatchObject({ finishOn: '2027-09-20', spareDays: 17 });
  });

  it('are null if there are no hours at all', () => {
    const idle: Hands = { weekMinutes: [0, 0, 0, 0, 0, 0, 0], daysOff: [] };
    const dates = planDates({ today: MONDAY, hands: idle, projects: [project('never', null, work(1))] });
    expect(dates.projects[0]).toMatchObject({ finishOn: null, steps: [{ startOn: null, endOn: null }] });
    expect(dates.sessions).toEqual([]);
  });

  it('are today if nothing is left to do', () => {
    const { projects } = plan([project('done', '2027-09-13'), project('no minutes', null, work(0))]);
    expect(projects.map(({ finishOn, lateDays }) => [finishOn, lateDays])).toEqual([
      ['2027-09-13', 0],
      ['2027-09-13', null],
    ]);
  });
});

describe('several projects and one pair of hands', () => {
  it('go in the order of their due days if nothing is sent out, and this is proven best', () => {
    const dates = plan([
      project('later', '2027-09-20', work(180)),
      project('sooner', '2027-09-15', work(120)),
      project('no day', null, work(60)),
    ]);
    expect(dates.projects.map(({ finishOn }) => finishOn)).toEqual([
      '2027-09-17',
      '2027-09-14',
      '2027-09-18',
    ]);
    expect(dates).toMatchObject({ largestLateDays: -1, isProven: true });
  });

  it('start with the project that must be sent out, although another is due sooner', () => {
    const dates = plan([
      project('at home', '2027-09-20', work(240)),
      project('sent out', '2027-09-30', work(60), wait(14), work(60)),
    ]);
    expect(dates.projects.map(({ steps }) => steps[0]!.startOn)).toEqual(['2027-09-14', '2027-09-13']);
    expect(dates.largestLateDays).toBeLessThanOrEqual(-2);
  });

  it('spread an unavoidable lateness as evenly as possible', () => {
    // Three gifts of four hours are due on one Sunday evening, and there are seven hours until then.
    const gifts = ['first', 'second', 'third'].map((id) => project(id, '2027-09-19', work(240)));
    const dates = plan(gifts);
    expect(dates.projects.map(({ lateDays }) => lateDays)).toEqual([-3, 1, 5]);
    expect(dates).toMatchObject({ largestLateDays: 5, isProven: true });
  });

  it('have latest starts that can all be kept together', () => {
    const gifts = ['first', 'second'].map((id) => project(id, '2027-09-30', work(120)));
    const starts = plan(gifts).projects.map(({ steps }) => steps[0]!.latestStartOn);
    expect(starts.toSorted()).toEqual(['2027-09-27', '2027-09-29']);
  });
});
