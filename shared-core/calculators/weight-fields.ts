import { numberField, percentField, weightField } from '#core/domain/fields';
import { UNITS_PER_METER } from '#core/units/length';

/** Weights by area, with the values that every calculator which weighs a quilt starts from. */

export const STARTING_WEIGHTS = { fabricWeight: 145, battingWeight: 170, seamExtraPercent: 25, packing: 300 };

export function fabricWeightField() {
  return numberField({
    title: 'Weight of the fabric',
    help: 'Weigh a piece of fabric of a known size. 145 is usual for quilting cotton (from memory).',
    unit: 'g per square meter',
    minimum: 10,
    maximum: 1_000,
  });
}

export function battingWeightField(help: string) {
  return numberField({
    title: 'Weight of the batting',
    help,
    unit: 'g per square meter',
    minimum: 0,
    maximum: 2_000,
  });
}

export function seamExtraField() {
  return percentField({
    title: 'Fabric in the seams of the top',
    help: 'A 3 in patch cut at 3 1/2 in takes 36% more fabric than you see; large patches take less. 25% is a guess to start from (from memory).',
    minimum: 0,
    maximum: 200,
  });
}

export function packingField() {
  return weightField({ title: 'Box and packing', minimum: 0, maximum: 20_000 });
}

/** Of an area in (1/320 mm)², in grams before rounding. */
export function gramsOf(area: number, gramsPerSquareMeter: number): number {
  return (area / UNITS_PER_METER ** 2) * gramsPerSquareMeter;
}
