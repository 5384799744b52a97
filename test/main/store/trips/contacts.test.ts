import { describe, expect, test } from 'vitest';
import { nameAlone } from '#core/domain/contact';
import { tripWith } from '#core/domain/trip';
import { success } from '#core/result';
import { write } from '#main/store/base/handles';
import { recordChange } from '#main/store/history/changes';
import { addProject, NO_SUCH_ID, openWorkshop } from '#test/helpers/workshop';

const DETAILS = {
  ...nameAlone('Pell Tallowmere', 'longarm'),
  reach: 'Past the mill, ring twice',
  rateMinor: 2.5,
  minimumMinor: 7_000,
  lines: [{ by: 'flat', name: 'Thread', amount: 600 }],
  promisedDays: 28,
} as const;

function workshopWithTop() {
  const workshop = openWorkshop();
  const { projectId, stages } = addProject(workshop);
  const stageId = stages.find(({ kind }) => kind === 'longarm')!.id;
  return { workshop, projectId, stageId };
}

describe('a contact', () => {
  test('is saved with rates, minimum, price lines and promised days, changed and deleted', () => {
    const { workshop } = workshopWithTop();
    const { contactId } = workshop.get('contact:save', { contactId: null, details: DETAILS });
    expect(workshop.get('contact:list', {})).toEqual([{ id: contactId, details: DETAILS, trips: [] }]);
    workshop.get('contact:save', { contactId, details: { ...DETAILS, rateMinor: null } });
    expect(workshop.get('contact:list', {})[0]!.details.rateMinor).toBeNull();
    workshop.get('contact:delete', { contactId });
    expect(workshop.get('contact:list', {})).toEqual([]);
    expect(workshop.fail('contact:delete', { contactId })).toEqual({ code: 'not-found', kind: 'contact' });
  });

  test('keeps what a percent line reaches; one saved before there was a choice reaches the quilting', () => {
    const { workshop } = workshopWithTop();
    const tax = { by: 'percent', name: 'Tax', percent: 7, of: 'everything-above' } as const;
    const { contactId } = workshop.get('contact:save', {
      contactId: null,
      details: { ...DETAILS, lines: [tax] },
    });
    const lines = () => workshop.get('contact:list', {})[0]!.details.lines;
    expect(lines()).toEqual([tax]);
    recordChange(workshop.context.store, 'As an older version wrote it', (writable) => {
      const older = JSON.stringify([{ by: 'percent', name: 'Rush', percent: 25 }]);
      write(writable, 'UPDATE contact SET lines_json = ? WHERE id = ?', older, contactId);
      return success({});
    });
    expect(lines()).toEqual([{ by: 'percent', name: 'Rush', percent: 25, of: 'quilting' }]);
  });

  test('cannot share its name with another, ignoring case', () => {
    const { workshop } = workshopWithTop();
    workshop.get('contact:save', { contactId: null, details: DETAILS });
    const other = workshop.get('contact:save', { contactId: null, details: nameAlone('Corvin', 'other') });
    const details = { ...DETAILS, name: 'PELL TALLOWMERE' };
    const taken = { code: 'name-taken', name: 'Pell Tallowmere' };
    expect(workshop.fail('contact:save', { contactId: null, details })).toEqual(taken);
    expect(workshop.fail('contact:save', { contactId: other.contactId, details })).toEqual(taken);
    expect(
      workshop.fail('contact:save', { contactId: NO_SUCH_ID as never, details: nameAlone('New', 'other') }),
    ).toEqual({
      code: 'not-found',
      kind: 'contact',
    });
  });

  test('used by a trip is found by name, shows a new name, and cannot be deleted', () => {
    const { workshop, projectId, stageId } = workshopWithTop();
    const { contactId } = workshop.get('contact:save', { contactId: null, details: DETAILS });
    workshop.get('trip:add', { stageId, details: tripWith('pell tallowmere') });
    workshop.get('contact:save', { contactId, details: { ...DETAILS, name: 'Pell T.' } });
    expect(workshop.get('project:open', { projectId }).trips).toEqual([
      expect.objectContaining({ contactId, withWhom: 'Pell T.' }),
    ]);
    expect(workshop.get('contact:list', {})[0]!.trips).toEqual([
      expect.objectContaining({ projectName: 'Autumn ring', stageName: 'Quilting, sent out', stageId }),
    ]);
    expect(workshop.fail('contact:delete', { contactId })).toEqual({
      code: 'in-use',
      kind: 'contact',
      name: 'Pell T.',
    });
  });

  test('is added by the first trip with a new name, and removed when that trip is undone', () => {
    const { workshop, stageId } = workshopWithTop();
    workshop.get('trip:add', { stageId, details: tripWith('Somebody new') });
    expect(workshop.get('contact:list', {})).toEqual([
      expect.objectContaining({ details: nameAlone('Somebody new', 'longarm') }),
    ]);
    workshop.get('change:undo', {});
    expect(workshop.get('contact:list', {})).toEqual([]);
  });
});

describe('trips of a project that is deleted', () => {
  test('are not listed with their contact, and are listed again after undo', () => {
    const { workshop, projectId, stageId } = workshopWithTop();
    workshop.get('trip:add', { stageId, details: tripWith('Corvin Lathe') });
    workshop.get('project:delete', { projectId });
    expect(workshop.get('contact:list', {})[0]!.trips).toEqual([]);
    workshop.get('change:undo', {});
    expect(workshop.get('contact:list', {})[0]!.trips).toHaveLength(1);
  });
});
