import type { Rule, Step } from '../explanation';
import { givenLength, yardageUp } from '../quantities';
import { derived, givenTerm, term } from '../working/terms';
import type { FabricWidthInput } from './input';
import { ONE_WAY_UNITS } from './width-chart';
import { bought, type FabricWidthDetails } from './work';

const published = (says: string): Rule => ({ kind: 'published', says });

export function widthSteps(
  input: FabricWidthInput,
  { byChart, byArea }: Pick<FabricWidthDetails, 'byChart' | 'byArea'>,
): readonly Step[] {
  const terms = [
    term('L', 'fabric the pattern asks for', givenLength(input.length, 'yardage')),
    givenTerm('W₁', 'width the pattern asks for', input.fromWidth),
    givenTerm('W₂', 'width of the fabric you have', input.toWidth),
  ];
  const area: Step = {
    label: 'By area',
    formula: 'L × W₁ ÷ W₂',
    terms,
    result: bought(input, byArea),
    rule: derived('The same area of fabric. It does not consider how the pattern pieces fit.'),
  };
  const chart = (exact: number): Step => ({
    label: 'By a published chart for garments',
    formula: 'looked up, not calculated',
    terms,
    result: bought(input, exact),
    rule: published(
      'Fabric width conversion chart, New Jersey Cooperative Extension Service, Rutgers (attribution from memory). It only compares: it allows for how the pieces of a garment fit.',
    ),
  });
  return [
    area,
    ...(byChart === null ? [] : [chart(byChart)]),
    ...(input.isOneWay ? [oneWayStep(input, byArea)] : []),
  ];
}

function oneWayStep(input: FabricWidthInput, plain: number): Step {
  return {
    label: 'With a one-way print',
    formula: 'L + q',
    terms: [
      term('L', 'by area', yardageUp(plain)),
      term('q', 'for one-way fabric', yardageUp(ONE_WAY_UNITS)),
    ],
    result: bought(input, plain + ONE_WAY_UNITS),
    rule: published('The chart’s own note: add a quarter of a yard for one-way fabric.'),
  };
}
