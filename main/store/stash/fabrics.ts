import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Page } from '#core/contract/channel';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import type { FabricGlance, FabricPage } from '#core/contract/stash';
import { failure, type Result, success } from '#core/result';
import { bookingsOfFabric } from '../ledger/bookings';
import { removeRow } from '../history/change-flip';
import { recordChange } from '../history/changes';
import { worthOfFabric } from '../ledger/cost-basis';
import { BOOKING_IS_ACTIVE } from '../ledger/ledger-sql';
import { addFabric, FABRICS, fabricColumns, glancesOf } from './fabric-rows';
import { fabricPage } from './fabric-search';
import { oneRow, type ReadableStore, updateRow, write } from '../base/handles';
import { findFabric, notFound } from '../base/lookups';
import { placeAt } from './places';
import { numberOf, textOrNullOf } from '../base/rows';

export function listFabrics(store: ReadableStore, input: ChannelInput<'fabric:list'>): Page<FabricGlance> {
  const { rows, total } = fabricPage(store, input);
  return { items: glancesOf(store, rows), total };
}

export function openFabric(
  store: ReadableStore,
  { fabricId }: ChannelInput<'fabric:open'>,
): Result<FabricPage, Problem> {
  const row = oneRow(store, `${FABRICS} WHERE fabric.id = ? AND deleted_at IS NULL`, fabricId);
  if (row === undefined) return notFound('fabric');
  const [glance] = glancesOf(store, [row]);
  if (glance === undefined) return notFound('fabric');
  const seq = numberOf(row, 'seq');
  return success({
    ...glance,
    ledger: bookingsOfFabric(store, seq),
    ...worthOfFabric(store, seq, glance.areaThere),
  });
}

export function createFabric(
  store: ReadableStore,
  { details }: ChannelInput<'fabric:create'>,
): Result<ChannelOutput<'fabric:create'>, Problem> {
  return recordChange(store, `Added “${details.name}” to the stash`, (writable) => {
    return success({ fabricId: addFabric(writable, details).id });
  });
}

export function changeFabric(
  store: ReadableStore,
  { fabricId, details }: ChannelInput<'fabric:change'>,
): Result<Changed, Problem> {
  const fabric = findFabric(store, fabricId);
  if (!fabric.ok) return fabric;
  return recordChange(store, `Changed “${details.name}”`, (writable) => {
    updateRow(writable, 'fabric', fabricId, fabricColumns(details, placeAt(writable, details.place)));
    return success({});
  });
}

/** Only a fabric without an active booking can be deleted. */
export function deleteFabric(
  store: ReadableStore,
  { fabricId }: ChannelInput<'fabric:delete'>,
): Result<Changed, Problem> {
  const fabric = findFabric(store, fabricId);
  if (!fabric.ok) return fabric;
  const active = oneRow(
    store,
    `SELECT 1 AS found FROM booking WHERE fabric_seq = ? AND takes_back IS NULL AND ${BOOKING_IS_ACTIVE} LIMIT 1`,
    fabric.value.seq,
  );
  if (active !== undefined) {
    return failure<Problem>({ code: 'in-use', kind: 'fabric', name: fabric.value.name });
  }
  return recordChange(store, `Deleted “${fabric.value.name}”`, (writable) => {
    const photo = oneRow(writable, 'SELECT photo_id FROM fabric WHERE id = ?', fabricId);
    removeRow(writable, 'fabric', fabricId);
    const orphan =
      'DELETE FROM photo WHERE id = ? AND NOT EXISTS (SELECT 1 FROM fabric WHERE photo_id = photo.id)';
    write(writable, orphan, textOrNullOf(photo ?? {}, 'photo_id'));
    return success({});
  });
}
