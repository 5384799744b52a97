import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed, StagePhoto } from '#core/contract/projects';
import type { PhotoId, StageId, TripId } from '#core/domain/ids';
import { photoMomentSchema } from '#core/domain/photo';
import { type Result, success } from '#core/result';
import { type SavedPicture, savePicture, pictureFile } from '#main/files/photo-files';
import type { PhotoType } from '#main/files/photo-type';
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
import { findFabric, findStage, notFound } from '../base/lookups';
import { touchProject } from './project-rows';
import { choiceOf, idOf, idOrNullOf, numberOf, textOf, textOrNullOf } from '../base/rows';
import { findTrip } from './trip-rows';

/** The photos of a project's stages, newest first. */
export function photosOfProject(store: ReadableStore, projectId: string): readonly StagePhoto[] {
  const sql = `SELECT photo.* FROM stage JOIN photo ON stage_id = stage.id WHERE project_id = ? ORDER BY photo.seq DESC`;
  return allRows(store, sql, projectId).map((row) => ({
    id: idOf<PhotoId>(row, 'id'),
    stageId: idOf<StageId>(row, 'stage_id'),
    tripId: idOrNullOf<TripId>(row, 'trip_id'),
    moment: row['moment'] === null ? null : choiceOf(row, 'moment', photoMomentSchema.options),
    caption: textOf(row, 'caption'),
    addedAt: numberOf(row, 'added_at'),
  }));
}

/** The file is written before the row, so that a recorded photo always has its file. */
export function addPhoto(
  store: ReadableStore,
  folder: string,
  { stageId, bytes, caption, ofTrip }: ChannelInput<'photo:add'>,
): Result<ChannelOutput<'photo:add'>, Problem> {
  const stage = findStage(store, stageId);
  if (!stage.ok) return stage;
  if (ofTrip !== undefined && findTrip(store, ofTrip.tripId)?.stageId !== stageId) return notFound('trip');
  const picture = savePicture(folder, bytes);
  if (!picture.ok) return picture;
  return recordChange(store, `Added a photo to “${stage.value.name}”`, (writable) => {
    const photoId = insertPhoto(writable, picture.value, {
      stage_id: stageId,
      trip_id: ofTrip?.tripId ?? null,
      moment: ofTrip?.moment ?? null,
      caption,
    });
    touchProject(writable, stage.value.projectId);
    return success({ photoId });
  });
}

export function deletePhoto(
  store: ReadableStore,
  { photoId }: ChannelInput<'photo:delete'>,
): Result<Changed, Problem> {
  const sql = 'SELECT name, project_id FROM photo JOIN stage ON stage.id = stage_id WHERE photo.id = ?';
  const row = oneRow(store, sql, photoId);
  if (row === undefined) return notFound('photo');
  return recordChange(store, `Deleted a photo of “${textOf(row, 'name')}”`, (writable) => {
    write(writable, 'DELETE FROM photo WHERE id = ?', photoId);
    touchProject(writable, textOf(row, 'project_id'));
    return success({});
  });
}

/** Replaces the photo of a fabric; null deletes it. */
export function setFabricPhoto(
  store: ReadableStore,
  folder: string,
  { fabricId, bytes }: ChannelInput<'fabric:set-photo'>,
): Result<Changed, Problem> {
  const fabric = findFabric(store, fabricId);
  if (!fabric.ok) return fabric;
  const picture = bytes === null ? success(null) : savePicture(folder, bytes);
  if (!picture.ok) return picture;
  const row = oneRow(store, 'SELECT photo_id FROM fabric WHERE id = ?', fabricId) ?? {};
  const before = textOrNullOf(row, 'photo_id');
  const words = picture.value === null ? 'Deleted the photo of' : 'Added a photo to';
  return recordChange(store, `${words} “${fabric.value.name}”`, (writable) => {
    const columns = { stage_id: null, trip_id: null, moment: null, caption: '' };
    const photoId = picture.value === null ? null : insertPhoto(writable, picture.value, columns);
    updateRow(writable, 'fabric', fabricId, { photo_id: photoId });
    if (before !== null) write(writable, 'DELETE FROM photo WHERE id = ?', before);
    return success({});
  });
}

export interface PhotoFile {
  readonly hash: string;
  readonly file: string;
  readonly type: PhotoType;
  /** The saved thumbnail, if there is one. */
  readonly thumbnail: Uint8Array | null;
}

/** The file of a photo. */
export function findPhoto(store: ReadableStore, folder: string, photoId: string): Result<PhotoFile, Problem> {
  const sql = 'SELECT picture.* FROM photo JOIN picture ON picture.hash = photo.hash WHERE id = ?';
  const row = oneRow(store, sql, photoId);
  if (row === undefined) return notFound('photo');
  const hash = textOf(row, 'hash');
  const type = textOf(row, 'type') as PhotoType;
  const thumbnail = row['thumbnail'] instanceof Uint8Array ? Uint8Array.from(row['thumbnail']) : null;
  return success({ hash, type, file: pictureFile(folder, hash, type), thumbnail });
}

/** Saves a thumbnail. It can be made again at any time, so it is not part of the history. */
export function saveThumbnail(store: WritableStore, hash: string, bytes: Uint8Array): void {
  write(store, 'UPDATE picture SET thumbnail = ? WHERE hash = ?', bytes, hash);
}

function insertPhoto(
  store: WritableStore,
  picture: SavedPicture,
  columns: Readonly<Record<'stage_id' | 'trip_id' | 'moment', string | null>> & { readonly caption: string },
): PhotoId {
  const { newId, now } = store.clockAndIds;
  const id = newId() as PhotoId;
  const { hash, type, bytes } = picture;
  write(
    store,
    'INSERT INTO picture (hash, type, bytes) VALUES (?, ?, ?) ON CONFLICT DO NOTHING',
    hash,
    type,
    bytes,
  );
  insertRow(store, 'photo', { id, hash, ...columns, added_at: now() });
  return id;
}
