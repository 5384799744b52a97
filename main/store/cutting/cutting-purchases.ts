import type { ChannelInput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import { listNameOf } from '#core/domain/cutting-setup';
import { fabricId } from '#core/domain/ids';
import { type FabricDetails, NO_COLOR } from '#core/domain/stash';
import { failure, type Result, success } from '#core/result';
import { lengthFromUnits } from '#core/units/length';
import { letPlanCut } from './assign-purchase';
import { recordChange } from '../history/changes';
import { findPlan } from './cutting-rows';
import { addFabric } from '../stash/fabric-rows';
import type { ReadableStore } from '../base/handles';
import { addBought } from '../fabric-use/ledger';
import { appendBooking, setAsideEntry } from '../ledger/ledger-append';
import { type FabricRef, findFabric, findProject, notFound } from '../base/lookups';

/**
 * Books what a kept plan says is to be bought of one fabric, sets it aside for the plan's project, and lets the plan cut it from
 * there on. Fabric that is not in the stash yet becomes a fabric, called as the list calls it.
 */
export function buyForPlan(
  store: ReadableStore,
  { projectId, fabric, costMinor, on }: ChannelInput<'cutting:buy'>,
): Result<Changed, Problem> {
  const project = findProject(store, projectId);
  if (!project.ok) return project;
  const found = findPlan(store, projectId);
  if (found === undefined) return notFound('cutting plan');
  const { plan } = found;
  const purchase = plan.purchases.find((one) => one.fabric === fabric);
  const known = knownFabric(store, fabric);
  const isNew = known === null && !fabricId.safeParse(fabric).success;
  if (purchase === undefined || (known === null && !isNew)) {
    return failure<Problem>({ code: 'changed-since', what: 'cutting plan' });
  }
  const name = known?.name ?? listNameOf(plan.setup, fabric) ?? 'Fabric';
  return recordChange(store, `Bought “${name}” for “${project.value.name}”`, (writable) => {
    const bought = known ?? addFabric(writable, unsaidFabric(name, purchase.width));
    const size = { width: lengthFromUnits(purchase.width), length: lengthFromUnits(purchase.length) };
    const piece = { kind: 'yardage', kindId: null, unitLength: null, size, costMinor, on, note: '' } as const;
    const { pieceId, pieceSeq } = addBought(writable, bought.seq, piece);
    const booking = { fabricSeq: bought.seq, projectSeq: project.value.seq, stage: null, note: '', on };
    appendBooking(writable, booking, [setAsideEntry(pieceSeq, purchase.length)]);
    letPlanCut(writable, found, fabric, { fabricId: bought.id, pieceId, ...size });
    return success({});
  });
}

function knownFabric(store: ReadableStore, key: string): FabricRef | null {
  const found = fabricId.safeParse(key).success ? findFabric(store, key) : null;
  return found?.ok === true ? found.value : null;
}

/** Fabric of which the list says no more than its name. */
function unsaidFabric(name: string, width: number): FabricDetails {
  return {
    ...{ name, print: '', colorWords: '', fiber: '', direction: 'any', width: lengthFromUnits(width) },
    ...{ isWashed: false, supplier: '', place: '', swatch: NO_COLOR, notes: '' },
  };
}
