import path from 'node:path';
import { expect, test } from 'vitest';
import { STARTING_LABEL_SHEET } from '#core/domain/label-sheet';
import { inches, createStoreAt, openWorkshop, temporaryFolder } from '#test/helpers/workshop';

/** A workshop of the version before, with one change that can still be undone. */
function olderWorkshop(): string {
  const file = path.join(temporaryFolder(), 'workshop.sqlite');
  const older = createStoreAt(160, file);
  older.exec(`
    INSERT INTO change_log (id, words, made_at, is_undone) VALUES ('00000000-0000-4000-8000-0000000000aa', 'Changed the workshop', 1, 0);
    UPDATE current_change SET change_seq = 1;
    INSERT INTO workshop (id, name, currency, theme, habits_json) VALUES ('workshop', 'Old attic', 'EUR', 'dark', '{"turnaroundDays":21}');
    UPDATE current_change SET change_seq = NULL;
  `);
  older.close();
  return file;
}

test('an older workshop gets the starting label sheet and keeps the rest', () => {
  const { workshop } = openWorkshop(olderWorkshop()).get('workshop:opening', {});
  expect(workshop).toMatchObject({ name: 'Old attic', labelSheet: STARTING_LABEL_SHEET });
  expect(workshop.settings.turnaroundDays).toBe(21);
});

test('the label sheet is saved as its own change and undone', () => {
  const opened = openWorkshop(olderWorkshop());
  const { workshop } = opened.get('workshop:opening', {});
  const labelSheet = { ...STARTING_LABEL_SHEET, across: 2, width: inches(3) };
  opened.get('workshop:change', { workshop: { ...workshop, labelSheet } });
  expect(opened.get('workshop:opening', {}).workshop.labelSheet).toEqual(labelSheet);
  expect(opened.get('change:state', {}).undo).toBe('Changed the label sheet');
  opened.get('change:undo', {});
  expect(opened.get('workshop:opening', {}).workshop).toEqual(workshop);
});

test('a change made before the migration can still be undone and redone', () => {
  const opened = openWorkshop(olderWorkshop());
  opened.get('change:undo', {});
  expect(opened.get('workshop:opening', {}).workshop.name).toBe('');
  opened.get('change:redo', {});
  expect(opened.get('workshop:opening', {}).workshop).toMatchObject({
    name: 'Old attic',
    labelSheet: STARTING_LABEL_SHEET,
  });
});
