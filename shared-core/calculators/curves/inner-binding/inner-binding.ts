import { success } from '#core/result';
import { bindingCuts } from '#core/calculators/binding/binding-cuts';
import type { Calculator } from '#core/calculators/calculator';
import type { Figure } from '#core/calculators/explanation';
import { fabricNeed, squarePatch } from '#core/calculators/needs';
import {
  givenLength,
  lengthDown,
  lengthUp,
  percentQuantity,
  wordsQuantity,
} from '#core/calculators/quantities';
import { limitsFromInputs } from '../curve-fields';
import { type InnerBindingInput, innerBindingFromProject, innerBindingInput } from './input';
import { innerBindingNotes } from './notes';
import { curveOf, type InnerBindingDetails, workOutInnerBinding } from './work';
import { innerBindingSteps } from './steps';
import { ringDiagram } from './diagram';
import { greatestStrain } from '../strain';
import { strainTable, whatFitsTable } from '../strain-steps';

export const innerBinding: Calculator<InnerBindingInput, InnerBindingDetails> = {
  name: 'inner-binding',
  version: 1,
  title: 'Inner binding',
  question: 'How long a strip do I need to bind the hole, and will it lie flat?',
  stageKinds: ['inner-binding'],
  input: innerBindingInput,
  fromProject: innerBindingFromProject,
  startsFromProject: ['bindLegs'],
  calculate(input) {
    const work = workOutInnerBinding(input);
    if (!work.ok) return work;
    const details = work.value;
    const limits = limitsFromInputs(input);
    const { quiltThickness: thickness, cutStep } = input;
    return success({
      figures: figuresOf(input, details),
      tables: [
        strainTable(details.strains, 'inside', limits, input.grain),
        whatFitsTable({ curve: curveOf(input), thickness, limits, grain: input.grain, cutStep }),
      ],
      explanation: innerBindingSteps(input, details),
      notes: innerBindingNotes(input, details),
      diagram: ringDiagram(input),
      details,
    });
  },
  needs: (_, { squareForOneStrip }, usualWidth) => [
    fabricNeed('Inner binding', [squarePatch(squareForOneStrip)], { fabricWidth: usualWidth }),
  ],
  cuts: ({ grain, stripWidth }, { squareForOneStrip, stripToCut }) =>
    grain === 'bias'
      ? bindingCuts(squareForOneStrip, squareForOneStrip)
      : bindingCuts(stripToCut, stripWidth),
  isCutLater: true,
  wayTo: 'binding',
};

function figuresOf(input: InnerBindingInput, details: InnerBindingDetails): readonly Figure[] {
  return [
    {
      label: 'Strip to cut',
      quantity: lengthUp(details.stripLength, input.cutStep),
    },
    { label: 'Strip width', quantity: givenLength(input.stripWidth) },
    { label: 'Verdict', quantity: wordsQuantity(details.verdict) },
    {
      label: 'It has to stretch or ease by',
      quantity: percentQuantity(100 * greatestStrain(details.strains)),
    },
    { label: 'Seam line', quantity: lengthUp(details.seamLine) },
    {
      label: 'Widest strip for this hole',
      quantity: lengthDown(details.widestStrip, input.cutStep),
    },
    {
      label: 'Square of fabric for one unbroken strip',
      quantity: givenLength(details.squareForOneStrip),
    },
  ];
}
