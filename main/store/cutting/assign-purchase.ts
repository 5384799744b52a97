import type { KeptPlan } from '#core/domain/cutting-plan';
import { fabricKeyOf } from '#core/domain/cutting-setup';
import { type FabricPieceId, type FabricId, fabricId, type ProjectId } from '#core/domain/ids';
import { CUTTING_PLAN } from '#core/stash/shopping/needs-of-plan';
import { type PlanRef, plansOfOpenProjects } from './cutting-rows';
import { updateRow, type WritableStore } from '../base/handles';

/** A piece that was bought, as long as the plan says. */
export interface Bought {
  readonly fabricId: FabricId;
  readonly pieceId: FabricPieceId;
  readonly width: number;
  readonly length: number;
}

/** Lets a plan cut what was bought from there on; `key` is what the plan called the fabric before. */
export function letPlanCut(store: WritableStore, { id, plan }: PlanRef, key: string, bought: Bought): void {
  updateRow(store, 'cutting_plan', id, { plan_json: JSON.stringify(withBought(plan, key, bought)) });
}

/**
 * Lets the kept plan that asked for a piece cut it, where one of these needs is a plan's and the piece is just what it says to buy.
 * A piece of another size, or of another fabric than the plan cuts already, is for the planner to think over.
 */
export function letPlanOfNeedsCut(
  store: WritableStore,
  needs: readonly { readonly projectId: ProjectId; readonly source: string; readonly name: string }[],
  bought: Bought,
): void {
  const ofPlans = needs.filter(({ source }) => source === CUTTING_PLAN);
  if (ofPlans.length === 0) return;
  for (const kept of plansOfOpenProjects(store)) {
    const { setup, purchases } = kept.plan;
    const asked = setup.lines.filter((line) =>
      ofPlans.some((need) => need.projectId === line.projectId && need.name === line.fabric),
    );
    const keys = new Set(asked.map((line) => fabricKeyOf(setup, line)));
    const purchase = purchases.find(
      ({ fabric, width, length }) =>
        keys.has(fabric) && width === bought.width && length === bought.length && mayBe(fabric, bought),
    );
    if (purchase === undefined) continue;
    letPlanCut(store, kept, purchase.fabric, bought);
    return;
  }
}

/** More of a fabric that the plan cuts from the stash as well is that fabric; new fabric may be any. */
function mayBe(key: string, bought: Bought): boolean {
  return key === bought.fabricId || !fabricId.safeParse(key).success;
}

/** The same plan with fabric to buy turned into the piece that was bought. */
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
