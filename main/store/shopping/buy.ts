import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import { isWholeCount } from '#core/domain/stash';
import { failure, type Result, success } from '#core/result';
import { isWholeDate } from '#core/units/partial-date';
import { assignPurchaseByNeeds } from '../cutting/assign-purchase';
import { recordChange } from '../history/changes';
import { addFabric } from '../stash/fabric-rows';
import { type ReadableStore, write } from '../base/handles';
import { addBought } from '../fabric-use/ledger';
import { appendBooking, setAsideEntry } from '../ledger/ledger-append';
import { findFabric, findProject, notFound, type ProjectRef } from '../base/lookups';
import { storePiece } from '../stash/places';
import { findLine, saveChoice } from './shopping';

type Purchase = ChannelInput<'shopping:buy'>;

/** Checks a line off the shopping list. The purchase, what is set aside of it and the choice of fabric are one change. */
export function buyFromList(
  store: ReadableStore,
  bought: Purchase,
): Result<ChannelOutput<'shopping:buy'>, Problem> {
  const { fabric, lineId, needs, holds, size, unitLength } = bought;
  const named = 'fabricId' in fabric ? findFabric(store, fabric.fabricId) : success(fabric.details);
  if (!named.ok) return named;
  if (lineId !== null && findLine(store, lineId) === null) return notFound('shopping-line');
  if (unitLength !== null && !isWholeCount(size.length, unitLength)) {
    return failure<Problem>({ code: 'uneven-count', unitLength });
  }
  const projects = new Map<string, ProjectRef>();
  for (const { projectId } of [...needs, ...holds]) {
    const project = findProject(store, projectId);
    if (!project.ok) return project;
    projects.set(projectId, project.value);
  }
  const held = holds.reduce((sum, { length }) => sum + length, 0);
  if (held > size.length) {
    return failure<Problem>({ code: 'short-of-fabric', free: size.length, there: size.length, asked: held });
  }
  const chosen = named.value;
  return recordChange(store, `Bought “${chosen.name}” from the shopping list`, (writable) => {
    const { id: fabricId, seq: fabricSeq } = 'seq' in chosen ? chosen : addFabric(writable, chosen);
    const { pieceId, pieceSeq } = addBought(writable, fabricSeq, bought);
    storePiece(writable, pieceId, bought.place);
    const { on } = bought;
    // What is set aside is set aside on a day, even if it is not known when it was bought.
    const heldOn = on !== null && isWholeDate(on) ? on : writable.clockAndIds.today();
    for (const { projectId, length } of holds) {
      const projectSeq = projects.get(projectId)?.seq ?? null;
      const booking = { fabricSeq, projectSeq, stage: null, note: '', on: heldOn };
      appendBooking(writable, booking, [setAsideEntry(pieceSeq, length)]);
    }
    if (bought.kind === 'yardage') assignPurchaseByNeeds(writable, needs, { fabricId, pieceId, ...size });
    for (const need of needs) saveChoice(writable, need, { kind: 'fabric', fabricId });
    if (lineId !== null) write(writable, 'DELETE FROM shopping_line WHERE id = ?', lineId);
    return success({ fabricId, pieceId });
  });
}
