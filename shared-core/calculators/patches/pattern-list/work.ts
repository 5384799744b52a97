import { failure, type Result, success } from '#core/result';
import { type Length, lengthFromUnits, lengthMaximum, lengthMinimum } from '#core/units/length';
import type { Refusal } from '#core/calculators/calculator';
import { yardageUp } from '#core/calculators/quantities';
import { joinCost, joinedLength } from '#core/calculators/binding/strip-joins';
import { outlineBounds, outlinePerimeter } from '#core/calculators/outline/outline-measures';
import { type FabricNeeded, fabricNeeded, lengthPerFabric, type PatchDemand } from '../fabric-needed';
import { fabricRefusal } from '../patch-size/work';
import type { PatternListInput, PatternPatch } from './input';

/** What one fabric takes, beside what the pattern asks for. Lengths along the fabric, in 1/320 mm. */
export interface FabricOfPattern {
  readonly fabric: string;
  readonly needed: Length;
  /** Null if the pattern does not say. */
  readonly stated: Length | null;
  /** less: a shorter length would do, as shops cut it. short: its own patches take more. */
  readonly verdict: 'enough' | 'less' | 'short' | null;
}

export interface BindingOfPattern {
  readonly needed: number;
  readonly given: number;
  readonly strips: number;
}

export interface PatternListWork {
  readonly input: PatternListInput;
  readonly needed: FabricNeeded;
  readonly fabrics: readonly FabricOfPattern[];
  readonly binding: BindingOfPattern | null;
  /** The size that the pattern finishes at, where the outline has another. */
  readonly otherSize: { readonly width: Length; readonly length: Length } | null;
}

export function workOutPattern(input: PatternListInput): Result<PatternListWork, Refusal> {
  const demands = input.patches.map((patch) => demandOf(patch, input.fabricWidth));
  const needed = fabricNeeded(demands, input.fabricWidth, input.seamAllowance);
  if (!needed.ok) return failure({ ...fabricRefusal(needed.error, input.fabricWidth), field: ['patches'] });
  return success({
    input,
    needed: needed.value,
    fabrics: fabricsOf(input, needed.value),
    binding: bindingOf(input),
    otherSize: otherSizeOf(input),
  });
}

/** The shorter side goes across the strip. A strip across the fabric is as long as the fabric is wide. */
function demandOf({ fabric, cutAs, width, length, count }: PatternPatch, fabricWidth: Length): PatchDemand {
  const isStrip = cutAs === 'strip';
  const across = isStrip ? width : lengthMinimum(width, length);
  const along = isStrip ? fabricWidth : lengthMaximum(width, length);
  return {
    fabric,
    name: 'A patch of the pattern',
    stripWidth: across,
    along: { first: along, pitch: along, count },
    isRectangle: true,
    mayTurn: true,
    mayJoin: false,
  };
}

/** Fabrics with one name are one, in whatever letters the name is written. */
function isSameFabric(one: string, other: string): boolean {
  return one.toLowerCase() === other.toLowerCase();
}

function fabricsOf(input: PatternListInput, { strips }: FabricNeeded): readonly FabricOfPattern[] {
  return lengthPerFabric(strips).map(({ fabric, length: needed }) => {
    const said = input.stated.filter((one) => isSameFabric(one.fabric, fabric));
    const stated =
      said.length === 0 ? null : lengthFromUnits(said.reduce<number>((sum, { length }) => sum + length, 0));
    return { fabric, needed, stated, verdict: stated === null ? null : verdictOf(input, needed, stated) };
  });
}

function verdictOf(
  { yardageStep }: PatternListInput,
  needed: Length,
  stated: Length,
): FabricOfPattern['verdict'] {
  if (needed > stated) return 'short';
  return yardageUp(needed, yardageStep).rounded < stated ? 'less' : 'enough';
}

/** Strips joined on the diagonal, as is usual for binding. */
function bindingOf(input: PatternListInput): BindingOfPattern | null {
  const [strips] = input.bindingStrips;
  if (strips === undefined) return null;
  const cost = joinCost('diagonal', strips.width, input.seamAllowance);
  const given = Math.max(0, joinedLength(strips.count, input.fabricWidth, cost));
  return { needed: outlinePerimeter(input.outline) + input.bindingOverlap, given, strips: strips.count };
}

/** Sizes within one unit are one: an outline may have been worked out. */
function otherSizeOf({ finishedSize, outline }: PatternListInput): PatternListWork['otherSize'] {
  const [size] = finishedSize;
  if (size === undefined) return null;
  const bounds = outlineBounds(outline);
  const isNear = (one: number, other: number) => Math.abs(one - other) <= 1;
  const isSame = isNear(size.width, bounds.width) && isNear(size.length, bounds.length);
  const isTurned = isNear(size.width, bounds.length) && isNear(size.length, bounds.width);
  return isSame || isTurned ? null : size;
}
