import { type Result, success } from '#core/result';
import type { Calculation, Calculator, Refusal } from '#core/calculators/calculator';
import type { Figure, Note } from '#core/calculators/explanation';
import { lengthDown, lengthUp, percentQuantity, wordsQuantity } from '#core/calculators/quantities';
import { cautionNotes } from '#core/calculators/caution-notes';
import { limitsFromInputs } from '../curve-fields';
import { type CurveStrainInput, curveOf, curveStrainFromProject, curveStrainInput } from './input';
import { curveStrainDiagram } from './diagram';
import { curveStrainSteps, foldsTable } from './steps';
import { changeNotes, INSIDE_HANDLING, OUTSIDE_HANDLING, standsUpNote, wanderNote } from '../curve-notes';
import { turnedStrain } from '../strain';
import { type CurveStrainDetails, workOutCurveStrain } from './work';
import { frontTable, strainTable, whatFitsTable } from '../strain-steps';

export const curveStrain: Calculator<CurveStrainInput, CurveStrainDetails> = {
  name: 'curve-strain',
  version: 2,
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
  const front = frontTable(curve, limits);
  return success({
    figures: figuresOf(input, details),
    tables: [
      strainTable(details.strains, input.side, limits),
      foldsTable(input),
      ...(front === null ? [] : [front]),
      whatFitsTable({ curve, cover: input.backCover, limits, cutStep: input.cutStep }),
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
      label: 'Once turned it has to give',
      quantity: percentQuantity(100 * turnedStrain(details.strains)),
    },
    {
      label: 'The fold stands up while you sew by',
      quantity: percentQuantity(100 * details.strains.sewing),
    },
    { label: 'Seam line', quantity: lengthUp(details.seamLine) },
    {
      label: 'Widest strip for this curve',
      quantity: details.widestStrip === null ? wordsQuantity('none') : lengthDown(details.widestStrip, step),
    },
    {
      label: 'Smallest radius for this strip',
      quantity: lengthUp(details.smallestRadius, step),
    },
  ];
}

function notesOf(input: CurveStrainInput, details: CurveStrainDetails): readonly Note[] {
  const curve = curveOf(input, input.fold);
  const limits = limitsFromInputs(input);
  return [
    ...changeNotes({ curve, cover: input.backCover, limits, cutStep: input.cutStep }),
    standsUpNote(details.strains),
    input.side === 'inside' ? INSIDE_HANDLING : OUTSIDE_HANDLING,
    wanderNote(input.seamAllowance),
    {
      kind: 'tip',
      says: 'No published figure was found for how far quilting cotton stretches on the bias. These limits are derived from how a weave shifts, and you can change them. Try a strip on a practice curve.',
      values: {},
    },
    ...cautionNotes('rotaryBlade', 'machineNeedle', 'pins', 'iron', 'usedBlades'),
  ];
}
