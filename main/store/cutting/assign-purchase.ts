import type { KeptPlan } from '#core/domain/cutting-plan';
import { fabricKeyOf } from '#core/domain/cutting-setup';
import { type FabricPieceId, type FabricId, fabricIdSchema, type ProjectId } from '#core/domain/ids';
import { CUTTING_PLAN } from '#core/stash/shopping/needs-of-plan';
import { type PlanRef, plansOfOpenProjects } from './cutting-rows';
import { setPlanAside } from './plan-holds';
import { updateRow, type WritableStore } from '../base/handles';

/** A purchased piece, of the length in the plan. */
export interface Bought {
  readonly fabricId: FabricId;
  readonly pieceId: FabricPieceId;
  readonly width: number;
  readonly length: number;
}

/** Lets a plan cut a purchased piece, and sets aside what it cuts of it; `key` is what the plan called the fabric until now. */
export function assignPurchaseToPlan(
  store: WritableStore,
  { id, plan, holds }: PlanRef,
  key: string,
  bought: Bought,
): void {
  const now = withBought(plan, key, bought);
  const pieces = now.pieces.filter(({ pieceId }) => pieceId === bought.pieceId);
  updateRow(store, 'cutting_plan', id, {
    plan_json: JSON.stringify(now),
    holds_json: JSON.stringify([...holds, ...setPlanAside(store, { ...now, pieces }, [])]),
  });
}

/**
 * Finds the saved plan that asked for a piece like this for one of the needs, and lets it cut the piece. A piece of another size, or of
 * another fabric than the plan cuts already, needs a new plan.
 */
export function assignPurchaseByNeeds(
  store: WritableStore,
  needs: readonly { readonly projectId: ProjectId; readonly source: string; readonly name: string }[],
  bought: Bought,
): void {
  const ofPlans = needs.filter(({ source }) => source === CUTTING_PLAN);
  if (ofPlans.length === 0) return;
  for (const saved of plansOfOpenProjects(store)) {
    const { setup, purchases } = saved.plan;
    const asked = setup.lines.filter((line) =>
      ofPlans.some((need) => need.projectId === line.projectId && need.name === line.fabric),
    );
    const keys = new Set(asked.map((line) => fabricKeyOf(setup, line)));
    const purchase = purchases.find(
      ({ fabric, width, length }) =>
        keys.has(fabric) && width === bought.width && length === bought.length && canBe(fabric, bought),
    );
    if (purchase === undefined) continue;
    assignPurchaseToPlan(store, saved, purchase.fabric, bought);
    return;
  }
}

/** Whether a purchase can be the fabric of the plan: the same one, if the plan names a fabric of the stash; otherwise any. */
function canBe(key: string, bought: Bought): boolean {
  return key === bought.fabricId || !fabricIdSchema.safeParse(key).success;
}

/** The same plan, with fabric to buy replaced by the piece that was bought. */
function withBought(
  plan: KeptPlan,
  key: string,
  { fabricId: bought, pieceId, width, length }: Bought,
): KeptPlan {
  const { setup } = plan;
  const asked = setup.lines.filter((line) => fabricKeyOf(setup, line) === key);
  const isAsked = (one: { readonly projectId: string; readonly fabric: string }) =>
    asked.some((line) => line.projectId === one.projectId && line.fabric === one.fabric);
  const names = new Map(asked.map((line) => [`${line.projectId} ${line.fabric}`, line]));
  return {
    ...plan,
    setup: {
      ...setup,
      fabricChoices: [
        ...setup.fabricChoices.filter((choice) => !isAsked(choice)),
        ...[...names.values()].map((line) => ({
          projectId: line.projectId,
          fabric: line.fabric,
          fabricId: bought,
        })),
      ],
    },
    pieces: plan.pieces.map((piece) => {
      if (piece.fabric !== key) return piece;
      return { ...piece, fabric: bought, pieceId: piece.pieceId ?? pieceId };
    }),
    purchases: plan.purchases.filter((one) => one.fabric !== key),
    plannedWith: [...plan.plannedWith, { pieceId, width, length }],
  };
}
