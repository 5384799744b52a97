import type { ChannelInput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import { listNameOf } from '#core/domain/cutting-setup';
import { fabricIdSchema } from '#core/domain/ids';
import { type FabricDetails, NO_COLOR } from '#core/domain/stash';
import { failure, type Result, success } from '#core/result';
import { lengthFromUnits } from '#core/units/length';
import { assignPurchaseToPlan } from './assign-purchase';
import { recordChange } from '../history/changes';
import { findPlan } from './cutting-rows';
import { addFabric } from '../stash/fabric-rows';
import type { ReadableStore } from '../base/handles';
import { addBought } from '../fabric-use/ledger';
import { type FabricRef, findFabric, findProject, notFound } from '../base/lookups';

/**
 * Books what a saved plan asks to buy of one fabric, lets the plan cut it, and sets aside what it cuts. Fabric that is new to the stash is
 * added under the name in the cut list.
 */
export function buyForPlan(
  store: ReadableStore,
  { projectId, fabric, costMinor, on }: ChannelInput<'cutting:buy'>,
): Result<Changed, Problem> {
  const project = findProject(store, projectId);
  if (!project.ok) return project;
  const found = findPlan(store, projectId);
  if (found === undefined) return notFound('cutting-plan');
  const { plan } = found;
  const purchase = plan.purchases.find((one) => one.fabric === fabric);
  const inStash = fabricOfKey(store, fabric);
  const isNew = !fabricIdSchema.safeParse(fabric).success;
  if (purchase === undefined || (inStash === null && !isNew)) {
    return failure<Problem>({ code: 'plan-changed' });
  }
  const name = inStash?.name ?? listNameOf(plan.setup, fabric) ?? 'Fabric';
  return recordChange(store, `Bought “${name}” for “${project.value.name}”`, (writable) => {
    const bought = inStash ?? addFabric(writable, plainFabric(name, purchase.width));
    const size = { width: lengthFromUnits(purchase.width), length: lengthFromUnits(purchase.length) };
    const piece = { kind: 'yardage', kindId: null, unitLength: null, size, costMinor, on, note: '' } as const;
    const { pieceId } = addBought(writable, bought.seq, piece);
    assignPurchaseToPlan(writable, found, fabric, { fabricId: bought.id, pieceId, ...size });
    return success({});
  });
}

/** The fabric of the stash that the plan's key names; null if the key is only a name or the fabric is gone. */
function fabricOfKey(store: ReadableStore, key: string): FabricRef | null {
  const found = fabricIdSchema.safeParse(key).success ? findFabric(store, key) : null;
  return found?.ok === true ? found.value : null;
}

/** A fabric of which only the name is known. */
function plainFabric(name: string, width: number): FabricDetails {
  return {
    name,
    print: '',
    colorWords: '',
    fiber: '',
    direction: 'any',
    width: lengthFromUnits(width),
    isWashed: false,
    supplier: '',
    place: '',
    swatch: NO_COLOR,
    notes: '',
  };
}
