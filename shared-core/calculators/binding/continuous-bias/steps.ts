import type { Explanation, Rule, Term } from '#core/calculators/explanation';
import { countQuantity, givenLength, lengthQuantity, percentQuantity } from '#core/calculators/quantities';
import type { ContinuousBiasDetails, ContinuousBiasInput } from './input';
import { continuousBiasLength, seamedSide } from './work';

const derived = (says: string): Rule => ({ kind: 'derived', says });

/** From the square to the strip, and the rule of area beside it. */
export function continuousBiasSteps(input: ContinuousBiasInput, details: ContinuousBiasDetails): Explanation {
  const { side, rows, squares } = details;
  const { stripWidth: strip, seamAllowance: seam } = input;
  const between = seamedSide({ side, seam });
  const one = continuousBiasLength({ side, strip, seam });
  const sideTerm: Term = { symbol: 'a', means: 'side of the square', quantity: givenLength(side) };
  const stripTerm: Term = { symbol: 'w', means: 'strip width', quantity: givenLength(strip) };
  const betweenTerm: Term = {
    symbol: 'b',
    means: 'side between the seams',
    quantity: lengthQuantity(between, { direction: 'nearest' }),
  };
  const rowsTerm: Term = {
    symbol: 'k',
    means: 'whole rows',
    quantity: countQuantity(rows, ['row', 'rows'], 'down'),
  };
  const lengthTerm: Term = {
    symbol: 'L',
    means: 'length from one square',
    quantity: lengthQuantity(one, { direction: 'down' }),
  };
  return [
    {
      label: 'Side between the seams',
      formula: 'b = a − 2s',
      terms: [sideTerm, { symbol: 's', means: 'seam allowance', quantity: givenLength(seam) }],
      result: betweenTerm.quantity,
      rule: derived(
        'The first seam takes two allowances off the way between the slanted edges, the tube seam two off the way round.',
      ),
    },
    {
      label: 'Whole rows',
      formula: 'k = b ÷ (w√2), rounded down',
      terms: [betweenTerm, stripTerm],
      result: countQuantity(between / (strip * Math.SQRT2), ['row', 'rows'], 'down'),
      rule: derived('The slanted edges lie b ÷ √2 apart; only whole strips count.'),
    },
    {
      label: 'Length from one square',
      formula: 'L = k · b · √2',
      terms: [rowsTerm, betweenTerm],
      result: lengthTerm.quantity,
      rule: derived('Every row runs once round the tube on the diagonal.'),
    },
    {
      label: 'With the ends cut square',
      formula: squares === 1 ? 'L − w' : 'm · (L − w)',
      terms: [
        lengthTerm,
        stripTerm,
        ...(squares === 1
          ? []
          : [{ symbol: 'm', means: 'squares', quantity: countQuantity(squares, ['square', 'squares']) }]),
      ],
      result: lengthQuantity(details.gives, { direction: 'down' }),
      rule: derived(
        'The strip ends on a slant; squaring it, or joining it on the diagonal, takes a strip width.',
      ),
    },
    {
      label: 'The rule of area, for comparison',
      formula: 'a² ÷ w',
      terms: [sideTerm, stripTerm],
      result: lengthQuantity(details.areaRule, { direction: 'nearest' }),
      rule: {
        kind: 'published',
        says: 'Given in sewing books and lessons; it leaves out the seams and the incomplete row.',
      },
    },
    {
      label: 'It promises too much by',
      formula: '(a² ÷ w) ÷ (L − w) − 1',
      terms: [sideTerm, stripTerm, lengthTerm],
      result: percentQuantity(100 * details.areaRuleExcess),
      rule: derived('Beside what this square really gives.'),
    },
  ];
}
