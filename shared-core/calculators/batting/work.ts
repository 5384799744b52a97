import { type Length, lengthFromUnits } from '#core/units/length';
import type { BattingInput } from './input';

interface Sheet {
  readonly width: Length;
  readonly length: Length;
}

/** A package that covers the sheet one way round or the other; `spare` is what is left of it, in (1/320 mm)². */
export interface FittingPackage {
  readonly name: string;
  readonly width: Length;
  readonly length: Length;
  readonly isTurned: boolean;
  readonly spare: number;
}

/** A length off a roll: `widths` of it side by side, joined edge to edge without a seam allowance. */
export interface RollCut {
  readonly name: string;
  readonly width: Length;
  readonly widths: number;
  readonly each: Length;
  readonly rollLength: Length;
}

/** More joins than this and the batting is patchwork itself. */
export const MOST_WIDTHS = 12;

/** Packages that cover, the one with the least left over first; of equal ones the first in the maker's list. */
export function fittingPackages(sheet: Sheet, packages: BattingInput['packages']): readonly FittingPackage[] {
  const covers = (width: number, length: number) => width >= sheet.width && length >= sheet.length;
  return packages
    .filter(({ width, length }) => covers(width, length) || covers(length, width))
    .map((one) => ({
      ...one,
      isTurned: !covers(one.width, one.length),
      spare: one.width * one.length - sheet.width * sheet.length,
    }))
    .sort((one, other) => one.spare - other.spare);
}

/** For every roll the better way round: fewer joins first, then less length; fewest joins and least fabric first. */
export function rollCuts(sheet: Sheet, rolls: BattingInput['rolls']): readonly RollCut[] {
  const cuts = rolls.flatMap((roll): readonly RollCut[] => {
    const ways = [cutOffRoll(roll, sheet.width, sheet.length), cutOffRoll(roll, sheet.length, sheet.width)];
    return ways
      .filter(({ widths }) => widths <= MOST_WIDTHS)
      .sort(compareCuts)
      .slice(0, 1);
  });
  return [...cuts].sort(compareCuts);
}

function cutOffRoll(roll: BattingInput['rolls'][number], across: Length, along: Length): RollCut {
  const rest = across % roll.width;
  const widths = (across - rest) / roll.width + (rest > 0 ? 1 : 0);
  const rollLength = lengthFromUnits(Math.min(widths, MOST_WIDTHS + 1) * along);
  return { name: roll.name, width: roll.width, widths, each: along, rollLength };
}

function compareCuts(one: RollCut, other: RollCut): number {
  return one.widths - other.widths || one.rollLength * one.width - other.rollLength * other.width;
}

export interface BattingDetails {
  readonly width: Length;
  readonly length: Length;
  /** Packages that cover, the smallest first; may be empty. */
  readonly packages: readonly FittingPackage[];
  /** The better way off each roll, the best roll first; may be empty. */
  readonly rolls: readonly RollCut[];
}
