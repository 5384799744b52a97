import type { StashPrice } from '#core/domain/stash';
import { roundNearest } from '#core/units/rounding';

/** What an area costs at this price, to the nearest minor unit; nothing where the price is for no fabric at all. */
export function costAgain(area: number, { minor, area: per }: StashPrice): number {
  return per <= 0 ? 0 : roundNearest((area / per) * minor, 1);
}
