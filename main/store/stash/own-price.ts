import type { ChannelInput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import { type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import { insertRow, oneRow, type ReadableStore, updateRow, write } from '../base/handles';
import { findFabric } from '../base/lookups';
import { textOf } from '../base/rows';

/** Sets the price that a shop asks for a fabric now, or deletes it. */
export function setFabricPrice(
  store: ReadableStore,
  { fabricId, price }: ChannelInput<'fabric:set-price'>,
): Result<Changed, Problem> {
  const fabric = findFabric(store, fabricId);
  if (!fabric.ok) return fabric;
  const verb = price === null ? 'Deleted' : 'Set';
  return recordChange(store, `${verb} the price of “${fabric.value.name}”`, (writable) => {
    if (price === null) {
      write(writable, 'DELETE FROM fabric_price WHERE fabric_id = ?', fabricId);
      return success({});
    }
    const columns = { price_minor: price.minor, for_length: price.length };
    const before = oneRow(writable, 'SELECT id FROM fabric_price WHERE fabric_id = ?', fabricId);
    if (before !== undefined) updateRow(writable, 'fabric_price', textOf(before, 'id'), columns);
    else
      insertRow(writable, 'fabric_price', {
        id: store.clockAndIds.newId(),
        fabric_id: fabricId,
        ...columns,
      });
    return success({});
  });
}
