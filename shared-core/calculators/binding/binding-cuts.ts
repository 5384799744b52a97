import type { PatchList } from '#core/domain/patch-list';
import type { Length } from '#core/units/length';

/**
 * What a binding hands to a cutting plan: strips, or the fabric that bias is cut from, by the name that the shopping list has for
 * that fabric. A plan may turn either.
 */
export function bindingCuts(fabric: string, width: Length, length: Length, count = 1): PatchList {
  return [{ fabric, width, length, count, mayTurn: true }];
}
