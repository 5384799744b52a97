import { describe, expect, test } from 'vitest';
import { addStock, fabricDetails, NO_SUCH_ID, openWorkshop, type TestWorkshop } from '#test/helpers/workshop';

const paths = (workshop: TestWorkshop) => workshop.get('place:list', {}).map(({ path }) => path);
const idOf = (workshop: TestWorkshop, path: string) =>
  workshop.get('place:list', {}).find((place) => place.path === path)!.id;

/** A fabric on shelf 2 of the sewing room, and a piece of it in a bin in the hall. */
function laidOut() {
  const workshop = openWorkshop();
  const { fabricId, pieceId } = addStock(workshop);
  const details = fabricDetails({ place: 'Sewing room, shelf 2' });
  workshop.get('fabric:change', { fabricId, details });
  workshop.get('piece:lie', { pieceId, path: 'Hall, leftover bin' });
  workshop.get('place:delete', { placeId: idOf(workshop, 'Shelf 2') });
  const open = () => workshop.get('fabric:open', { fabricId });
  const finds = (search: string) => workshop.get('fabric:list', { search }).total === 1;
  return { workshop, fabricId, pieceId, open, finds };
}

describe('a place', () => {
  test('is made as it is written, once, with the places it is in', () => {
    const { workshop, open, finds } = laidOut();
    expect(paths(workshop)).toEqual(['Hall', 'Hall, leftover bin', 'Sewing room', 'Sewing room, shelf 2']);
    workshop.get('fabric:create', {
      details: fabricDetails({ name: 'Sky', place: ' sewing ROOM , Shelf 2 ' }),
    });
    expect(paths(workshop)).toHaveLength(4);
    expect(open().fabric.place).toBe('Sewing room, shelf 2');
    expect(open().pieces).toMatchObject([{ place: 'Hall, leftover bin' }]);
    expect(finds('leftover bin')).toBe(true);
  });

  test('stands behind the one it is in, in the order of its number', () => {
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

  test('counts a fabric once, whether it lies there whole or in part, and none that is used up', () => {
    const { workshop, pieceId } = laidOut();
    const counts = () => workshop.get('place:list', {}).map(({ fabrics }) => fabrics);
    expect(counts()).toEqual([0, 1, 0, 1]);
    workshop.get('piece:lie', { pieceId, path: 'Sewing room, shelf 2' });
    expect(counts()).toEqual([0, 0, 0, 1]);
  });
});

describe('renaming and moving a place', () => {
  test('takes along what is in it, and the search finds it by its new name alone; undo puts it back', () => {
    const { workshop, open, finds } = laidOut();
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

  test('is refused where the name is taken, into itself, and for a place that is not there', () => {
    const { workshop } = laidOut();
    const [hall, room, shelf] = ['Hall', 'Sewing room', 'Sewing room, shelf 2'].map((path) =>
      idOf(workshop, path),
    );
    expect(workshop.fail('place:rename', { placeId: room!, name: 'hall' }).code).toBe('invalid-input');
    expect(workshop.fail('place:rename', { placeId: room!, name: 'a, b' }).code).toBe('invalid-input');
    expect(workshop.fail('place:add', { path: 'HALL' }).code).toBe('invalid-input');
    expect(workshop.fail('place:move', { placeId: room!, parentId: shelf! }).code).toBe('invalid-input');
    expect(workshop.fail('place:move', { placeId: room!, parentId: room! }).code).toBe('invalid-input');
    expect(workshop.fail('place:move', { placeId: NO_SUCH_ID as never, parentId: hall! }).code).toBe(
      'not-found',
    );
  });

  test('to the same name in other letters is taken', () => {
    const { workshop } = laidOut();
    workshop.get('place:rename', { placeId: idOf(workshop, 'Hall'), name: 'HALL' });
    expect(paths(workshop)).toContain('HALL, leftover bin');
  });
});

describe('deleting a place', () => {
  test('lays what was in it, and in the places inside it, into the one it was in; undo puts all back', () => {
    const { workshop, open, finds } = laidOut();
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
