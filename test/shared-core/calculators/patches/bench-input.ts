import type { Calculation } from '#core/calculators/calculator';
import { patchSize, type PatchSizeDetails } from '#core/calculators/patches/patch-size/patch-size';
import type { PatchSizeInput } from '#core/calculators/patches/patch-size/input';
import type { UnitSizes } from '#core/calculators/patches/patch-units';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { type Length, lengthFromInches, UNITS_PER_INCH } from '#core/units/length';

export const inches = lengthFromInches;

/** Starting input of a new workshop, with what the test is about laid over it. */
export function patchInput(unit: UnitSizes, changes: Partial<PatchSizeInput> = {}): PatchSizeInput {
  const measurements = {
    outline: { shape: 'square', side: inches(40) },
    hole: null,
    hasSlit: false,
    settings: STARTING_SETTINGS,
  } as const;
  return { ...patchSize.fromProject(measurements), unit, ...changes };
}

export function answerOf(
  unit: UnitSizes,
  changes: Partial<PatchSizeInput> = {},
): Calculation<PatchSizeDetails> {
  const answer = patchSize.calculate(patchInput(unit, changes));
  if (!answer.ok) throw new Error(answer.error.says);
  return answer.value;
}

export function detailsOf(unit: UnitSizes, changes: Partial<PatchSizeInput> = {}): PatchSizeDetails {
  return answerOf(unit, changes).details;
}

/** Rounded cut width of the patch of this name (of the first, if none is named), in inches. */
export function cutInches(unit: UnitSizes, name?: string, changes: Partial<PatchSizeInput> = {}): number {
  const { patches } = detailsOf(unit, changes);
  const patch = patches.find((one) => name === undefined || one.name === name);
  if (patch === undefined) throw new Error(`No patch ${String(name)}`);
  return patch.across / UNITS_PER_INCH;
}

export function exactInches(unit: UnitSizes, name?: string, changes: Partial<PatchSizeInput> = {}): number {
  const { patches } = detailsOf(unit, changes);
  return (
    (patches.find((one) => name === undefined || one.name === name)?.acrossExact ?? NaN) / UNITS_PER_INCH
  );
}

export const hst = (side: Length, atATime: 'two' | 'four' | 'eight' = 'two'): UnitSizes => ({
  unit: 'half-square-triangles',
  side,
  atATime,
});
export const sideTriangles = (block: Length): UnitSizes => ({ unit: 'side-setting-triangles', block });
export const cornerTriangles = (block: Length): UnitSizes => ({ unit: 'corner-setting-triangles', block });
export const geese = (height: Length): UnitSizes => ({
  unit: 'flying-geese',
  height,
  method: 'four-at-a-time',
});
