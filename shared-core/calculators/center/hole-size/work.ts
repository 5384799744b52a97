import { failure, type Result, success } from '#core/result';
import { type Length, lengthFromExact } from '#core/units/length';
import type { Refusal } from '#core/calculators/calculator';
import { givenLength, lengthDown } from '#core/calculators/quantities';
import { type HoleSizeInput, isMeasured, rulerRounding } from './input';

/** The hole from the cut to the first wash. All across, in 1/320 mm. */
export interface HoleSizeDetails {
  /** What has to fit into the washed hole: the measured thing, or what a closed ring passes if that is wider. null for a given size. */
  readonly through: number | null;
  /** Before rounding. */
  readonly exactDiameter: number;
  /** Rounded up to the ruler, so that it is never too small for the thing that goes through. */
  readonly diameter: Length;
  readonly seamLine: number;
  /** What a hole cut at `diameter` is once it is bound. */
  readonly bound: number;
  /** And after the first wash. */
  readonly washed: number;
}

export function workOutHole(input: HoleSizeInput): Result<HoleSizeDetails, Refusal> {
  const through = isMeasured(input) ? throughOf(input) : null;
  const exactDiameter = through === null ? input.measure : cutFor(input, through + input.ease);
  const { direction, step } = rulerRounding(input);
  const diameter = lengthFromExact(exactDiameter, direction, step);
  const { bound, washed } = lifeOf(input, diameter);
  if (bound <= 0) return failure(filledByBinding(input, diameter));
  const seamLine = Math.PI * (diameter + 2 * input.seamAllowance);
  return success({ through, exactDiameter, diameter, seamLine, bound, washed });
}

/** The measured thing across. */
export function acrossOf({ from, measure }: HoleSizeInput): number {
  return from === 'around' ? measure / Math.PI : measure;
}

/** With a slit the project is laid around the thing, so that only the thing itself counts. */
function throughOf(input: HoleSizeInput): number {
  return input.hasSlit ? acrossOf(input) : Math.max(acrossOf(input), input.passes);
}

/** The hole to cut so that the washed hole is `wanted` across: the wash, the binding and the draw-up undone, last first. */
export function cutFor(
  { washPercent, bindingThickness, drawUpPercent }: HoleSizeInput,
  wanted: number,
): number {
  const bound = wanted / (1 - washPercent / 100);
  return (bound + 2 * bindingThickness) / (1 - drawUpPercent / 100);
}

/** What becomes of a hole that is cut this large. */
export function lifeOf(
  { washPercent, bindingThickness, drawUpPercent }: HoleSizeInput,
  cut: number,
): Pick<HoleSizeDetails, 'bound' | 'washed'> {
  const bound = cut * (1 - drawUpPercent / 100) - 2 * bindingThickness;
  return { bound, washed: bound * (1 - washPercent / 100) };
}

function filledByBinding({ bindingThickness }: HoleSizeInput, diameter: Length): Refusal {
  return {
    code: 'filled-by-binding',
    field: ['bindingThickness'],
    says: 'A binding {thickness} thick on each side leaves nothing of a hole cut {across} across.',
    values: { thickness: givenLength(bindingThickness), across: lengthDown(diameter) },
  };
}
