import { UNITS_PER_INCH } from '#core/units/length';
import { bobbinStep, seamThreadSteps } from '../machine-thread/steps';
import type { Quantity, Rule, Step } from '../explanation';
import { areaQuantity, givenLength, numberQuantity, yardageUp } from '../quantities';
import { derived, givenTerm, term } from '../working/terms';
import type { QuiltingThreadInput } from './input';
import type { QuiltingThreadWork } from './work';

const PRINTED: Rule = {
  kind: 'published',
  says: 'A thread maker prints these yards on top for light, medium and heavy quilting: 200, 400, 600 for 45 × 60 in; 400, 800, 1,200 for 72 × 90 in; 600, 1,100, 1,600 for 90 × 108 in; 700, 1,300, 2,000 for 120 × 120 in. Sizes between are read in proportion.',
};

/** The amounts in print, the thread for the maker's own lines, and what the chosen one takes in cones and bobbins. */
export function quiltingThreadSteps(
  input: QuiltingThreadInput,
  work: QuiltingThreadWork,
  { cones, bobbins }: { readonly cones: Quantity; readonly bobbins: Quantity },
): readonly Step[] {
  return [
    ...printSteps(input, work),
    ...lineSteps(input, work),
    bobbinStep(work.chosen, input.bobbinHolds, bobbins),
    {
      label: 'Cones',
      formula: 'T ÷ h, rounded up',
      terms: [
        term('T', 'thread from the cone', yardageUp(fromCone(input, work))),
        term('h', 'thread on one cone', givenLength(input.coneHolds, 'yardage')),
      ],
      result: cones,
      rule: derived(
        input.bobbins === 'bought-wound'
          ? 'Only the needle takes thread from the cone.'
          : 'The needle takes thread from the cone, and the bobbins are wound from it.',
      ),
    },
  ];
}

/** What the cones have to hold. */
export function fromCone({ bobbins }: QuiltingThreadInput, { chosen }: QuiltingThreadWork): number {
  return bobbins === 'bought-wound' ? chosen.needle : chosen.total;
}

/** The amount in print that was chosen; none where the thread goes by the spacing. */
function printSteps({ density }: QuiltingThreadInput, { area, chosen }: QuiltingThreadWork): readonly Step[] {
  if (density === 'by-spacing') return [];
  return [
    {
      label: `On top, ${density} quilting`,
      formula: 'looked up, not calculated',
      terms: [term('A', 'area of the quilt', areaQuantity(area))],
      result: yardageUp(chosen.needle),
      rule: PRINTED,
    },
    {
      label: 'Thread in all',
      formula: 't × 2',
      terms: [term('t', 'on top', yardageUp(chosen.needle))],
      result: yardageUp(chosen.total),
      rule: { kind: 'published', says: 'The same print gives as much again for the bobbin.' },
    },
  ];
}

function lineSteps(input: QuiltingThreadInput, { area, lines, lineLength }: QuiltingThreadWork) {
  const inches = numberQuantity(lineLength / UNITS_PER_INCH);
  return [
    {
      label: 'Lines at your spacing, in inches',
      formula: 'A ÷ p',
      terms: [
        term('A', 'area of the quilt, in square inches', numberQuantity(area / UNITS_PER_INCH ** 2)),
        givenTerm('p', 'from line to line', input.spacing),
      ],
      result: inches,
      rule: derived('Every line stands for a band as wide as the spacing, half of it on either side.'),
    },
    ...seamThreadSteps(input, yardageUp(lineLength), lines).map((step) => ({
      ...step,
      label: `Lines at your spacing: ${step.label.charAt(0).toLowerCase()}${step.label.slice(1)}`,
    })),
  ] satisfies readonly Step[];
}
