/**
 * One step of a fabric's stock, in the order it was booked: fabric that came in at a cost, or fabric that went out.
 * Amounts are areas in (1/320 mm)², costs whole minor units; neither is negative.
 */
export type StockStep<Taker> =
  | { readonly kind: 'in'; readonly area: number; readonly costMinor: number }
  | { readonly kind: 'out'; readonly area: number; readonly taker: Taker };

export interface StockCost<Taker> {
  /** What each step out cost, in the order of the steps out. */
  readonly taken: readonly { readonly taker: Taker; readonly costMinor: number }[];
  /** What is still there, the oldest first, and what it cost. */
  readonly left: readonly { readonly area: number; readonly costMinor: number }[];
}

interface Layer {
  readonly area: number;
  readonly costMinor: number;
}

/**
 * Counts what was used at the cost of the fabric that came in first, to the last minor unit: what was taken and what is
 * left always add up to what came in. Fabric taken from nothing is paid for by the fabric that comes next, and costs
 * nothing while none does.
 */
export function firstInFirstOut<Taker>(steps: readonly StockStep<Taker>[]): StockCost<Taker> {
  const layers = steps.filter((step) => step.kind === 'in');
  const outs = steps.filter((step) => step.kind === 'out');
  // Who takes from which layer depends on the order among those that come and among those that go, not between the two.
  let [at, used] = [0, 0];
  const taken = outs.map(({ area, taker }) => {
    let [open, costMinor] = [area, 0];
    for (let layer = layers[at]; layer !== undefined && open > 0; layer = layers[at]) {
      const part = Math.min(open, layer.area - used);
      costMinor += costOfFirst(layer, used + part) - costOfFirst(layer, used);
      [open, used] = [open - part, used + part];
      if (used >= layer.area) [at, used] = [at + 1, 0];
    }
    return { taker, costMinor };
  });
  const left = layers.slice(at).map((layer, index) => {
    const gone = index === 0 ? used : 0;
    return { area: layer.area - gone, costMinor: layer.costMinor - costOfFirst(layer, gone) };
  });
  return { taken, left };
}

/** The cost of the first `used` of a layer, to the nearest minor unit: parts taken one after the other add up to the whole. */
function costOfFirst({ area, costMinor }: Layer, used: number): number {
  if (used >= area) return costMinor;
  return Number((2n * BigInt(costMinor) * BigInt(used) + BigInt(area)) / (2n * BigInt(area)));
}
