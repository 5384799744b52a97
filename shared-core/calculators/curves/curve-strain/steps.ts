import { foldReach } from '#core/calculators/binding/strip-width';
import type { Diagram } from '#core/calculators/diagram';
import type { Explanation, Quantity, Step, Table } from '#core/calculators/explanation';
import {
  degreesQuantity,
  givenLength,
  lengthUp,
  percentQuantity,
  wordsQuantity,
} from '#core/calculators/quantities';
import { givenTerm } from '#core/calculators/working/terms';
import { limitsFromInputs } from '../curve-fields';
import { type CurveStrainDetails, type CurveStrainInput, curveOf } from './input';
import { curveStrains, greatestStrain, strainVerdict } from '../strain';
import { strainSteps } from '../strain-steps';

/** The same strip folded double and single; a seam that uses up the one fold uses up the other too. */
export function foldsTable(asked: CurveStrainInput): Table {
  const limits = limitsFromInputs(asked);
  return {
    title: 'Double and single fold',
    columns: ['Fold', 'From the seam to the fold', 'It has to give by', 'Verdict'],
    rows: (['double', 'single'] as const).map((fold): readonly Quantity[] => {
      const strain = greatestStrain(curveStrains(curveOf(asked, fold)));
      return [
        wordsQuantity(fold),
        lengthUp(foldReach(fold, asked.stripWidth, asked.seamAllowance)),
        percentQuantity(100 * strain),
        wordsQuantity(strainVerdict(strain, limits, asked.grain)),
      ];
    }),
  };
}

/** The length along the arc, the three strains, and what cutting to the raw edge would do. */
export function curveStrainSteps(asked: CurveStrainInput, details: CurveStrainDetails): Explanation {
  const isInside = asked.side === 'inside';
  const radius = {
    symbol: isInside ? 'r' : 'R',
    means: 'radius of the cut edge',
    quantity: givenLength(asked.radius),
  };
  const seam = givenTerm('s', 'seam allowance', asked.seamAllowance);
  const along: Step = {
    label: 'Seam line along the arc',
    formula: isInside ? 'α · (r + s)' : 'α · (R − s)',
    terms: [radius, seam, { symbol: 'α', means: 'the arc', quantity: degreesQuantity(asked.arc) }],
    result: lengthUp(details.seamLine),
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
  return [along, ...strainSteps(curveOf(asked, asked.fold), details.strains), toEdge];
}

/** The arc about its middle: cut edge, stitching and fold. */
export function curveStrainDiagram(asked: CurveStrainInput, details: CurveStrainDetails): Diagram {
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
