import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { PlaceGlance } from '#core/contract/places';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import type { PlaceId } from '#core/domain/ids';
import { placeNames, placePathOf } from '#core/domain/place';
import { failure, type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import {
  allRows,
  insertRow,
  oneRow,
  type ReadableStore,
  updateRow,
  type WritableStore,
  write,
} from '../base/handles';
import { findPiece, notFound } from '../base/lookups';
import { idOf, idOrNullOf, numberOf, textOf } from '../base/rows';

export function listPlaces(store: ReadableStore): readonly PlaceGlance[] {
  const sql = `SELECT place.*, (SELECT count(*) FROM (
      SELECT seq FROM fabric WHERE place_id = place.id AND deleted_at IS NULL
      UNION SELECT fabric_seq FROM piece_place JOIN fabric_piece ON fabric_piece.id = piece_place.id
        JOIN piece_sum ON piece_seq = fabric_piece.seq WHERE place_id = place.id AND there > 0)) AS fabrics
    FROM place ORDER BY path`;
  return allRows(store, sql)
    .map((row) => ({
      id: idOf<PlaceId>(row, 'id'),
      parentId: idOrNullOf<PlaceId>(row, 'parent_id'),
      name: textOf(row, 'name'),
      path: textOf(row, 'path'),
      fabrics: numberOf(row, 'fabrics'),
    }))
    .sort((first, second) => comparePaths(first.path, second.path));
}

/** The place with this path, added with the places around it if it is new; null for an empty path. */
export function placeAt(store: WritableStore, path: string): PlaceId | null {
  const names = placeNames(path);
  if (names.length === 0) return null;
  const found = findByPath(store, placePathOf(names));
  if (found !== null) return found.id;
  const parentId = placeAt(store, placePathOf(names.slice(0, -1)));
  const id = store.clockAndIds.newId() as PlaceId;
  insertRow(store, 'place', {
    id,
    parent_id: parentId,
    name: names.at(-1) ?? '',
    path: pathInside(parentId === null ? '' : pathOf(store, parentId), names.at(-1) ?? ''),
  });
  return id;
}

/** Stores a piece in a place of its own; an empty path stores it with the rest of its fabric. */
export function storePiece(store: WritableStore, pieceId: string, path: string): void {
  const placeId = placeAt(store, path);
  if (placeId === null) {
    write(store, 'DELETE FROM piece_place WHERE id = ?', pieceId);
    return;
  }
  const insert = `INSERT INTO piece_place (id, place_id) VALUES (?, ?)
    ON CONFLICT (id) DO UPDATE SET place_id = excluded.place_id`;
  write(store, insert, pieceId, placeId);
}

export function addPlace(
  store: ReadableStore,
  { path }: ChannelInput<'place:add'>,
): Result<ChannelOutput<'place:add'>, Problem> {
  if (findByPath(store, path) !== null) return nameTaken(path);
  return recordChange(store, `Added the place “${path}”`, (writable) => {
    const placeId = placeAt(writable, path);
    return placeId === null ? notFound('place') : success({ placeId });
  });
}

export function renamePlace(
  store: ReadableStore,
  { placeId, name }: ChannelInput<'place:rename'>,
): Result<Changed, Problem> {
  const place = findPlace(store, placeId);
  if (place === null) return notFound('place');
  const path = pathInside(placePathOf(placeNames(place.path).slice(0, -1)), name);
  if ((findByPath(store, path)?.id ?? placeId) !== placeId) return nameTaken(path);
  return recordChange(store, `Renamed “${place.path}”`, (writable) => {
    updateRow(writable, 'place', placeId, { name, path });
    updatePaths(writable, placeId, path);
    return success({});
  });
}

export function movePlace(
  store: ReadableStore,
  { placeId, parentId }: ChannelInput<'place:move'>,
): Result<Changed, Problem> {
  const [place, parent] = [findPlace(store, placeId), parentId === null ? null : findPlace(store, parentId)];
  if (place === null || (parentId !== null && parent === null)) return notFound('place');
  if (parentId !== null && placesWithin(store, placeId).includes(parentId)) {
    return failure<Problem>({ code: 'place-inside-itself', place: place.path, into: parent?.path ?? '' });
  }
  const path = pathInside(parent?.path ?? '', place.name);
  if ((findByPath(store, path)?.id ?? placeId) !== placeId) return nameTaken(path);
  return recordChange(store, `Moved “${place.path}”`, (writable) => {
    updateRow(writable, 'place', placeId, { parent_id: parentId, path });
    updatePaths(writable, placeId, path);
    return success({});
  });
}

export function deletePlace(
  store: ReadableStore,
  { placeId }: ChannelInput<'place:delete'>,
): Result<Changed, Problem> {
  const place = findPlace(store, placeId);
  if (place === null) return notFound('place');
  return recordChange(store, `Deleted the place “${place.path}”`, (writable) => {
    // The innermost first: a place with another inside it cannot be deleted.
    for (const id of [...placesWithin(store, placeId)].reverse()) {
      write(writable, 'UPDATE fabric SET place_id = ? WHERE place_id = ?', place.parentId, id);
      if (place.parentId === null) write(writable, 'DELETE FROM piece_place WHERE place_id = ?', id);
      else write(writable, 'UPDATE piece_place SET place_id = ? WHERE place_id = ?', place.parentId, id);
      write(writable, 'DELETE FROM place WHERE id = ?', id);
    }
    return success({});
  });
}

export function movePiece(
  store: ReadableStore,
  { pieceId, path }: ChannelInput<'piece:store-in'>,
): Result<Changed, Problem> {
  const piece = findPiece(store, pieceId);
  if (!piece.ok) return piece;
  const { name } = piece.value.fabric;
  const words =
    path === '' ? `Moved a piece of “${name}” back with the rest` : `Moved a piece of “${name}” to “${path}”`;
  return recordChange(store, words, (writable) => {
    storePiece(writable, pieceId, path);
    return success({});
  });
}

interface PlaceRow {
  readonly id: PlaceId;
  readonly parentId: PlaceId | null;
  readonly name: string;
  readonly path: string;
}

function findPlace(store: ReadableStore, id: string): PlaceRow | null {
  return rowOf(oneRow(store, 'SELECT * FROM place WHERE id = ?', id));
}

function findByPath(store: ReadableStore, path: string): PlaceRow | null {
  return rowOf(oneRow(store, 'SELECT * FROM place WHERE path = ?', path));
}

function rowOf(row: ReturnType<typeof oneRow>): PlaceRow | null {
  if (row === undefined) return null;
  return {
    id: idOf<PlaceId>(row, 'id'),
    parentId: idOrNullOf<PlaceId>(row, 'parent_id'),
    name: textOf(row, 'name'),
    path: textOf(row, 'path'),
  };
}

function pathOf(store: ReadableStore, id: PlaceId): string {
  return findPlace(store, id)?.path ?? '';
}

function pathInside(parentPath: string, name: string): string {
  return placePathOf([...placeNames(parentPath), name]);
}

/** A place and all places inside it, outer ones first. */
function placesWithin(store: ReadableStore, id: PlaceId): readonly PlaceId[] {
  const inside = allRows(store, 'SELECT id FROM place WHERE parent_id = ?', id);
  return [id, ...inside.flatMap((row) => placesWithin(store, idOf<PlaceId>(row, 'id')))];
}

function updatePaths(store: WritableStore, id: PlaceId, path: string): void {
  for (const row of allRows(store, 'SELECT id, name FROM place WHERE parent_id = ?', id)) {
    const childId = idOf<PlaceId>(row, 'id');
    const childPath = pathInside(path, textOf(row, 'name'));
    updateRow(store, 'place', childId, { path: childPath });
    updatePaths(store, childId, childPath);
  }
}

function nameTaken(path: string): { readonly ok: false; readonly error: Problem } {
  return failure<Problem>({ code: 'name-taken', name: path });
}

const byNumber = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

/** Compares level by level, so that a place is followed by those inside it, and shelf 2 comes before shelf 10. */
export function comparePaths(first: string, second: string): number {
  const [one, other] = [placeNames(first), placeNames(second)];
  for (let level = 0; level < Math.min(one.length, other.length); level += 1) {
    const order = byNumber.compare(one[level] ?? '', other[level] ?? '');
    if (order !== 0) return order;
  }
  return one.length - other.length;
}
