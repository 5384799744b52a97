import type { KeptPlan } from '#core/domain/cutting-plan';
import { fabricKeyOf, type LineSource } from '#core/domain/cutting-setup';
import { type FabricId, fabricIdSchema, type ProjectId } from '#core/domain/ids';
import { lengthFromUnits } from '#core/units/length';
import type { FabricNeed } from './fabric-need';

/** The source of a need that comes from a cutting plan and from no single answer. */
export const CUTTING_PLAN = 'cutting-plan';

/** What a saved plan says to buy, for the project whose cut list names the fabric. The plan has counted its pieces already. */
interface NeedOfPlan extends Pick<
  FabricNeed,
  | 'projectId'
  | 'source'
  | 'name'
  | 'kind'
  | 'amount'
  | 'fabricWidth'
  | 'extraPercent'
  | 'package'
  | 'fabricId'
  | 'ignores'
> {
  readonly source: typeof CUTTING_PLAN;
}

export function needsOfPlan({ setup, purchases, plannedWith }: KeptPlan): readonly NeedOfPlan[] {
  const ignores = plannedWith.map(({ pieceId }) => pieceId);
  return purchases.flatMap((purchase) => {
    const line = setup.lines.find((one) => fabricKeyOf(setup, one) === purchase.fabric);
    if (line === undefined || purchase.exactLength === 0) return [];
    const patch = { width: purchase.width, length: purchase.exactLength, count: 1, mayTurn: false };
    return [
      {
        projectId: line.projectId,
        source: CUTTING_PLAN,
        name: line.fabric,
        kind: 'yardage',
        amount: { measure: 'patches', patches: [patch] },
        fabricWidth: lengthFromUnits(purchase.width),
        extraPercent: 0,
        package: null,
        fabricId: chosenFabric(purchase.fabric),
        ignores,
      },
    ];
  });
}

/** The saved answers whose needs the plan includes. */
export function sourcesOfPlan({ setup }: KeptPlan): readonly LineSource[] {
  return setup.taken.map(({ source }) => source);
}

/** The fabric chosen in the plan for a name of a project's cut list; null when it is planned as new fabric or not chosen. */
export function fabricInPlan({ setup }: KeptPlan, projectId: ProjectId, name: string): FabricId | null {
  const choice = setup.fabricChoices.find((one) => one.projectId === projectId && one.fabric === name);
  return choice?.fabricId ?? null;
}

function chosenFabric(key: string): FabricId | null {
  const id = fabricIdSchema.safeParse(key);
  return id.success ? id.data : null;
}
