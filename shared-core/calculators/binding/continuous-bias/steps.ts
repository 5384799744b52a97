import type { Explanation } from '#core/calculators/explanation';
import { countQuantity, lengthDown, lengthNearest, percentQuantity } from '#core/calculators/quantities';
import { commonPractice, derived, givenTerm, term } from '#core/calculators/working/terms';
import type { ContinuousBiasDetails, ContinuousBiasInput } from './input';
import { continuousBiasLength, seamedSide } from './work';

/** From the square to the strip, with the rule of area for comparison. */
export function continuousBiasSteps(input: ContinuousBiasInput, details: ContinuousBiasDetails): Explanation {
  const { side, rows, squares } = details;
  const { stripWidth: strip, seamAllowance: seam } = input;
  const between = seamedSide({ side, seam });
  const sideTerm = givenTerm('a', 'side of the square', side);
  const stripTerm = givenTerm('w', 'strip width', strip);
  const betweenTerm = term('b', 'side between the seams', lengthNearest(between));
  const rowsTerm = term('k', 'whole rows', countQuantity(rows, ['row', 'rows'], 'down'));
  const lengthTerm = term(
    'L',
    'length from one square',
    lengthDown(continuousBiasLength({ side, strip, seam })),
  );
  const squaresTerm = term('m', 'squares', countQuantity(squares, ['square', 'squares']));
  return [
    {
      label: 'Side between the seams',
      formula: 'b = a − 2s',
      terms: [sideTerm, givenTerm('s', 'seam allowance', seam)],
      result: betweenTerm.quantity,
      rule: derived(
        'The first seam takes two seam allowances from the distance between the slanted edges; the tube seam takes two from the distance around.',
      ),
    },
    {
      label: 'Whole rows',
      formula: 'k = b ÷ (w√2), rounded down',
      terms: [betweenTerm, stripTerm],
      result: countQuantity(between / (strip * Math.SQRT2), ['row', 'rows'], 'down'),
      rule: derived('The slanted edges are b ÷ √2 apart. Only whole rows count.'),
    },
    {
      label: 'Length from one square',
      formula: 'L = k · b · √2',
      terms: [rowsTerm, betweenTerm],
      result: lengthTerm.quantity,
      rule: derived('Every row goes once around the tube on the diagonal.'),
    },
    {
      label: 'With the ends cut square',
      formula: squares === 1 ? 'L − w' : 'm · (L − w)',
      terms: squares === 1 ? [lengthTerm, stripTerm] : [lengthTerm, stripTerm, squaresTerm],
      result: lengthDown(details.gives),
      rule: derived('The strip ends on a slant. Squaring it, or a diagonal join, takes a strip width.'),
    },
    {
      label: 'The rule of area, for comparison',
      formula: 'a² ÷ w',
      terms: [sideTerm, stripTerm],
      result: lengthNearest(details.areaRule),
      rule: commonPractice(
        'Many sewing books and lessons give this rule. It ignores the seams and the incomplete row.',
      ),
    },
    {
      label: 'It promises too much by',
      formula: '(a² ÷ w) ÷ (L − w) − 1',
      terms: [sideTerm, stripTerm, lengthTerm],
      result: percentQuantity(100 * details.areaRuleExcess),
      rule: derived('Compared with what this square really gives.'),
    },
  ];
}
