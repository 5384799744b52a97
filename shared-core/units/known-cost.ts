/**
 * What fabric cost, as far as it is known: the sum of the known costs in minor units, and the area of the fabric whose cost is not known,
 * in (1/320 mm)².
 */
export interface KnownCost {
  readonly minor: number;
  readonly unpricedArea: number;
}

export const NO_COST: KnownCost = { minor: 0, unpricedArea: 0 };

/** The cost of an area of fabric; `minor` is null if it is not known. */
export function costOfArea(minor: number | null, area: number): KnownCost {
  return minor === null ? { minor: 0, unpricedArea: area } : { minor, unpricedArea: 0 };
}

export function addCosts(costs: readonly KnownCost[]): KnownCost {
  return costs.reduce(
    (sum, { minor, unpricedArea }) => ({
      minor: sum.minor + minor,
      unpricedArea: sum.unpricedArea + unpricedArea,
    }),
    NO_COST,
  );
}
