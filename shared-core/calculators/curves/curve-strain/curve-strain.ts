import { failure, type Result, success } from '#core/result';
import { foldReach } from '#core/calculators/binding/strip-width';
import type { Calculation, Calculator, Refusal } from '#core/calculators/calculator';
import type { Figure, Note } from '#core/calculators/explanation';
import {
  givenLength,
  lengthDown,
  lengthUp,
  percentQuantity,
  wordsQuantity,
} from '#core/calculators/quantities';
import { limitsFromInputs } from '../curve-fields';
import {
  type CurveStrainDetails,
  type CurveStrainInput,
  curveOf,
  curveStrainFromProject,
  curveStrainInput,
} from './input';
import { curveStrainDiagram, curveStrainSteps, foldsTable } from './steps';
import {
  type BoundCurve,
  curveStrains,
  greatestStrain,
  seamRadius,
  smallestRadius,
  strainVerdict,
  widestStrip,
} from '../strain';
import { strainTable, whatFitsTable } from '../strain-steps';

export const curveStrain: Calculator<CurveStrainInput, CurveStrainDetails> = {
  name: 'curve-strain',
  version: 1,
  title: 'Binding round a curve',
  question: 'Does this strip go round this curve?',
  stageKinds: ['outer-binding', 'inner-binding'],
  input: curveStrainInput,
  fromProject: curveStrainFromProject,
  calculate,
};

function calculate(asked: CurveStrainInput): Result<Calculation<CurveStrainDetails>, Refusal> {
  const refusal = refusalOf(asked);
  if (refusal !== null) return failure(refusal);
  const curve = curveOf(asked, asked.fold);
  const limits = limitsFromInputs(asked);
  const details = detailsOf(asked, curve);
  const { grain, cutStep, quiltThickness: thickness } = asked;
  return success({
    figures: figuresOf(asked, details),
    tables: [
      strainTable(details.strains, asked.side, limits, grain),
      foldsTable(asked),
      whatFitsTable({ curve, thickness, limits, grain, cutStep }),
    ],
    explanation: curveStrainSteps(asked, details),
    notes: notesOf(asked, details),
    diagram: curveStrainDiagram(asked, details),
    details,
  });
}

function detailsOf(asked: CurveStrainInput, curve: BoundCurve): CurveStrainDetails {
  const limits = limitsFromInputs(asked);
  const hardLimit = (asked.grain === 'straight' ? limits.straight : limits.hard) / 100;
  const strains = curveStrains(curve);
  const turn = (asked.arc * Math.PI) / 180;
  return {
    seamRadius: seamRadius(curve),
    edgeLength: turn * curve.radius,
    seamLine: turn * seamRadius(curve),
    strains,
    verdict: strainVerdict(greatestStrain(strains), limits, asked.grain),
    cutToEdgeStrain: curve.seam / curve.radius,
    widestStrip: widestStrip(curve, hardLimit),
    smallestRadius: smallestRadius(curve, hardLimit),
  };
}

function refusalOf(asked: CurveStrainInput): Refusal | null {
  const { side, radius, seamAllowance: seam, stripWidth: strip } = asked;
  if (side === 'outside' && radius <= seam) {
    return {
      code: 'bend-too-tight',
      field: ['radius'],
      says: 'A seam of {seam} does not go round an outside bend of radius {radius}.',
      values: { seam: givenLength(seam), radius: givenLength(radius) },
    };
  }
  if (foldReach(asked.fold, strip, seam) > 0) return null;
  return {
    code: 'strip-too-narrow',
    field: ['stripWidth'],
    says: 'A strip {strip} wide is used up by a seam of {seam}: nothing is left to turn.',
    values: { strip: givenLength(strip), seam: givenLength(seam) },
  };
}

function figuresOf(asked: CurveStrainInput, details: CurveStrainDetails): readonly Figure[] {
  const { cutStep: step } = asked;
  return [
    { label: 'Verdict', quantity: wordsQuantity(details.verdict) },
    { label: 'It has to give by', quantity: percentQuantity(100 * greatestStrain(details.strains)) },
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

function notesOf(asked: CurveStrainInput, details: CurveStrainDetails): readonly Note[] {
  const limit: Note = {
    kind: 'tip',
    says: 'No published figure for the stretch of quilting cotton on the bias was found; these limits come from threads that turn and are yours to set. Try a strip on a practice curve.',
    values: {},
  };
  if (asked.grain === 'straight' && details.verdict === 'impossible') {
    return [
      {
        kind: 'warning',
        says: 'Straight grain gives about {limit} and does not go round this curve: cut the strip on the bias.',
        values: { limit: percentQuantity(asked.straightLimit) },
      },
      limit,
    ];
  }
  if (details.verdict !== 'impossible') return [limit];
  return [
    {
      kind: 'warning',
      says: 'This strip cannot lie flat round this curve; {widest} is the widest that goes.',
      values: { widest: lengthDown(details.widestStrip, asked.cutStep) },
    },
    limit,
  ];
}
