import { describe, expect, test } from 'vitest';
import { addStock, fabricDetails, NO_SUCH_ID, openWorkshop, type TestWorkshop } from '#test/helpers/workshop';

const paths = (workshop: TestWorkshop) => workshop.get('place:list', {}).map(({ path }) => path);
const idOf = (workshop: TestWorkshop, path: string) =>
  workshop.get('place:list', {}).find((place) => place.path === path)!.id;

/** A fabric on shelf 2 of the sewing room, and a piece of it in a bin in the hall. */
function storedApart() {
  const workshop = openWorkshop();
  const { fabricId, pieceId } = addStock(workshop);
  const details = fabricDetails({ place: 'Sewing room, shelf 2' });
  workshop.get('fabric:change', { fabricId, details });
  workshop.get('piece:store-in', { pieceId, path: 'Hall, leftover bin' });
  workshop.get('place:delete', { placeId: idOf(workshop, 'Shelf 2') });
  const open = () => workshop.get('fabric:open', { fabricId });
  const finds = (search: string) => workshop.get('fabric:list', { search }).total === 1;
  return { workshop, fabricId, pieceId, open, finds };
}

describe('a place', () => {
  test('is added once, as it is written, with the places around it', () => {
    const { workshop, open, finds } = storedApart();
    expect(paths(workshop)).toEqual(['Hall', 'Hall, leftover bin', 'Sewing room', 'Sewing room, shelf 2']);
    workshop.get('fabric:create', {
      details: fabricDetails({ name: 'Sky', place: ' sewing ROOM , Shelf 2 ' }),
    });
    expect(paths(workshop)).toHaveLength(4);
    expect(open().fabric.place).toBe('Sewing room, shelf 2');
    expect(open().pieces).toMatchObject([{ place: 'Hall, leftover bin' }]);
    expect(finds('leftover bin')).toBe(true);
  });

  test('follows the one around it, sorted by number', () => {
    const workshop = openWorkshop();
    for (const path of ['Room, shelf 10', 'Room, shelf 2, bin', 'Attic', 'Room']) {
      workshop.ask('place:add', { path });
    }
    expect(paths(workshop)).toEqual([
      'Attic',
      'Room',
      'Room, shelf 2',
      'Room, shelf 2, bin',
      'Room, shelf 10',
    ]);
  });

  test('counts a fabric once, stored whole or in part, and none that is used up', () => {
    const { workshop, pieceId } = storedApart();
    const counts = () => workshop.get('place:list', {}).map(({ fabrics }) => fabrics);
    expect(counts()).toEqual([0, 1, 0, 1]);
    workshop.get('piece:store-in', { pieceId, path: 'Sewing room, shelf 2' });
    expect(counts()).toEqual([0, 0, 0, 1]);
  });
});

describe('renaming and moving a place', () => {
  test('takes along what is in it; the search finds only the new name, and undo restores the old', () => {
    const { workshop, open, finds } = storedApart();
    workshop.get('place:rename', { placeId: idOf(workshop, 'Sewing room'), name: 'Garret' });
    expect(open().fabric.place).toBe('Garret, shelf 2');
    expect([finds('garret'), finds('sewing')]).toEqual([true, false]);
    workshop.get('place:move', { placeId: idOf(workshop, 'Garret'), parentId: idOf(workshop, 'Hall') });
    expect(open().fabric.place).toBe('Hall, Garret, shelf 2');
    workshop.get('change:undo', {});
    workshop.get('change:undo', {});
    expect(open().fabric.place).toBe('Sewing room, shelf 2');
    expect([finds('garret'), finds('sewing')]).toEqual([false, true]);
  });

  test('is refused for a taken name, into itself, and for a missing place', () => {
    const { workshop } = storedApart();
    const [hall, room, shelf] = ['Hall', 'Sewing room', 'Sewing room, shelf 2'].map((path) =>
      idOf(workshop, path),
    );
    expect(workshop.fail('place:rename', { placeId: room!, name: 'hall' })).toEqual({
      code: 'name-taken',
      name: 'hall',
    });
    expect(workshop.fail('place:rename', { placeId: room!, name: 'a, b' }).code).toBe('invalid-input');
    expect(workshop.fail('place:add', { path: 'HALL' })).toEqual({ code: 'name-taken', name: 'HALL' });
    for (const [parentId, into] of [
      [shelf!, 'Sewing room, shelf 2'],
      [room!, 'Sewing room'],
    ] as const) {
      expect(workshop.fail('place:move', { placeId: room!, parentId })).toEqual({
        code: 'place-inside-itself',
        place: 'Sewing room',
        into,
      });
    }
    expect(workshop.fail('place:move', { placeId: NO_SUCH_ID as never, parentId: hall! }).code).toBe(
      'not-found',
    );
  });

  test('allows the same name with other capitals', () => {
    const { workshop } = storedApart();
    workshop.get('place:rename', { placeId: idOf(workshop, 'Hall'), name: 'HALL' });
    expect(paths(workshop)).toContain('HALL, leftover bin');
  });
});

describe('deleting a place', () => {
  test('moves everything inside it to the place around it; undo restores all', () => {
    const { workshop, open, finds } = storedApart();
    workshop.get('place:delete', { placeId: idOf(workshop, 'Hall, leftover bin') });
    expect(open().pieces).toMatchObject([{ place: 'Hall' }]);
    workshop.get('place:delete', { placeId: idOf(workshop, 'Sewing room') });
    expect(open().fabric.place).toBe('');
    expect(finds('sewing')).toBe(false);
    workshop.get('change:undo', {});
    workshop.get('change:undo', {});
    expect(open().fabric.place).toBe('Sewing room, shelf 2');
    expect(open().pieces).toMatchObject([{ place: 'Hall, leftover bin' }]);
    expect(finds('sewing')).toBe(true);
  });
});
