import { type Length, lengthTimes } from '#core/units/length';
import type { BattingInput } from './input';

interface Sheet {
  readonly width: Length;
  readonly length: Length;
}

/** A package that covers the sheet, turned if need be. `spare` is the area left over, in (1/320 mm)². */
export interface FittingPackage {
  readonly name: string;
  readonly width: Length;
  readonly length: Length;
  readonly isTurned: boolean;
  readonly spare: number;
}

/** A length off a roll, cut into `widths` that are joined edge to edge without a seam allowance. */
export interface RollCut {
  readonly name: string;
  readonly width: Length;
  readonly widths: number;
  readonly each: Length;
  readonly rollLength: Length;
}

/** More widths than this are a slip in the input, not a batting. */
export const MOST_WIDTHS = 12;

/** Packages that cover, the one with the least left over first; equal ones in the order of the maker's list. */
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

/** The better direction for each roll: fewer joins, then less batting. The rolls come in the same order. */
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
  const rollLength = lengthTimes(along, Math.min(widths, MOST_WIDTHS + 1));
  return { name: roll.name, width: roll.width, widths, each: along, rollLength };
}

function compareCuts(one: RollCut, other: RollCut): number {
  return one.widths - other.widths || one.rollLength * one.width - other.rollLength * other.width;
}

export interface BattingDetails {
  readonly width: Length;
  readonly length: Length;
  /** Packages that cover, the least left over first. May be empty. */
  readonly packages: readonly FittingPackage[];
  /** The better cut off each roll, the best roll first. May be empty. */
  readonly rolls: readonly RollCut[];
}
