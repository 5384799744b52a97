import { expect, test } from 'vitest';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { usualSeams } from '#core/learned/usual-seams';
import { success } from '#core/result';
import { write } from '#main/store/base/handles';
import { recordChange } from '#main/store/history/changes';
import { blocksOff } from '#test/helpers/seam-checks';
import { addProject, inches, openWorkshop, type TestWorkshop } from '#test/helpers/workshop';

function measuredProject(workshop: TestWorkshop, name: string, off: number) {
  const { projectId, stages } = addProject(workshop, { name });
  const stageId = stages.find(({ kind }) => kind === 'piecing')!.id;
  const ownInput = { ...blocksOff(-off, -off, -off, -off), readTo: inches(1 / 254) };
  const save = () => workshop.get('calculation:save', { stageId, calculator: 'seam-check', ownInput });
  save();
  return { projectId, stageId };
}

const usualOf = (workshop: TestWorkshop) => usualSeams(workshop.get('workshop:seam-checks', {}));
const inUse = (workshop: TestWorkshop) => workshop.get('workshop:opening', {}).settingsInUse;

test('what was measured is kept with the stage, and from three projects on it is what accuracy starts with', () => {
  const workshop = openWorkshop();
  expect(workshop.get('workshop:seam-checks', {})).toEqual([]);
  measuredProject(workshop, 'One', 1 / 16);
  const second = measuredProject(workshop, 'Two', 1 / 16);
  expect(usualOf(workshop)).toMatchObject({ projects: 2, inUse: null });
  expect(inUse(workshop).seamOff).toBe(STARTING_SETTINGS.seamOff);

  measuredProject(workshop, 'Three', 1 / 16);
  expect(usualOf(workshop)).toMatchObject({ projects: 3, inUse: { seamOff: inches(1 / 64) } });
  expect(inUse(workshop).seamOff).toBe(inches(1 / 64));
  expect(workshop.get('workshop:opening', {}).workshop.settings.seamOff).toBe(STARTING_SETTINGS.seamOff);
  const { calculationId } = workshop.get('calculation:save', {
    stageId: second.stageId,
    calculator: 'accuracy',
    ownInput: {},
  });
  const saved = workshop.get('calculation:list', { stageId: second.stageId });
  expect(saved.find(({ id }) => id === calculationId)?.input).toMatchObject({ seamOff: inches(1 / 64) });
});

test('a deleted project no longer counts, and undo brings it back', () => {
  const workshop = openWorkshop();
  const [first] = ['One', 'Two', 'Three'].map((name) => measuredProject(workshop, name, 1 / 16));
  workshop.get('project:delete', { projectId: first!.projectId });
  expect(usualOf(workshop).projects).toBe(2);
  workshop.get('change:undo', {});
  expect(usualOf(workshop).projects).toBe(3);
  workshop.get('project:archive', { projectId: first!.projectId, archived: true });
  expect(usualOf(workshop).projects).toBe(3);
});

test('new measurements on a stage take the place of the old ones, and undo brings those back', () => {
  const workshop = openWorkshop();
  const { stageId } = measuredProject(workshop, 'One', 1 / 16);
  const ownInput = { ...blocksOff(-1 / 8, -1 / 8, -1 / 8), readTo: inches(1 / 254) };
  workshop.get('calculation:save', { stageId, calculator: 'seam-check', ownInput });
  expect(usualOf(workshop).mean).toBeCloseTo(inches(1 / 32), 6);
  workshop.get('change:undo', {});
  expect(usualOf(workshop).mean).toBeCloseTo(inches(1 / 64), 6);
});

test('a workshop from before keeps its settings, and has the starting errors beside them', () => {
  const workshop = openWorkshop();
  const { workshop: now } = workshop.get('workshop:opening', {});
  workshop.get('workshop:change', {
    workshop: { ...now, settings: { ...now.settings, seamAllowance: inches(3 / 8) } },
  });
  recordChange(workshop.context.store, 'As it was before', (writable) => {
    write(writable, `UPDATE workshop SET habits_json = json_remove(habits_json, '$.seamOff', '$.cutOff')`);
    return success({});
  });
  expect(inUse(workshop)).toEqual({ ...now.settings, seamAllowance: inches(3 / 8) });
});
