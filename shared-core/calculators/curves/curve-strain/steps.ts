import type { Explanation, Quantity, Step, Table } from '#core/calculators/explanation';
import { degreesQuantity, lengthUp, percentQuantity, wordsQuantity } from '#core/calculators/quantities';
import { derived, givenTerm, term } from '#core/calculators/working/terms';
import { limitsFromInputs } from '../curve-fields';
import { type CurveStrainInput, curveOf } from './input';
import type { CurveStrainDetails } from './work';
import { curveStrains, strainVerdict, turnedStrain } from '../strain';
import { strainSteps } from '../strain-steps';

/** The same strip in double and single fold. A seam that leaves nothing of one fold leaves nothing of the other. */
export function foldsTable(input: CurveStrainInput): Table {
  const limits = limitsFromInputs(input);
  return {
    title: 'Double and single fold',
    columns: ['Fold', 'Stands up while you sew by', 'Once turned it has to give', 'Verdict'],
    rows: (['double', 'single'] as const).map((fold): readonly Quantity[] => {
      const strains = curveStrains(curveOf(input, fold));
      return [
        wordsQuantity(fold),
        percentQuantity(100 * strains.sewing),
        percentQuantity(100 * turnedStrain(strains)),
        wordsQuantity(strainVerdict(strains, limits)),
      ];
    }),
  };
}

/** The length along the arc, the three strains, and the strain of a strip cut to the raw edge. */
export function curveStrainSteps(input: CurveStrainInput, details: CurveStrainDetails): Explanation {
  const isInside = input.side === 'inside';
  const radius = givenTerm(isInside ? 'r' : 'R', 'radius of the cut edge', input.radius);
  const seam = givenTerm('s', 'seam allowance', input.seamAllowance);
  const along: Step = {
    label: 'Seam line along the arc',
    formula: isInside ? 'α · (r + s)' : 'α · (R − s)',
    terms: [radius, seam, term('α', 'the arc', degreesQuantity(input.arc))],
    result: lengthUp(details.seamLine),
    rule: derived(
      'Only the length depends on the arc. How far the strip has to stretch or ease is the same everywhere on it.',
    ),
  };
  const toEdge: Step = {
    label: 'If the strip were cut to the length of the raw edge',
    formula: isInside ? 's ÷ r' : 's ÷ R',
    terms: [seam, radius],
    result: percentQuantity(100 * details.cutToEdgeStrain),
    rule: derived(
      isInside
        ? 'The whole strip would have to stretch this much to fit around the stitching line.'
        : 'The whole strip would have to be eased this much along the stitching line.',
    ),
  };
  return [along, ...strainSteps(curveOf(input, input.fold), details.strains), toEdge];
}
