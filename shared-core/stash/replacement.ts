import type { StashPrice } from '#core/domain/stash';
import { roundNearest } from '#core/units/rounding';

/** What an area costs at this price, to the nearest minor unit; 0 if the price is for an area of 0. */
export function costAgain(area: number, { minor, area: pricedArea }: StashPrice): number {
  return pricedArea <= 0 ? 0 : roundNearest((area / pricedArea) * minor, 1);
}
