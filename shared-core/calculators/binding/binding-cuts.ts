import type { PatchList } from '#core/domain/patch-list';
import type { Length } from '#core/units/length';

/** What a binding hands to a cutting plan: strips, or the fabric that bias is cut from. A plan may turn either. */
export function bindingCuts(width: Length, length: Length, count = 1): PatchList {
  return [{ fabric: 'Binding', width, length, count, mayTurn: true }];
}
