import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import type { StashKindId } from '#core/domain/ids';
import { type PieceKind, pieceKindSchema } from '#core/domain/stash';
import type { StashKind, StashKindDetails } from '#core/domain/stash-kind';
import { type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import {
  allRows,
  insertRow,
  oneNumber,
  oneRow,
  type ReadableStore,
  type Row,
  updateRow,
  type WritableStore,
  write,
} from '../base/handles';
import { notFound } from '../base/lookups';
import { choiceOf, flagOf, idOf, lengthOrNullOf, numberOrNullOf, textOf } from '../base/rows';

/** The maker's kinds in their order. */
export function listStashKinds(store: ReadableStore): readonly StashKind[] {
  return allRows(store, 'SELECT * FROM stash_kind ORDER BY position, id').map(kindOf);
}

/** Saves a kind: without an id a new one, last in order. */
export function saveStashKind(
  store: ReadableStore,
  { kindId, details }: ChannelInput<'kind:save'>,
): Result<ChannelOutput<'kind:save'>, Problem> {
  const { name } = details;
  if (kindId === null) {
    return recordChange(store, `Added the kind “${name}”`, (writable) =>
      success({ kindId: addKind(writable, details) }),
    );
  }
  if (nameOfKind(store, kindId) === null) return notFound('stash-kind');
  return recordChange(store, `Changed the kind “${name}”`, (writable) => {
    updateRow(writable, 'stash_kind', kindId, columnsOf(details));
    return success({ kindId });
  });
}

/** The kind of this form with this name; added last in order if it is new. */
export function kindNamed(store: WritableStore, form: PieceKind, name: string): StashKindId {
  const found = oneRow(
    store,
    'SELECT id FROM stash_kind WHERE form = ? AND name = ? ORDER BY position',
    form,
    name,
  );
  if (found !== undefined) return idOf<StashKindId>(found, 'id');
  return addKind(store, { form, name, width: null, length: null, count: null, isHidden: false });
}

export function deleteStashKind(
  store: ReadableStore,
  { kindId }: ChannelInput<'kind:delete'>,
): Result<Changed, Problem> {
  const name = nameOfKind(store, kindId);
  if (name === null) return notFound('stash-kind');
  return recordChange(store, `Deleted the kind “${name}”`, (writable) => {
    write(writable, 'DELETE FROM stash_kind WHERE id = ?', kindId);
    return success({});
  });
}

function addKind(store: WritableStore, details: StashKindDetails): StashKindId {
  const id = store.clockAndIds.newId() as StashKindId;
  const position = oneNumber(store, 'SELECT coalesce(max(position), -1) + 1 FROM stash_kind');
  insertRow(store, 'stash_kind', { id, ...columnsOf(details), position });
  return id;
}

function columnsOf({ form, name, width, length, count, isHidden }: StashKindDetails) {
  return { form, name, width, length, count, is_hidden: isHidden ? 1 : 0 };
}

function nameOfKind(store: ReadableStore, id: StashKindId): string | null {
  const row = oneRow(store, 'SELECT name FROM stash_kind WHERE id = ?', id);
  return row === undefined ? null : textOf(row, 'name');
}

function kindOf(row: Row): StashKind {
  return {
    id: idOf<StashKindId>(row, 'id'),
    form: choiceOf(row, 'form', pieceKindSchema.options),
    name: textOf(row, 'name'),
    width: lengthOrNullOf(row, 'width'),
    length: lengthOrNullOf(row, 'length'),
    count: numberOrNullOf(row, 'count'),
    isHidden: flagOf(row, 'is_hidden'),
  };
}
