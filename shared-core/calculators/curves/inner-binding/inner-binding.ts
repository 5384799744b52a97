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
import { curveOf, type InnerBindingDetails, planInnerBinding } from './work';
import { innerBindingSteps } from './steps';
import { ringDiagram } from './diagram';
import { greatestStrain } from '../strain';
import { strainTable, whatFitsTable } from '../strain-steps';

export const innerBinding: Calculator<InnerBindingInput, InnerBindingDetails> = {
  name: 'inner-binding',
  version: 1,
  title: 'Inner binding',
  question: 'How long a strip binds the hole, and will it lie flat?',
  stageKinds: ['inner-binding'],
  input: innerBindingInput,
  fromProject: innerBindingFromProject,
  calculate(asked) {
    const plan = planInnerBinding(asked);
    if (!plan.ok) return plan;
    const details = plan.value;
    const limits = limitsFromInputs(asked);
    const { quiltThickness: thickness, cutStep } = asked;
    return success({
      figures: figuresOf(asked, details),
      tables: [
        strainTable(details.strains, 'inside', limits, asked.grain),
        whatFitsTable({ curve: curveOf(asked), thickness, limits, grain: asked.grain, cutStep }),
      ],
      explanation: innerBindingSteps(asked, details),
      notes: innerBindingNotes(asked, details),
      diagram: ringDiagram(asked),
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

function figuresOf(asked: InnerBindingInput, details: InnerBindingDetails): readonly Figure[] {
  return [
    {
      label: 'Strip to cut',
      quantity: lengthUp(details.stripLength, asked.cutStep),
    },
    { label: 'Strip width', quantity: givenLength(asked.stripWidth) },
    { label: 'Verdict', quantity: wordsQuantity(details.verdict) },
    { label: 'It has to give by', quantity: percentQuantity(100 * greatestStrain(details.strains)) },
    { label: 'Seam line', quantity: lengthUp(details.seamLine) },
    {
      label: 'Widest strip for this ring',
      quantity: lengthDown(details.widestStrip, asked.cutStep),
    },
    {
      label: 'Square that gives it in one piece',
      quantity: givenLength(details.squareForOneStrip),
    },
  ];
}
