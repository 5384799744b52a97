import { costOfArea, type KnownCost, NO_COST, addCosts } from '#core/units/known-cost';

/**
 * One step of a fabric's stock: fabric that came in at a cost, or fabric that went out. Areas are in (1/320 mm)², costs in
 * whole minor units, null if not known; neither is negative.
 */
export type StockStep<Use> =
  | { readonly kind: 'in'; readonly area: number; readonly costMinor: number | null }
  | { readonly kind: 'out'; readonly area: number; readonly use: Use };

export interface StockCost<Use> {
  /** What each step out cost, in the order of the steps out. */
  readonly used: readonly { readonly use: Use; readonly cost: KnownCost }[];
  /** The fabric that is left, oldest first, and what it cost. */
  readonly left: readonly { readonly area: number; readonly cost: KnownCost }[];
}

interface Layer {
  readonly area: number;
  readonly costMinor: number | null;
}

/**
 * Values used fabric at the cost of the fabric that came in first. The costs of what was used and what is left always add up
 * to the cost of what came in. Fabric used before any came in is charged to the next that comes, and costs nothing until then.
 * The steps are in the order of the ledger.
 */
export function firstInFirstOut<Use>(steps: readonly StockStep<Use>[]): StockCost<Use> {
  const layers = steps.filter((step) => step.kind === 'in');
  const outs = steps.filter((step) => step.kind === 'out');
  // Only the order within the steps in and within the steps out matters, not how the two are mixed.
  let [at, usedOfLayer] = [0, 0];
  const used = outs.map(({ area, use }) => {
    let [open, cost] = [area, NO_COST];
    for (let layer = layers[at]; layer !== undefined && open > 0; layer = layers[at]) {
      const part = Math.min(open, layer.area - usedOfLayer);
      cost = addCosts([cost, costOfPart(layer, usedOfLayer, usedOfLayer + part)]);
      [open, usedOfLayer] = [open - part, usedOfLayer + part];
      if (usedOfLayer >= layer.area) [at, usedOfLayer] = [at + 1, 0];
    }
    return { use, cost };
  });
  const left = layers.slice(at).map((layer, index) => {
    const gone = index === 0 ? usedOfLayer : 0;
    return { area: layer.area - gone, cost: costOfPart(layer, gone, layer.area) };
  });
  return { used, left };
}

/** The cost of the part of a layer between two areas of it. Consecutive parts add up to the cost of the whole. */
function costOfPart({ area, costMinor }: Layer, from: number, to: number): KnownCost {
  if (costMinor === null) return costOfArea(null, to - from);
  const whole = { area, costMinor };
  return costOfArea(costOfFirst(whole, to) - costOfFirst(whole, from), to - from);
}

/** The cost of the first `used` of an area, to the nearest minor unit. */
function costOfFirst(
  { area, costMinor }: { readonly area: number; readonly costMinor: number },
  used: number,
): number {
  if (used >= area) return costMinor;
  return Number((2n * BigInt(costMinor) * BigInt(used) + BigInt(area)) / (2n * BigInt(area)));
}
