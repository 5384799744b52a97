import { describe, expect, test } from 'vitest';
import { calendarDate } from '#core/units/calendar-date';
import { dumpOf } from '#test/helpers/dump';
import {
  addStock,
  addProject,
  inches,
  NO_SUCH_ID,
  openWorkshop,
  planNamed,
  projectDetails,
  TINY_PNG,
  TODAY,
} from '#test/helpers/workshop';
import { tripWith } from '#core/domain/trip';

const ASIDE = { on: TODAY, note: '' };

describe('a project', () => {
  test('starts with the stages of its plan, none of them started, and reads back as entered', () => {
    const workshop = openWorkshop();
    const details = projectDetails({
      settingChanges: { unitSystem: 'metric' },
      notes: 'For the corner by the window',
    });
    const plan = planNamed('Table topper with a hole');
    const { projectId } = workshop.get('project:create', { details, stagePlanId: plan.id });
    const { project, stages, history } = workshop.get('project:open', { projectId });
    expect(project).toMatchObject({ ...details, isArchived: false });
    expect(stages.map(({ name }) => name)).toEqual(plan.stages.map(({ name }) => name));
    expect(stages.map(({ position }) => position)).toEqual([0, 1, 2, 3, 4, 5]);
    expect(stages.every(({ state, startedAt }) => state === 'planned' && startedAt === null)).toBe(true);
    expect(stages.map(({ checklist }) => checklist.map(({ text }) => text))).toEqual(
      plan.stages.map(({ checklist }) => checklist.map(({ text }) => text)),
    );
    expect(history).toEqual([]);
  });

  test('keeps changes, and an unknown project is not found', () => {
    const workshop = openWorkshop();
    const { projectId, project } = addProject(workshop);
    workshop.get('project:change', {
      projectId,
      details: projectDetails({ name: 'Winter ring', dueOn: null }),
    });
    const changed = workshop.get('project:open', { projectId }).project;
    expect(changed).toMatchObject({ name: 'Winter ring', dueOn: null });
    expect(changed.changedAt).toBeGreaterThan(project.changedAt);
    const nobody = NO_SUCH_ID as typeof projectId;
    expect(workshop.fail('project:open', { projectId: nobody })).toEqual({
      code: 'not-found',
      kind: 'project',
    });
    expect(workshop.fail('project:delete', { projectId: nobody })).toEqual({
      code: 'not-found',
      kind: 'project',
    });
  });

  test('with sides that cannot close, saved when that was not checked, still opens, and must be mended to be saved again', () => {
    const workshop = openWorkshop();
    const { projectId } = addProject(workshop);
    const sides = [1, 1, 100].map((side) => inches(side));
    const outline = { shape: 'sides', sides, width: inches(3), length: inches(3) } as const;
    const { database } = workshop.context.store;
    database.exec('UPDATE current_change SET change_seq = (SELECT max(seq) FROM change_log)');
    database
      .prepare('UPDATE project SET outline_json = ? WHERE id = ?')
      .run(JSON.stringify(outline), projectId);
    database.exec('UPDATE current_change SET change_seq = NULL');
    expect(workshop.get('project:open', { projectId }).project.outline).toEqual(outline);
    const again = { projectId, details: projectDetails({ outline }) };
    expect(workshop.fail('project:change', again)).toMatchObject({
      code: 'invalid-input',
      fields: [{ path: ['details', 'outline', 'sides'] }],
    });
    workshop.get('project:change', { projectId, details: projectDetails() });
  });

  test('is copied with its stages, but without their progress', () => {
    const workshop = openWorkshop();
    const { projectId, stages } = addProject(workshop);
    workshop.get('stage:move', { stageId: stages[0]!.id, to: 'in-hand' });
    workshop.get('photo:add', { stageId: stages[0]!.id, bytes: TINY_PNG, caption: '' });
    const copy = workshop.get('project:open', workshop.get('project:duplicate', { projectId }));
    expect(copy.project.name).toBe('Autumn ring (copy)');
    expect(copy.stages.map(({ name, state }) => [name, state])).toEqual(
      stages.map(({ name }) => [name, 'planned']),
    );
    expect(copy.photos).toEqual([]);
    expect(copy.stages.some(({ id }) => stages.some((stage) => stage.id === id))).toBe(false);
  });
});

describe('the list of projects', () => {
  test('lists open projects by due date, those without one last, and archived ones separately', () => {
    const workshop = openWorkshop();
    const named = (name: string, dueOn: string | null) =>
      addProject(workshop, { name, dueOn: dueOn === null ? null : calendarDate(dueOn) }).projectId;
    named('Some day', null);
    named('Summer', '2027-07-01');
    named('Spring', '2027-04-01');
    const projectId = named('Long ago', '2026-01-01');
    workshop.get('project:archive', { projectId, archived: true });
    const names = (archived: boolean) =>
      workshop.get('project:list', { archived }).items.map(({ project }) => project.name);
    expect(names(false)).toEqual(['Spring', 'Summer', 'Some day']);
    expect(names(true)).toEqual(['Long ago']);
    const page = workshop.get('project:list', { archived: false, offset: 1, limit: 1 });
    expect(page.items.map(({ project }) => project.name)).toEqual(['Summer']);
    expect(page.total).toBe(3);
  });

  test('shows the cost and colors of each project from the ledger', () => {
    const workshop = openWorkshop();
    const { projectId } = addProject(workshop);
    const { pieceId } = addStock(workshop);
    const cut = {
      pieceId,
      projectId,
      stageId: null,
      length: inches(36),
      leftovers: [],
      knowingly: false,
      ...ASIDE,
    };
    workshop.get('ledger:cut', cut);
    const [glance] = workshop.get('project:list', { archived: false }).items;
    expect(glance).toMatchObject({ swatches: ['#a0522d'] });
  });
});

describe('deleting a project', () => {
  test('releases fabric set aside for it, keeps the fabric it used in the ledger, and is undone as a whole', () => {
    const workshop = openWorkshop();
    const { projectId, stages } = addProject(workshop);
    const { fabricId, pieceId } = addStock(workshop);
    const stageId = stages[0]!.id;
    workshop.get('ledger:set-aside', { pieceId, projectId, length: inches(20), ...ASIDE });
    const cut = { length: inches(5), leftovers: [], knowingly: false, ...ASIDE };
    workshop.get('ledger:cut', { pieceId, projectId, stageId, ...cut });
    workshop.get('stage:move', { stageId, to: 'in-hand' });
    workshop.get('photo:add', { stageId, bytes: TINY_PNG, caption: 'Laid out' });
    workshop.get('checklist:tick', { checklistItemId: stages[0]!.checklist[0]!.id, ticked: true });
    workshop.get('trip:add', {
      stageId: stages[1]!.id,
      details: { ...tripWith('A neighbor'), priceMinor: 100 },
    });
    const [before, page] = [dumpOf(workshop), workshop.get('project:open', { projectId })];

    workshop.get('project:delete', { projectId });
    expect(workshop.fail('project:open', { projectId })).toMatchObject({ code: 'not-found' });
    expect(workshop.get('project:list', { archived: false }).total).toBe(0);
    const fabric = workshop.get('fabric:open', { fabricId });
    expect(fabric.pieces[0]).toMatchObject({ there: inches(67), held: 0 });
    expect(fabric.ledger.find(({ usedArea }) => usedArea > 0)).toMatchObject({
      projectName: 'Autumn ring',
      stageName: 'Piece the top',
    });

    expect(workshop.get('change:undo', {})).toEqual({ says: 'Deleted “Autumn ring”' });
    expect(dumpOf(workshop)).toBe(before);
    expect(workshop.get('project:open', { projectId })).toEqual(page);
  });

  test('without any fabric leaves nothing behind but the history of changes', () => {
    const workshop = openWorkshop();
    const { projectId } = addProject(workshop);
    workshop.get('project:delete', { projectId });
    const { database } = workshop.context.store;
    for (const table of ['project', 'stage', 'checklist_item', 'stage_event']) {
      expect(database.prepare(`SELECT count(*) FROM ${table}`).raw().get()).toEqual([0]);
    }
  });
});
