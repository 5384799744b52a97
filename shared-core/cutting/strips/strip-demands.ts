import type { StripModel } from './strip-model';

/** A limit on the number of strips of height number `level` or higher: at least `count` of them, or at most. */
export interface StripDemand {
  readonly level: number;
  readonly isLeast: boolean;
  readonly count: number;
}

/** The demands on a strip program with its prices: first the prices of the types, then those of the demands. */
export interface PricedDemands {
  readonly model: StripModel;
  readonly demands: readonly StripDemand[];
  readonly prices: Float64Array;
}

/** What a strip of this height contributes to a demand. "At most" counts as "at least" with the opposite sign. */
export function demandShare(model: StripModel, { level, isLeast }: StripDemand, height: number): number {
  if (height < model.heights[level]!) return 0;
  return isLeast ? 1 : -1;
}

/** A strip's height less its contribution to the demands at their prices. */
export function heightLeft({ model, demands, prices }: PricedDemands, height: number): number {
  return demands.reduce((left, demand, index) => {
    const price = Math.max(0, prices[model.types + index]!);
    return left - price * demandShare(model, demand, height);
  }, height);
}

/** The same for every height, with the prices of the demands scaled so that no result is negative. */
export function heightsLeft(priced: PricedDemands): {
  readonly heights: Float64Array;
  readonly scale: number;
} {
  const { heights } = priced.model;
  const given = Float64Array.from(heights, (height) => height - heightLeft(priced, height));
  const scale = 1 / heights.reduce((most, height, s) => Math.max(most, given[s]! / height), 1);
  return {
    heights: Float64Array.from(heights, (height, s) => Math.max(0, height - scale * given[s]!)),
    scale,
  };
}
