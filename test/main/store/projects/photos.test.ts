import fs from 'node:fs';
import { expect, test } from 'vitest';
import { findPhoto } from '#main/store/projects/photos';
import { addProject, openWorkshop, TINY_PNG } from '#test/helpers/workshop';

test('photos of a stage are listed, stored on disk and deleted, and undo brings them back', () => {
  const workshop = openWorkshop();
  const { projectId, stages } = addProject(workshop);
  const stageId = stages[0]!.id;
  const { photoId } = workshop.get('photo:add', {
    stageId,
    bytes: TINY_PNG,
    caption: 'Laid out on the floor',
  });
  const again = workshop.get('photo:add', { stageId: stages[1]!.id, bytes: TINY_PNG, caption: '' });
  const photos = () => workshop.get('project:open', { projectId }).photos;
  expect(photos().map(({ id, caption }) => [id, caption])).toEqual([
    [again.photoId, ''],
    [photoId, 'Laid out on the floor'],
  ]);
  const { store, folders } = workshop.context;
  const place = findPhoto(store, folders.photos, photoId);
  expect(place.ok && Uint8Array.from(fs.readFileSync(place.value.file))).toEqual(TINY_PNG);
  expect(fs.readdirSync(folders.photos)).toHaveLength(1);

  workshop.get('photo:delete', { photoId });
  expect(photos().map(({ id }) => id)).toEqual([again.photoId]);
  expect(workshop.fail('photo:delete', { photoId })).toEqual({ code: 'not-found', kind: 'photo' });
  workshop.get('change:undo', {});
  expect(photos()).toHaveLength(2);
  expect(fs.readdirSync(folders.photos)).toHaveLength(1);
});

test('a file that is not a photo is refused, and nothing is written', () => {
  const workshop = openWorkshop();
  const { stages } = addProject(workshop);
  const bytes = Uint8Array.from(Buffer.from('no picture'));
  expect(workshop.fail('photo:add', { stageId: stages[0]!.id, bytes, caption: '' })).toEqual({
    code: 'not-a-photo',
  });
  expect(fs.existsSync(workshop.context.folders.photos)).toBe(false);
});
