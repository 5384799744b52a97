import { roundUpTo } from '#core/units/rounding';

type StripJoin = 'diagonal' | 'straight';

/** Length that one join takes: a strip width if diagonal, both seam allowances if straight. */
export function joinCost(join: StripJoin, strip: number, seam: number): number {
  return join === 'diagonal' ? strip : 2 * seam;
}

/** Length of `count` strips joined end to end. */
export function joinedLength(count: number, stripLength: number, cost: number): number {
  return count * stripLength - (count - 1) * cost;
}

/** Fewest strips, at least one, whose joined length reaches `needed`; null when a strip is no longer than a join takes. */
export function stripsNeeded(needed: number, stripLength: number, cost: number): number | null {
  const gained = stripLength - cost;
  if (gained <= 0) return null;
  const count = Math.max(1, roundUpTo((needed - cost) / gained, 1));
  return joinedLength(count, stripLength, cost) >= needed ? count : count + 1;
}
