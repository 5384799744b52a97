import { describe, expect, it } from 'vitest';
import { STARTING_BENCH_TIME } from '#core/domain/bench-time';
import { projectIdSchema, stageIdSchema } from '#core/domain/ids';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { loadOfProjects, type OpenProject } from '#core/planner/load-of-projects';
import { calendarDate } from '#core/units/calendar-date';

const today = calendarDate('2027-09-13');
const workshop = { settings: { ...STARTING_SETTINGS, turnaroundDays: 28 }, benchTime: STARTING_BENCH_TIME };

const id = (place: number) => stageIdSchema.parse(`00000000-0000-4000-8000-00000000000${String(place)}`);
type Stage = OpenProject['stages'][number];
const stage = (place: number, state: Stage['state'], kind: Stage['kind'] = 'other'): Stage => ({
  id: id(place),
  kind,
  state,
  estimateMinutes: 60,
});

function openProject(stages: readonly Stage[], part: Partial<OpenProject> = {}, name = 1): OpenProject {
  return {
    project: {
      id: projectIdSchema.parse(`10000000-0000-4000-8000-00000000000${String(name)}`),
      dueOn: null,
      settingChanges: {},
    },
    stages,
    trips: [],
    ...part,
  };
}

const trip = (place: number, days: { sentOn?: string; promisedOn?: string; backOn?: string }) => {
  const day = (text: string | undefined) => (text === undefined ? null : calendarDate(text));
  return {
    stageId: id(place),
    sentOn: day(days.sentOn),
    promisedOn: day(days.promisedOn),
    backOn: day(days.backOn),
  };
};

const stepsOf = (project: OpenProject) => loadOfProjects([project], workshop, today).projects[0]?.steps;

describe('the work left on a project', () => {
  it('is the work of its stages, with the turnaround where it is sent out', () => {
    expect(
      stepsOf(openProject([stage(1, 'in-hand'), stage(2, 'planned', 'longarm'), stage(3, 'planned')])),
    ).toEqual([
      { kind: 'work', id: id(1), minutes: 60 },
      { kind: 'work', id: id(2), minutes: 60 },
      { kind: 'wait', id: id(2), days: 28 },
      { kind: 'work', id: id(3), minutes: 60 },
    ]);
  });

  it('leaves out stages that are done or skipped, and projects with nothing left', () => {
    expect(stepsOf(openProject([stage(1, 'done'), stage(2, 'skipped'), stage(3, 'planned')]))).toEqual([
      { kind: 'work', id: id(3), minutes: 60 },
    ]);
    expect(stepsOf(openProject([stage(1, 'done')]))).toBeUndefined();
  });

  it('uses the turnaround of the project itself, and days given for a stage before that', () => {
    const own = openProject([stage(1, 'planned', 'longarm')]);
    const shorter = { ...own, project: { ...own.project, settingChanges: { turnaroundDays: 10 } } };
    expect(stepsOf(shorter)?.[1]).toEqual({ kind: 'wait', id: id(1), days: 10 });
    const given = openProject([{ ...stage(1, 'planned', 'longarm'), daysAway: 14 }]);
    expect(stepsOf(given)?.[1]).toEqual({ kind: 'wait', id: id(1), days: 14 });
  });

  it.each([
    ['until its promised day', { sentOn: '2027-09-01', promisedOn: '2027-09-20' }, 7],
    ['for the turnaround after it was sent', { sentOn: '2027-09-01' }, 16],
    ['for the turnaround from today where no dates were entered', {}, 28],
    ['and is expected today when it is overdue', { promisedOn: '2027-09-01' }, 0],
  ])('waits for a project that is away %s', (_, days, expected) => {
    const away = openProject([stage(1, 'planned'), stage(2, 'out', 'longarm')], { trips: [trip(2, days)] });
    expect(stepsOf(away)).toEqual([
      { kind: 'wait', id: id(2), days: expected },
      { kind: 'work', id: id(1), minutes: 60 },
    ]);
  });

  it('runs stages side by side where the plan allows it, also with a trip', () => {
    const beside = (place: number, state: Stage['state']) => ({ ...stage(place, state), isBeside: true });
    expect(
      stepsOf(openProject([stage(1, 'planned', 'longarm'), beside(2, 'planned'), stage(3, 'planned')])),
    ).toEqual([
      { kind: 'work', id: id(1), minutes: 60 },
      { kind: 'wait', id: id(1), days: 28 },
      { kind: 'work', id: id(2), minutes: 60, isBeside: true },
      { kind: 'work', id: id(3), minutes: 60 },
    ]);
    const away = openProject([stage(1, 'planned'), stage(2, 'out', 'longarm'), beside(3, 'in-hand')]);
    expect(stepsOf(away)).toEqual([
      { kind: 'wait', id: id(2), days: 28 },
      { kind: 'work', id: id(3), minutes: 60, isBeside: true },
      { kind: 'work', id: id(1), minutes: 60 },
    ]);
    expect(stepsOf(openProject([stage(1, 'done'), beside(2, 'planned')]))).toEqual([
      { kind: 'work', id: id(2), minutes: 60 },
    ]);
  });

  it('uses the trip the project is on, not one that is over', () => {
    const again = openProject([stage(1, 'out', 'longarm')], {
      trips: [
        trip(1, { promisedOn: '2027-09-30', backOn: '2027-09-10' }),
        trip(1, { promisedOn: '2027-09-16' }),
      ],
    });
    expect(stepsOf(again)).toEqual([{ kind: 'wait', id: id(1), days: 3 }]);
  });
});

it('puts projects in progress before equally urgent ones', () => {
  const projects = [openProject([stage(1, 'planned')], {}, 1), openProject([stage(1, 'in-hand')], {}, 2)];
  expect(loadOfProjects(projects, workshop, today).projects.map((one) => one.id.slice(-1))).toEqual([
    '2',
    '1',
  ]);
});
