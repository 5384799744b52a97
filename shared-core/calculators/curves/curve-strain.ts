import { failure, type Result, success } from '#core/result';
import { type BindingFold, foldReach } from '../binding/strip-width';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { Diagram } from '../diagram';
import type { Explanation, Figure, Note, Quantity, Step, Table } from '../explanation';
import { degreesQuantity, givenLength, lengthQuantity, percentQuantity, wordsQuantity } from '../quantities';
import { limitsFromInputs } from './curve-fields';
import { type CurveStrainInput, curveStrainFromProject, curveStrainInput } from './curve-strain-input';
import {
  type BoundCurve,
  type CurveStrains,
  curveStrains,
  greatestStrain,
  seamRadius,
  smallestRadius,
  type StrainVerdict,
  strainVerdict,
  widestStrip,
} from './strain';
import { strainSteps, strainTable, whatFitsTable } from './strain-steps';

export interface CurveStrainDetails {
  readonly seamRadius: number;
  /** Along the arc, at the cut edge and at the stitching. */
  readonly edgeLength: number;
  readonly seamLine: number;
  readonly strains: CurveStrains;
  readonly verdict: StrainVerdict;
  /** How far a strip cut to the length of the edge instead of the stitching would have to stretch (inside) or be eased (outside). */
  readonly cutToEdgeStrain: number;
  /** At the limit from which it is hard. */
  readonly widestStrip: number;
  readonly smallestRadius: number;
}

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
    explanation: stepsOf(asked, curve, details),
    notes: notesOf(asked, details),
    diagram: diagramOf(asked, details),
    details,
  });
}

function curveOf(asked: CurveStrainInput, fold: BindingFold): BoundCurve {
  return {
    side: asked.side,
    radius: asked.radius,
    seam: asked.seamAllowance,
    fold,
    strip: asked.stripWidth,
    cover: asked.backCover,
  };
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
    { label: 'Seam line', quantity: lengthQuantity(details.seamLine, { direction: 'up' }) },
    {
      label: 'Widest strip for this curve',
      quantity: lengthQuantity(details.widestStrip, { direction: 'down', step }),
    },
    {
      label: 'Smallest radius for this strip',
      quantity: lengthQuantity(details.smallestRadius, { direction: 'up', step }),
    },
  ];
}

/** The same strip folded double and single; a fold the seam uses up is left out. */
function foldsTable(asked: CurveStrainInput): Table {
  const limits = limitsFromInputs(asked);
  const folds = (['double', 'single'] as const).filter(
    (fold) => foldReach(fold, asked.stripWidth, asked.seamAllowance) > 0,
  );
  return {
    title: 'Double and single fold',
    columns: ['Fold', 'From the seam to the fold', 'It has to give by', 'Verdict'],
    rows: folds.map((fold): readonly Quantity[] => {
      const strain = greatestStrain(curveStrains(curveOf(asked, fold)));
      return [
        wordsQuantity(fold),
        lengthQuantity(foldReach(fold, asked.stripWidth, asked.seamAllowance), { direction: 'up' }),
        percentQuantity(100 * strain),
        wordsQuantity(strainVerdict(strain, limits, asked.grain)),
      ];
    }),
  };
}

function stepsOf(asked: CurveStrainInput, curve: BoundCurve, details: CurveStrainDetails): Explanation {
  const isInside = asked.side === 'inside';
  const radius = {
    symbol: isInside ? 'r' : 'R',
    means: 'radius of the cut edge',
    quantity: givenLength(asked.radius),
  };
  const seam = { symbol: 's', means: 'seam allowance', quantity: givenLength(asked.seamAllowance) };
  const along: Step = {
    label: 'Seam line along the arc',
    formula: isInside ? 'α · (r + s)' : 'α · (R − s)',
    terms: [radius, seam, { symbol: 'α', means: 'the arc', quantity: degreesQuantity(asked.arc) }],
    result: lengthQuantity(details.seamLine, { direction: 'up' }),
    rule: {
      kind: 'derived',
      says: 'Only the length goes by the arc; how far the strip has to give is the same all along it.',
    },
  };
  const toEdge: Step = {
    label: 'If it were cut to the raw edge instead',
    formula: isInside ? 's ÷ r' : 's ÷ R',
    terms: [seam, radius],
    result: percentQuantity(100 * details.cutToEdgeStrain),
    rule: {
      kind: 'derived',
      says: isInside
        ? 'So much the whole strip would have to stretch to reach round the stitching.'
        : 'So much the whole strip would have to be eased along the stitching.',
    },
  };
  return [along, ...strainSteps(curve, details.strains), toEdge];
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
      values: { widest: lengthQuantity(details.widestStrip, { direction: 'down', step: asked.cutStep }) },
    },
    limit,
  ];
}

/** The arc about its middle: cut edge, stitching and fold. */
function diagramOf(asked: CurveStrainInput, details: CurveStrainDetails): Diagram {
  const reach = foldReach(asked.fold, asked.stripWidth, asked.seamAllowance);
  const fold = details.seamRadius + (asked.side === 'inside' ? reach : -reach);
  const half = 1.1 * Math.max(asked.radius, fold);
  const center = { x: half, y: half };
  const arc = { part: 'arc', center, fromDegrees: 0, toDegrees: asked.arc } as const;
  return {
    title: 'The curve: cut edge, stitching, and the fold while you sew',
    width: 2 * half,
    height: 2 * half,
    parts: [
      { ...arc, radius: asked.radius, tone: 'cut' },
      { ...arc, radius: details.seamRadius, tone: 'seam' },
      ...(fold > 0 ? [{ ...arc, radius: fold, tone: 'fold' } as const] : []),
      {
        part: 'dimension',
        from: center,
        to: { x: half + asked.radius, y: half },
        offset: half / 10,
        length: asked.radius,
      },
    ],
  };
}
