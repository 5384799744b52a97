import { failure, type Result, success } from '#core/result';
import type { Length } from '#core/units/length';
import { roundUpTo } from '#core/units/rounding';
import type { Refusal } from '#core/calculators/calculator';
import { givenLength, lengthUp } from '#core/calculators/quantities';
import { fabricNeeded, type FabricNeeded, type ShortFabric, type PatchDemand } from '../fabric-needed';
import { type CutChoice, type SizedPatch, sizedPatch } from '../cut-sizes';
import type { PatchSizeInput } from './input';
import type { FromCut, UnitPlan } from '../patch-unit';
import { patchUnits, planUnit, type UnitSizes } from '../patch-units';
import { fabricOfRole, type UnitWithFabrics } from './unit-fabrics';

/** The values behind the figures, tables, steps, notes and drawing. */
export interface PatchSizeWork {
  readonly input: PatchSizeInput;
  /** Null if the input has finished sizes. */
  readonly fromCut: FromCut<{ readonly unit: string }> | null;
  readonly plan: UnitPlan;
  /** In the order of the plan's patches. */
  readonly sized: readonly SizedPatch[];
  /** The first few that differ in size or fabric; each has a letter in the drawing. */
  readonly drawn: readonly SizedPatch[];
  readonly needed: FabricNeeded;
  /** Rotary cuts through one layer: strips, squared ends, crosscuts and diagonals. */
  readonly cuts: number;
}

export function workOutPatches(input: PatchSizeInput): Result<PatchSizeWork, Refusal> {
  const { unit, seamAllowance } = input;
  const fromCut = input.sizesAre === 'cut' ? patchUnits[unit.unit].fromCut(unit, seamAllowance) : null;
  const sizes = (fromCut?.sizes ?? unit) as UnitSizes;
  const numbers = Object.values(sizes).filter((size) => typeof size === 'number');
  if (numbers.some((size) => !(size >= 1))) return failure(tooSmall(input));
  const plan = planUnit(sizes, seamAllowance);
  const choice = fromCut === null ? input : choiceForCut(input);
  const sized = plan.patches.map((patch) => sizedPatch(patch, input.count, choice));
  const fromFabric = sized.filter(isFromFabric);
  const needed = fabricNeeded(
    fromFabric.map((one) => demandOf(one, unit)),
    input.fabricWidth,
    seamAllowance,
  );
  if (!needed.ok) return failure(fabricRefusal(needed.error, input.fabricWidth));
  const cuts = cutsOf(fromFabric, needed.value);
  const drawn = distinctPatches(fromFabric).slice(0, MOST_DRAWN);
  return success({ input, fromCut, plan, sized, drawn, needed: needed.value, cuts });
}

/** What was entered as cut is cut already. The patches that go with it get their exact size, rounded up. */
function choiceForCut({ unit, cutStep }: PatchSizeInput): CutChoice {
  const entered = Object.values(unit).filter((size) => typeof size === 'number');
  return { rounding: 'exact', cutStep, entered };
}

const MOST_DRAWN = 4;

/** The letter of a patch in the drawing. */
export function patchLetter(drawnAt: number): string {
  return 'ABCD'.charAt(drawnAt);
}

function distinctPatches(sized: readonly SizedPatch[]): readonly SizedPatch[] {
  const known = new Set<string>();
  return sized.filter(({ patch, across, along }) => {
    const key = [patch.role, across.exact, along.exact].join(' ');
    return known.has(key) ? false : known.add(key);
  });
}

/** Blocks and tops are sewn already and take no fabric of their own. */
export function isFromFabric({ patch }: SizedPatch): boolean {
  return patch.source !== 'sewn';
}

function demandOf({ patch, across, strip }: SizedPatch, unit: UnitWithFabrics): PatchDemand {
  return {
    fabric: fabricOfRole(unit, patch.role),
    name: patch.name,
    stripWidth: across.rounded,
    along: strip,
    isRectangle: patch.shape.isRectangle,
    mayTurn: true,
    mayJoin: patch.source === 'fabric-joined',
  };
}

/** Rotary cuts through one layer: two for each strip, one to square each fabric, one for each patch, and the cuts inside it. */
export function cutsOf(
  sized: readonly Pick<SizedPatch, 'patch' | 'count'>[],
  { strips }: Pick<FabricNeeded, 'strips'>,
): number {
  const alongFabric = strips.reduce((sum, { strips: count }) => sum + 2 * count + 1, 0);
  return sized.reduce((sum, { patch, count }) => sum + count * (1 + patch.shape.cuts.length), alongFabric);
}

function tooSmall({ seamAllowance }: PatchSizeInput): Refusal {
  return {
    code: 'cut-too-small',
    field: ['unit'],
    says: 'With a seam of {seam} on every side, nothing is left. The cut patch is too small for this unit.',
    values: { seam: givenLength(seamAllowance) },
  };
}

/** A patch is wider than the fabric, or all patches take far too much fabric. */
export function fabricRefusal({ code, demand }: ShortFabric, fabricWidth: Length): Refusal {
  if (code === 'too-much-fabric') {
    return {
      code,
      field: ['count'],
      says: 'This takes more than 270 yards (250 m) of fabric. Check the sizes and the count.',
      values: {},
    };
  }
  const length = lengthUp(roundUpTo(demand.along.first, 1));
  return {
    code,
    field: ['fabricWidth'],
    says: `${demand.name}: {across} by {along} is too wide for the fabric, which is {usable} wide.`,
    values: { across: givenLength(demand.stripWidth), along: length, usable: givenLength(fabricWidth) },
  };
}
