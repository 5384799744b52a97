import { type Result, success } from '#core/result';
import type { Calculation, Calculator, Refusal } from '#core/calculators/calculator';
import type { Figure, Note } from '#core/calculators/explanation';
import { lengthDown, lengthUp, percentQuantity, wordsQuantity } from '#core/calculators/quantities';
import { cautionNotes } from '#core/calculators/caution-notes';
import { limitsFromInputs } from '../curve-fields';
import { type CurveStrainInput, curveOf, curveStrainFromProject, curveStrainInput } from './input';
import { curveStrainDiagram } from './diagram';
import { curveStrainSteps, foldsTable } from './steps';
import { greatestStrain } from '../strain';
import { type CurveStrainDetails, workOutCurveStrain } from './work';
import { strainTable, whatFitsTable } from '../strain-steps';

export const curveStrain: Calculator<CurveStrainInput, CurveStrainDetails> = {
  name: 'curve-strain',
  version: 1,
  title: 'Binding around a curve',
  question: 'Does this strip go around this curve?',
  stageKinds: ['outer-binding', 'inner-binding'],
  input: curveStrainInput,
  fromProject: curveStrainFromProject,
  calculate,
};

function calculate(input: CurveStrainInput): Result<Calculation<CurveStrainDetails>, Refusal> {
  const work = workOutCurveStrain(input);
  if (!work.ok) return work;
  const details = work.value;
  const curve = curveOf(input, input.fold);
  const limits = limitsFromInputs(input);
  const { grain, cutStep, quiltThickness: thickness } = input;
  return success({
    figures: figuresOf(input, details),
    tables: [
      strainTable(details.strains, input.side, limits, grain),
      foldsTable(input),
      whatFitsTable({ curve, thickness, limits, grain, cutStep }),
    ],
    explanation: curveStrainSteps(input, details),
    notes: notesOf(input, details),
    diagram: curveStrainDiagram(input, details),
    details,
  });
}

function figuresOf(input: CurveStrainInput, details: CurveStrainDetails): readonly Figure[] {
  const { cutStep: step } = input;
  return [
    { label: 'Verdict', quantity: wordsQuantity(details.verdict) },
    {
      label: 'It has to stretch or ease by',
      quantity: percentQuantity(100 * greatestStrain(details.strains)),
    },
    { label: 'Seam line', quantity: lengthUp(details.seamLine) },
    {
      label: 'Widest strip for this curve',
      quantity: lengthDown(details.widestStrip, step),
    },
    {
      label: 'Smallest radius for this strip',
      quantity: lengthUp(details.smallestRadius, step),
    },
  ];
}

function notesOf(input: CurveStrainInput, details: CurveStrainDetails): readonly Note[] {
  return [
    ...impossibleNotes(input, details),
    {
      kind: 'tip',
      says: 'No published figure was found for how far quilting cotton stretches on the bias. These limits are derived from how a weave shifts, and you can change them. Try a strip on a practice curve.',
      values: {},
    },
    ...cautionNotes('rotaryBlade', 'machineNeedle', 'pins', 'iron', 'usedBlades'),
  ];
}

function impossibleNotes(
  input: CurveStrainInput,
  { verdict, widestStrip }: CurveStrainDetails,
): readonly Note[] {
  if (verdict !== 'impossible') return [];
  if (input.grain === 'straight') {
    return [
      {
        kind: 'warning',
        says: 'Straight grain gives about {limit}, which isn’t enough for this curve. Cut the strip on the bias.',
        values: { limit: percentQuantity(input.straightLimit) },
      },
    ];
  }
  return [
    {
      kind: 'warning',
      says: 'This strip can’t lie flat around this curve. {widest} is the widest that can.',
      values: { widest: lengthDown(widestStrip, input.cutStep) },
    },
  ];
}
