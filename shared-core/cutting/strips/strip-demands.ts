import type { StripModel } from './strip-model';

/** A demand on how many strips are as high as height number `level` or higher: `count` at least, or at most. */
export interface StripDemand {
  readonly level: number;
  readonly isLeast: boolean;
  readonly count: number;
}

/** The demands on a program of strips with its prices: those of the types first, then those of the demands. */
export interface PricedDemands {
  readonly model: StripModel;
  readonly demands: readonly StripDemand[];
  readonly prices: Float64Array;
}

/** What a strip of this height gives to a demand, where "at most" reads "at least" with the sign turned. */
export function demandShare(model: StripModel, { level, isLeast }: StripDemand, height: number): number {
  if (height < model.heights[level]!) return 0;
  return isLeast ? 1 : -1;
}

/** A strip's height less what it gives to the demands at their prices. */
export function heightLeft({ model, demands, prices }: PricedDemands, height: number): number {
  return demands.reduce((left, demand, index) => {
    const price = Math.max(0, prices[model.types + index]!);
    return left - price * demandShare(model, demand, height);
  }, height);
}

/** The same for every height, the prices of the demands scaled so that no more than the height is given. */
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
