import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { FabricId } from '#core/domain/ids';
import { failure, type Result, success } from '#core/result';
import { recordChange } from './changes';
import { fabricColumns } from './fabric-rows';
import { insertRow, type ReadableStore, type WritableStore, write } from './handles';
import { addBought } from './ledger';
import { appendBooking } from './ledger-append';
import { findFabric, findProject, notFound, type ProjectRef, wrongField } from './lookups';
import { layPiece } from './places';
import { findLine, keepChoice } from './shopping';

type Purchase = ChannelInput<'shopping:buy'>;

/** Ticks a line of the shopping list off: the purchase, what is set aside of it, the fabric it was, all one change. */
export function buyFromList(
  store: ReadableStore,
  bought: Purchase,
): Result<ChannelOutput<'shopping:buy'>, Problem> {
  const { fabric, lineId, needs, holds, size, unitLength } = bought;
  const known = 'fabricId' in fabric ? findFabric(store, fabric.fabricId) : null;
  if (known?.ok === false) return known;
  if (lineId !== null && findLine(store, lineId) === null) return notFound('line');
  if (unitLength !== null && size.length % unitLength !== 0) {
    return wrongField(['size', 'length'], String(size.length), `a whole number of times ${unitLength}`);
  }
  const projects = new Map<string, ProjectRef>();
  for (const { projectId } of [...needs, ...holds]) {
    const project = findProject(store, projectId);
    if (!project.ok) return project;
    projects.set(projectId, project.value);
  }
  const held = holds.reduce((sum, { length }) => sum + length, 0);
  if (held > size.length) {
    return failure<Problem>({ code: 'short-of-cloth', free: size.length, there: size.length, asked: held });
  }
  const name = 'details' in fabric ? fabric.details.name : (known?.value.name ?? '');
  return recordChange(store, `Bought “${name}” from the list`, (writable) => {
    const own = known === null ? createFabric(writable, fabric) : known.value;
    const { pieceId, pieceSeq } = addBought(writable, own.seq, bought);
    layPiece(writable, pieceId, bought.place);
    for (const { projectId, length } of holds) {
      const projectSeq = projects.get(projectId)?.seq ?? null;
      const booking = { fabricSeq: own.seq, projectSeq, stage: null, note: '', on: bought.on };
      appendBooking(writable, booking, [
        { pieceSeq, kind: 'set-aside', lengthChange: 0, heldChange: length, valueChange: 0 },
      ]);
    }
    const fabricId = own.id as FabricId;
    for (const need of needs) keepChoice(writable, need, { kind: 'fabric', fabricId });
    if (lineId !== null) write(writable, 'DELETE FROM shopping_line WHERE id = ?', lineId);
    return success({ fabricId, pieceId });
  });
}

function createFabric(
  store: WritableStore,
  fabric: Purchase['fabric'],
): { readonly seq: number; readonly id: string } {
  if (!('details' in fabric)) throw new Error('A fabric of the stash is not made anew');
  const { newId, now } = store.surroundings;
  const id = newId();
  const columns = { id, ...fabricColumns(store, fabric.details), created_at: now() };
  return { seq: insertRow(store, 'fabric', columns), id };
}
