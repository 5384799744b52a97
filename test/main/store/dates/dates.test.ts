import { describe, expect, test } from 'vitest';
import { tripWith } from '#core/domain/trip';
import { projectIdSchema as projectIdSchema, tripIdSchema as tripIdSchema } from '#core/domain/ids';
import { addDays, type CalendarDate, calendarDate, daysBetween } from '#core/units/calendar-date';
import {
  addProject,
  inches,
  NO_SUCH_ID,
  openWorkshop,
  planNamed,
  projectDetails,
  type TestWorkshop,
  TODAY,
} from '#test/helpers/workshop';

const NO_MOVES = { dues: [], promises: [] };
const in_ = (days: number) => addDays(TODAY, days);

function ask(workshop: TestWorkshop, moves: object = {}) {
  return workshop.get('dates:plan', { on: TODAY, moves: { ...NO_MOVES, ...moves } }).plan;
}

/** A project sent out ten days ago, with a promised return date. */
function awayPiece(workshop: TestWorkshop, promisedIn: number) {
  const piece = addProject(workshop, { name: 'Frost round', dueOn: in_(90) });
  for (const stage of piece.stages.slice(0, 1)) workshop.get('stage:move', { stageId: stage.id, to: 'done' });
  const details = { ...tripWith('Tansy Quill'), sentOn: in_(-10), promisedOn: in_(promisedIn) };
  const stageId = piece.stages[1]!.id;
  workshop.get('stage:move', { stageId, to: 'out', passGateWhy: 'Measured by eye' });
  const { tripId } = workshop.get('trip:add', { stageId, details });
  return { ...piece, tripId };
}

describe('the schedule of a workshop', () => {
  test('covers its open projects within its bench hours', () => {
    const workshop = openWorkshop();
    const { projectId } = addProject(workshop, { dueOn: in_(400) });
    addProject(workshop, { name: 'Put away' });
    const other = workshop
      .get('project:list', { archived: false })
      .items.find(({ project }) => project.id !== projectId);
    workshop.get('project:archive', { projectId: other!.project.id, archived: true });
    const before = ask(workshop);
    expect(before.projects.map(({ id, lateDays }) => [id, (lateDays ?? 1) <= 0])).toEqual([
      [projectId, true],
    ]);

    const kept = workshop.get('workshop:opening', {}).workshop;
    const benchTime = { ...kept.benchTime, weekMinutes: [5, 0, 0, 0, 0, 0, 0] as const };
    workshop.get('workshop:change', { workshop: { ...kept, benchTime } });
    expect(ask(workshop).projects[0]!.lateDays).toBeGreaterThan(0);
  });

  test('waits for a project at the quilter until the promised or the moved date', () => {
    const workshop = openWorkshop();
    const { tripId } = awayPiece(workshop, 7);
    expect(ask(workshop).projects[0]!.steps[0]).toMatchObject({ kind: 'wait', endOn: in_(7) });
    const later = ask(workshop, { promises: [{ tripId, promisedOn: in_(30) }] });
    expect(later.projects[0]!.steps[0]).toMatchObject({ kind: 'wait', endOn: in_(30) });
    expect(ask(workshop).projects[0]!.steps[0]).toMatchObject({ endOn: in_(7) });
  });

  test('suggests fixes for late projects, and they work', () => {
    const workshop = openWorkshop();
    const { projectId } = addProject(workshop, { dueOn: in_(1) });
    const { moved } = workshop.get('dates:suggest-fixes', { on: TODAY, moves: NO_MOVES });
    expect(moved.map(({ id }) => id)).toEqual([projectId]);
    const dues = moved.map(({ dueOn }) => ({ projectId, dueOn }));
    expect(ask(workshop, { dues }).largestLateDays).toBe(0);
  });
});

describe('a top that is not sent yet', () => {
  test('is planned by past trips to its quilter, once there are three, and is sent on the reserved trip', () => {
    const workshop = openWorkshop();
    const past = [20, 44, 30].map((days, index) => {
      const piece = addProject(workshop, { name: `Past ${String(index)}` });
      const stage = piece.stages.find(({ kind }) => kind === 'longarm')!;
      const details = { ...tripWith('Tansy Quill'), sentOn: in_(-100), backOn: in_(days - 100) };
      workshop.get('trip:add', { stageId: stage.id, details });
      return piece.projectId;
    });
    for (const projectId of past) workshop.get('project:archive', { projectId, archived: true });
    const { projectId, stages } = addProject(workshop, { name: 'Harvest round', dueOn: in_(300) });
    const stageId = stages.find(({ kind }) => kind === 'longarm')!.id;
    const away = () => workshop.get('dates:plan', { on: TODAY, moves: NO_MOVES }).away;
    const waited = () => {
      const [dates] = ask(workshop).projects;
      const wait = dates!.steps.find(({ kind }) => kind === 'wait')!;
      return daysBetween(wait.startOn!, wait.endOn!);
    };
    const known = { stageId, from: 'quilters', days: 30, withWhom: 'Tansy Quill' };
    expect(away()).toEqual([expect.objectContaining(known)]);
    expect(waited()).toBe(30);
    const { tripId } = workshop.get('trip:add', { stageId, details: tripWith('Tansy Quill') });
    expect(away()).toEqual([expect.objectContaining({ from: 'learned', days: 30, withWhom: 'Tansy Quill' })]);
    expect(waited()).toBe(30);

    workshop.get('stage:move', { stageId: stages[0]!.id, to: 'done' });
    for (const item of stages.find(({ id }) => id === stageId)!.checklist)
      workshop.get('checklist:tick', { checklistItemId: item.id, ticked: true });
    const details = { ...tripWith('Tansy Quill'), sentOn: TODAY };
    expect(workshop.get('trip:send', { stageId, details }).tripId).toBe(tripId);
    expect(workshop.get('project:open', { projectId }).trips).toHaveLength(1);
    expect(waited()).toBe(30);
  });
});

describe('a project that is not started yet', () => {
  const details = (dueOn: CalendarDate | null, across = 48) => ({
    ...projectDetails({ name: 'Late wish', dueOn, hole: null, hasSlit: false }),
    outline: { shape: 'circle' as const, diameter: inches(across) },
  });
  const tried = (workshop: TestWorkshop, dueOn: CalendarDate | null, across?: number) =>
    workshop.get('dates:try-project', {
      on: TODAY,
      details: details(dueOn, across),
      stagePlanId: planNamed('Throw').id,
    });

  test('gets the days that it then has when it is started', () => {
    const workshop = openWorkshop();
    addProject(workshop, { dueOn: in_(60) });
    const before = tried(workshop, in_(100));
    const { projectId } = workshop.get('project:create', {
      details: details(in_(100)),
      stagePlanId: planNamed('Throw').id,
    });
    const dates = ask(workshop).projects.find(({ id }) => id === projectId)!;
    expect(before.dates).toMatchObject({ finishOn: dates.finishOn, lateDays: dates.lateDays });
    expect(workshop.get('project:list', { archived: false }).items).toHaveLength(2);
  });

  test('takes longer when it is larger, and says what would help when it is late', () => {
    const workshop = openWorkshop();
    expect(tried(workshop, null, 90).dates.finishOn! > tried(workshop, null, 20).dates.finishOn!).toBe(true);
    expect(tried(workshop, in_(200)).fixes).toBeNull();
    const late = tried(workshop, in_(3));
    expect(late.dates.lateDays).toBeGreaterThan(0);
    expect(late.fixes!.moved).toEqual([{ id: late.dates.id, dueOn: late.dates.finishOn }]);
  });

  test('names the projects that it would make late', () => {
    const workshop = openWorkshop();
    const { projectId } = addProject(workshop, { name: 'Frost round', dueOn: in_(400) });
    const { finishOn } = ask(workshop).projects.find(({ id }) => id === projectId)!;
    workshop.get('dates:move', { moves: { ...NO_MOVES, dues: [{ projectId, dueOn: finishOn! }] } });
    expect(tried(workshop, in_(1), 90).madeLater).toEqual([
      { name: 'Frost round', lateDays: expect.any(Number) as number },
    ]);
  });
});

describe('time logged', () => {
  test('is subtracted from the estimate, and a stage that took longer needs no more time', () => {
    const workshop = openWorkshop();
    const { projectId, stages } = addProject(workshop, { dueOn: in_(400) });
    const doneOn = () => ask(workshop).projects.find(({ id }) => id === projectId)!.finishOn!;
    const before = doneOn();
    const clock = (minutes: number) =>
      workshop.get('work:add', {
        stageId: stages[0]!.id,
        details: { on: TODAY, minutes, done: null, note: '' },
      });
    clock(stages[0]!.estimateMinutes - 60);
    const later = doneOn();
    expect(later < before).toBe(true);
    clock(60);
    const latest = doneOn();
    expect(latest <= later).toBe(true);
    clock(500);
    expect(doneOn()).toBe(latest);
  });
});

describe('moved dates', () => {
  test('are saved and undone as one change', () => {
    const workshop = openWorkshop();
    const { projectId, tripId } = awayPiece(workshop, 7);
    const move = { dues: [{ projectId, dueOn: in_(120) }], promises: [{ tripId, promisedOn: in_(14) }] };
    workshop.get('dates:move', { moves: move });
    const read = () => {
      const { project, trips } = workshop.get('project:open', { projectId });
      return [project.dueOn, trips[0]?.promisedOn];
    };
    expect(read()).toEqual([in_(120), in_(14)]);
    expect(workshop.get('change:state', {}).undo).toBe('Moved 2 dates');
    workshop.get('change:undo', {});
    expect(read()).toEqual([in_(90), in_(7)]);
  });

  test('name the project in the history when there is only one', () => {
    const workshop = openWorkshop();
    const { projectId, tripId } = awayPiece(workshop, 7);
    workshop.get('dates:move', { moves: { ...NO_MOVES, dues: [{ projectId, dueOn: in_(120) }] } });
    expect(workshop.get('change:state', {}).undo).toBe('Moved the due date of “Frost round”');
    workshop.get('dates:move', { moves: { ...NO_MOVES, promises: [{ tripId, promisedOn: in_(14) }] } });
    expect(workshop.get('change:state', {}).undo).toBe('Moved the return date of “Frost round”');
  });

  test('of an unknown project or trip change nothing', () => {
    const workshop = openWorkshop();
    const { projectId } = awayPiece(workshop, 7);
    const dueOn = calendarDate('2028-01-01');
    const promises = [{ tripId: tripIdSchema.parse(NO_SUCH_ID), promisedOn: dueOn }];
    expect(workshop.fail('dates:move', { moves: { dues: [{ projectId, dueOn }], promises } }).code).toBe(
      'not-found',
    );
    const dues = [{ projectId: projectIdSchema.parse(NO_SUCH_ID), dueOn }];
    expect(workshop.fail('dates:move', { moves: { dues, promises: [] } }).code).toBe('not-found');
    expect(workshop.get('project:open', { projectId }).project.dueOn).toBe(in_(90));
  });
});

describe('days to remember', () => {
  test('are due dates, last days to send out and promised return dates, in order', () => {
    const workshop = openWorkshop();
    const away = awayPiece(workshop, 7);
    const home = addProject(workshop, { name: 'Harvest round', forWhom: 'Aunt Wren', dueOn: in_(300) });
    const days = workshop.get('dates:days-to-remember', { on: TODAY });
    expect(days.map(({ kind, projectName, who }) => [kind, projectName, who])).toEqual([
      ['back', 'Frost round', 'Tansy Quill'],
      ['due', 'Frost round', 'A neighbor'],
      ['send-by', 'Harvest round', ''],
      ['due', 'Harvest round', 'Aunt Wren'],
    ]);
    expect(days.map(({ ownerId }) => ownerId)).toEqual([
      away.tripId,
      away.projectId,
      home.stages.find(({ kind }) => kind === 'longarm')?.id,
      home.projectId,
    ]);
    expect([days[0]?.on, days[1]?.on, days[3]?.on]).toEqual([in_(7), in_(90), in_(300)]);
  });

  test('leave out projects that are back, finished or archived', () => {
    const workshop = openWorkshop();
    const { projectId } = awayPiece(workshop, 7);
    workshop.get('project:archive', { projectId, archived: true });
    expect(workshop.get('dates:days-to-remember', { on: TODAY })).toEqual([]);
  });
});
