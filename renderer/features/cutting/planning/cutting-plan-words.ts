import { assertNever } from '#core/assert-never';
import { cutSteps, lengthCut } from '#core/cutting/tree/cut-steps';
import type { JobPlan, PatchHelp, Purchase, UnplacedPatch } from '#core/cutting/tree/cutting-job';
import type { CuttingWish } from '#core/domain/cutting-setup';
import { formatLength } from '#core/units/format-length';
import { lengthFromUnits } from '#core/units/length';
import { type RoundingDirection, roundTo } from '#core/units/rounding';
import type { LengthDisplay } from '#core/units/unit-system';
import { orList } from '#renderer/text/field-problems';

export const WISH_WORDS: Readonly<Record<CuttingWish, string>> = {
  'buy-least': 'Buy as little as possible',
  'least-fabric': 'Use as little fabric as possible',
  'fewest-pieces': 'Cut into few pieces of fabric',
  'fewest-cuts': 'Make few cuts',
  'largest-leftover': 'Keep one large leftover',
};

/** Length of fabric that a plan cuts off all pieces together, 1/320 mm. */
export function fabricTaken(plan: JobPlan): number {
  return plan.pieces.reduce((sum, piece) => sum + lengthCut(cutSteps(piece.tree)), 0);
}

/** The most rounds of cuts that any piece takes: the first round cuts strips, the next cuts across them, and so on. */
export function mostRounds(plan: JobPlan): number {
  return Math.max(0, ...plan.pieces.map(({ stages }) => stages));
}

/** How much more fabric a plan uses than its patches alone, which is the least any plan can use. */
export function gapWords(plan: JobPlan): string {
  if (plan.leastArea === 0) return '';
  if (plan.gap >= 1) {
    return `Uses ${(1 + plan.gap).toFixed(1)} times the fabric of the patches alone, as small jobs often do.`;
  }
  if (plan.gap === 0) return 'No fabric wasted. This is as good as it gets.';
  const more = plan.gap < 0.001 ? 'less than 0.1%' : percentWords(plan.gap, 'nearest');
  return `Uses ${more} more fabric than the patches alone. Often no plan can do better.`;
}

/** How a length to buy compares with the least that a plan of this kind needs; empty when no least length is proved. */
export function purchaseGapWords(
  { exactLength, leastLength }: Purchase,
  straighten: number,
  display: LengthDisplay,
): string {
  if (leastLength <= 0) return '';
  const gap = Math.max(0, (exactLength - straighten - leastLength) / leastLength);
  const least = formatLength(lengthFromUnits(leastLength + straighten), display, 'up');
  return gap < SAME_LENGTH
    ? `Cut as shown it takes ${least}, and no plan of this kind needs less.`
    : `Takes at most ${percentWords(gap, 'up')} more than the best plan of this kind, which needs ${least} or more.`;
}

/** Lengths that differ by less than this part are the same: the planner proves the least length with floating-point numbers. */
const SAME_LENGTH = 0.0005;

function percentWords(part: number, direction: RoundingDirection): string {
  return part < 0.1
    ? `${roundTo(part * 100, 0.1, direction).toFixed(1)}%`
    : `${String(roundTo(part * 100, 1, direction))}%`;
}

/** Why patches cannot be cut. */
export function unplacedWords(reason: UnplacedPatch['reason']): string {
  switch (reason) {
    case 'no-fabric':
      return 'there is no fabric for it';
    case 'wider-than-any-fabric':
      return 'wider than any of its fabric';
    case 'longer-than-any-fabric':
      return 'longer than any of its fabric';
    case 'stash-used-up':
      return 'the pieces you may cut are not enough';
    default:
      return assertNever(reason);
  }
}

/** What would help, as one sentence; empty when nothing is known to help. */
export function helpWords(helps: readonly PatchHelp[], display: LengthDisplay): string {
  const words = helps.map((help) => {
    switch (help.code) {
      case 'turn-it':
        return 'let it be turned sideways';
      case 'piece-it':
        return 'piece it from two';
      case 'wider-fabric':
        return `choose fabric ${formatLength(lengthFromUnits(help.width), display, 'up')} wide or wider`;
      case 'longer-fabric':
        return `choose a piece ${formatLength(lengthFromUnits(help.length), display, 'up')} long or longer`;
      default:
        return assertNever(help);
    }
  });
  const sentence = orList(words);
  return sentence === '' ? '' : `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`;
}
