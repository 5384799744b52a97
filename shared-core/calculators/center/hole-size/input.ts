import { z } from 'zod';
import { choiceField, flagField, lengthField, percentField, withDefault } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { LENGTH_ZERO, lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import { holeOfProject } from '#core/calculators/curves/inner-binding/input';
import { seamField } from '#core/calculators/shared-fields';

/** Added after answers had been saved without them, so each has the value that leaves such an answer as it was. */
const laterFields = {
  hasSlit: withDefault(flagField({ title: 'A slit runs from the edge to the hole' }), false),
  passes: withDefault(
    lengthField({
      title: 'Widest thing it goes over',
      help: 'Measured across: a foot, crank, knob or the legs of a stand that a closed ring has to pass. 0 if nothing is wider. With a slit nothing has to pass.',
      minimum: LENGTH_ZERO,
    }),
    LENGTH_ZERO,
  ),
  bindingThickness: withDefault(
    lengthField({
      title: 'Thickness of the binding',
      help: 'How far the folded binding stands into the hole. 1/32 in (1 mm) for two layers of quilting cotton, more for thick fabric (from memory). 0 if the edge is faced.',
      minimum: LENGTH_ZERO,
      maximum: lengthFromInches(1),
    }),
    LENGTH_ZERO,
  ),
  drawUpPercent: withDefault(
    percentField({
      title: 'Draws up after the cut',
      help: 'Start with 0 if you quilt first and cut after: the quilting has drawn up by then. Stay-stitching and a taut binding can still draw the edge in, so try them on a scrap. If the hole is there before you quilt, enter what your quilting takes, often 2 to 4%.',
      minimum: 0,
      maximum: 30,
    }),
    0,
  ),
  washPercent: withDefault(
    percentField({
      title: 'Shrinks in the first wash',
      help: '3 to 5% is common practice with cotton batting. Use the larger of across and along. 0 if you never wash it.',
      minimum: 0,
      maximum: 30,
    }),
    0,
  ),
};

export const holeSizeInput = z
  .object({
    from: choiceField(['around', 'across', 'ruler', 'wish'], {
      title: 'The hole comes from',
      help: 'A stand, trunk or pole measured around or across, a size of your circle ruler, or any size you want.',
    }),
    measure: lengthField({
      title: 'Size',
      help: 'The distance around if you measured around; otherwise the diameter.',
    }),
    ease: lengthField({
      title: 'Ease',
      help: 'Added to a measured diameter so that the project goes on easily and lies flat. Half of it is on each side. Start with 1/4 in (6 mm) for a pole, and 1/2 in (13 mm) or more for a trunk.',
      minimum: LENGTH_ZERO,
      maximum: lengthFromInches(24),
    }),
    ...laterFields,
    rulerStep: lengthField({
      title: 'Step of your circle ruler',
      help: 'By diameter. If your ruler turns on a pin, that is twice the step of its holes.',
      minimum: lengthFromMillimeters(1),
      maximum: lengthFromInches(4),
    }),
    seamAllowance: seamField('From the cut edge to the stitching of the inner binding.'),
  })
  .readonly();
export type HoleSizeInput = z.infer<typeof holeSizeInput>;

/** The hole of the project, until something is measured. */
export function holeSizeFromProject(measurements: Measurements): HoleSizeInput {
  const isInch = measurements.settings.unitSystem === 'inch';
  return {
    from: 'wish',
    measure: holeOfProject(measurements),
    ease: isInch ? lengthFromInches(1 / 2) : lengthFromMillimeters(10),
    hasSlit: measurements.hasSlit,
    passes: LENGTH_ZERO,
    bindingThickness: isInch ? lengthFromInches(1 / 32) : lengthFromMillimeters(1),
    drawUpPercent: 0,
    washPercent: Math.max(measurements.settings.washAcrossPercent, measurements.settings.washAlongPercent),
    rulerStep: isInch ? lengthFromInches(1 / 2) : lengthFromMillimeters(10),
    seamAllowance: measurements.settings.seamAllowance,
  };
}

/** A measured size gets ease and is rounded up to the next ruler size; any other size is taken as it is. */
export function isMeasured({ from }: Pick<HoleSizeInput, 'from'>): boolean {
  return from === 'around' || from === 'across';
}

/** Up to the step of the ruler for a measured size; only to a whole unit for a given one. */
export function rulerRounding(input: HoleSizeInput) {
  return { direction: 'up', step: isMeasured(input) ? input.rulerStep : 1 } as const;
}
