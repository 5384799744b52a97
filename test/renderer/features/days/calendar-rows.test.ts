import { describe, expect, it } from 'vitest';
import type { PlannedDates } from '#core/contract/dates';
import type { ProjectGlance } from '#core/contract/projects';
import { type BenchTime, STARTING_BENCH_TIME } from '#core/domain/bench-time';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { loadOfProjects } from '#core/planner/load-of-projects';
import { planDates } from '#core/planner/plan-dates';
import { weekLoads } from '#core/planner/week-loads';
import { calendarDate } from '#core/units/calendar-date';
import { effectsOf, rowsOf, scaleOf, withDue, withPromise } from '#renderer/features/days/calendar-rows';
import { glance, trip } from '#test/helpers/glances';

// 2027-09-15 is a Wednesday; an hour a day.
const on = calendarDate('2027-09-15');
const NO_MOVES = { dues: [], promises: [] };
const HOURS: BenchTime = { ...STARTING_BENCH_TIME, weekMinutes: [60, 60, 60, 60, 60, 60, 60] };

function timed(project: ProjectGlance, minutes: number): ProjectGlance {
  return { ...project, stages: project.stages.map((stage) => ({ ...stage, estimateMinutes: minutes })) };
}

function planned(...glances: readonly ProjectGlance[]): PlannedDates {
  const load = loadOfProjects(glances, { settings: STARTING_SETTINGS, benchTime: HOURS }, on);
  const plan = planDates(load);
  return { plan, weeks: weekLoads(load, plan), away: [] };
}

describe('the rows of the calendar', () => {
  it('have a bar for each stage at home and each trip, and leave out finished projects', () => {
    const home = timed(
      glance({ name: 'At home', stages: ['done', 'in-hand', 'planned'], dueOn: '2027-10-01' }),
      120,
    );
    const away = timed(
      glance({ name: 'Away', stages: ['out', 'planned'], trip: trip({ promisedOn: '2027-09-20' }) }),
      60,
    );
    const glances = [away, home, timed(glance({ stages: ['done'] }), 60)];
    const rows = rowsOf(glances, planned(...glances), NO_MOVES);
    expect(rows.map(({ name }) => name)).toEqual(['At home', 'Away']);
    expect(rows.map(({ bars }) => bars.map(({ kind, state, from, to }) => [kind, state, from, to]))).toEqual([
      [
        ['work', 'in-hand', '2027-09-15', '2027-09-16'],
        ['work', 'planned', '2027-09-17', '2027-09-18'],
      ],
      [
        ['away', 'out', '2027-09-15', '2027-09-19'],
        ['work', 'planned', '2027-09-20', '2027-09-20'],
      ],
    ]);
    expect(rows[1]!.back).toMatchObject({ on: '2027-09-20', savedOn: '2027-09-20', withWhom: 'Tansy Quill' });
  });

  it('keep their order while a day is moved, and show the moved day', () => {
    const [one, two] = [
      timed(glance({ name: 'One', stages: ['planned'], dueOn: '2027-09-20' }), 60),
      timed(glance({ name: 'Two', stages: ['planned'], dueOn: '2027-09-25' }), 60),
    ];
    const moves = withDue(NO_MOVES, one.project.id, {
      on: calendarDate('2027-10-20'),
      savedOn: calendarDate('2027-09-20'),
    });
    const rows = rowsOf([two, one], planned(two, one), moves);
    expect(rows.map(({ name, due }) => [name, due])).toEqual([
      ['One', { on: '2027-10-20', savedOn: '2027-09-20' }],
      ['Two', { on: '2027-09-25', savedOn: '2027-09-25' }],
    ]);
  });
});

describe('the scale', () => {
  it('starts on the Monday of this week and ends two weeks after the last day', () => {
    const project = timed(glance({ stages: ['planned'], dueOn: '2027-09-29' }), 60);
    const dates = planned(project);
    expect(scaleOf(rowsOf([project], dates, NO_MOVES), dates.weeks, on)).toEqual({
      from: '2027-09-13',
      days: 35,
    });
  });

  it('starts at the oldest saved day of the last weeks, wherever that day is moved', () => {
    const project = timed(glance({ stages: ['planned'], dueOn: '2027-09-01' }), 60);
    const dates = planned(project);
    const moves = withDue(NO_MOVES, project.project.id, {
      on: calendarDate('2027-09-20'),
      savedOn: calendarDate('2027-09-01'),
    });
    expect(scaleOf(rowsOf([project], dates, moves), dates.weeks, on).from).toBe('2027-08-30');
  });
});

describe('moves', () => {
  it('to the saved day cancel out', () => {
    const project = glance({
      stages: ['out'],
      dueOn: '2027-09-20',
      trip: trip({ promisedOn: '2027-09-18' }),
    });
    const [savedOn, later] = [calendarDate('2027-09-20'), calendarDate('2027-09-30')];
    const moved = withDue(NO_MOVES, project.project.id, { on: later, savedOn });
    expect(moved.dues).toEqual([{ projectId: project.project.id, dueOn: later }]);
    expect(withDue(moved, project.project.id, { on: savedOn, savedOn })).toEqual(NO_MOVES);
    const sent = withPromise(NO_MOVES, project.trips[0]!.id, { on: later, savedOn });
    expect(sent.promises).toEqual([{ tripId: project.trips[0]!.id, promisedOn: later }]);
    expect(withPromise(sent, project.trips[0]!.id, { on: savedOn, savedOn })).toEqual(NO_MOVES);
  });
});

it('the effects of moves list every project that changes, first those that become late or on time', () => {
  const projects = (dueOn: string) => [
    timed(glance({ name: 'One', stages: ['planned'], dueOn: '2027-09-16' }), 120),
    timed(glance({ name: 'Two', stages: ['planned'], dueOn }), 120),
    timed(glance({ name: 'Three', stages: ['planned'] }), 60),
  ];
  const saved = projects('2027-09-16');
  const trial = saved.map((project, index) =>
    index === 1
      ? { ...project, project: { ...project.project, dueOn: calendarDate('2027-09-18') } }
      : project,
  );
  const effects = effectsOf(planned(...saved), planned(...trial));
  expect(effects).toEqual([
    {
      id: saved[1]!.project.id,
      finishedBefore: '2027-09-18',
      finishedAfter: '2027-09-18',
      lateBefore: 2,
      lateAfter: 0,
    },
  ]);
});
