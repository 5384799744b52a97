import { assertNever } from '#core/assert-never';
import { cutSteps, lengthCut } from '#core/cutting/tree/cut-steps';
import type { JobPlan, PatchHelp, Purchase, UnplacedPatch } from '#core/cutting/tree/cutting-job';
import type { CuttingWish } from '#core/domain/cutting-setup';
import { formatLength } from '#core/units/format-length';
import { lengthFromUnits } from '#core/units/length';
import type { LengthDisplay } from '#core/units/unit-system';
import { orList } from '#renderer/text/field-problems';

export const WISH_WORDS: Readonly<Record<CuttingWish, string>> = {
  'buy-least': 'Buy as little as can be',
  'least-fabric': 'Use as little fabric as can be',
  'fewest-pieces': 'Cut into few pieces',
  'fewest-cuts': 'Make few cuts',
  'largest-leftover': 'Keep one large leftover',
};

/** Length of fabric a plan takes off all pieces together, 1/320 mm. */
export function fabricTaken(plan: JobPlan): number {
  return plan.pieces.reduce((sum, piece) => sum + lengthCut(cutSteps(piece.tree)), 0);
}

export function mostStages(plan: JobPlan): number {
  return Math.max(0, ...plan.pieces.map(({ stages }) => stages));
}

/** How far a plan can be from the best: against the area of its patches, which no cutting can go below. */
export function gapWords(plan: JobPlan): string {
  if (plan.leastArea === 0) return '';
  if (plan.gap >= 1) {
    return `It uses ${(1 + plan.gap).toFixed(1)} times the fabric of the patches alone, as small jobs often do.`;
  }
  const percent = percentWords(plan.gap);
  return plan.gap < 0.0005
    ? 'Not a thread is wasted: nothing can be better.'
    : `At most ${percent} from the best possible: so much more than the patches themselves is used, and often no plan can do without it.`;
}

/** How far a length to buy can be from the least such a plan needs; empty where nothing was proved. */
export function purchaseGapWords(
  { exactLength, leastLength }: Purchase,
  straighten: number,
  display: LengthDisplay,
): string {
  if (leastLength <= 0) return '';
  const gap = Math.max(0, (exactLength - straighten - leastLength) / leastLength);
  const least = formatLength(lengthFromUnits(leastLength + straighten), display, 'up');
  return gap < 0.0005
    ? `Cut as shown it takes ${least}, and no plan of this kind needs less.`
    : `At most ${percentWords(gap)} from the best of this kind, which needs ${least} or more.`;
}

function percentWords(part: number): string {
  const percent = part * 100;
  if (percent < 0.1) return '0.1 %';
  return `${percent < 10 ? percent.toFixed(1) : String(Math.ceil(percent))} %`;
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
      return 'the pieces that may be cut do not reach';
    default:
      return assertNever(reason);
  }
}

/** What would help, as one sentence; empty where nothing is known to. */
export function helpWords(helps: readonly PatchHelp[], display: LengthDisplay): string {
  const words = helps.map((help) => {
    switch (help.code) {
      case 'turn-it':
        return 'let it be turned';
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
