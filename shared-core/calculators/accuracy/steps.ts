import type { Explanation, Rule, Step, Term } from '../explanation';
import { countQuantity, fineLength } from '../quantities';
import { derived, fineTerm, term } from '../working/terms';
import type { AccuracyInput } from './input';
import type { Spread } from './spread';
import type { AccuracyDetails } from './work';

const WORST: Rule = derived('Every cut and seam is off the same way. A seam is off on both of its sides.');
const LIKELY: Rule = derived(
  'Root of the sum of squares: true if the errors are random and independent. ' +
    'A presser foot that is always off adds up like the worst case.',
);

export function accuracySteps(input: AccuracyInput, details: AccuracyDetails): Explanation {
  const { patchesAcross, blocksAcross, blocksDown, trimsBlocks } = input;
  const inRow = trimsBlocks ? blocksAcross : blocksAcross * patchesAcross;
  const inColumn = trimsBlocks ? blocksDown : blocksDown * patchesAcross;
  const row = fineLength(details.row.likely, 'up');
  return [
    ...spreadSteps('A block', input, patchesAcross, details.block),
    ...spreadSteps('A row', input, inRow, details.row),
    ...spreadSteps('The top from end to end', input, inColumn, details.column),
    {
      label: 'Two rows differ, usually within',
      formula: 'R√2',
      terms: [term('R', 'one row, usually within', row)],
      result: fineLength(details.rowsApart.likely, 'up'),
      rule: LIKELY,
    },
    ...allowedSteps(input, details),
  ];
}

/** `count` patches, or trimmed blocks, side by side. */
function spreadSteps(
  label: string,
  input: AccuracyInput,
  count: number,
  { worst, likely }: Spread,
): Explanation {
  const terms: readonly Term[] = [
    term('n', 'patches or trimmed blocks side by side', countQuantity(count, ['', ''])),
    fineTerm('c', 'how far a cut is off', input.cutOff),
    fineTerm('e', 'how far a seam is off', input.seamOff),
  ];
  return [
    {
      label: `${label}, at worst`,
      formula: 'n·c + (n − 1)·2e',
      terms,
      result: fineLength(worst, 'up'),
      rule: WORST,
    },
    {
      label: `${label}, usually within`,
      formula: '√(n·c² + (n − 1)·(2e)²)',
      terms,
      result: fineLength(likely, 'up'),
      rule: LIKELY,
    },
  ];
}

function allowedSteps(input: AccuracyInput, details: AccuracyDetails): Explanation {
  const terms: readonly Term[] = [
    fineTerm('T', 'how far a block may be off', input.tolerance),
    term('n', 'patches across', countQuantity(input.patchesAcross, ['patch', 'patches'])),
    fineTerm('c', 'how far a cut is off', input.cutOff),
  ];
  const step = (label: string, formula: string, exact: number | null, rule: Rule): readonly Step[] =>
    exact === null ? [] : [{ label, formula, terms, result: fineLength(exact, 'down'), rule }];
  return [
    ...step(
      'Seams within this usually keep a block right',
      '√((T² − n·c²)/(n − 1))/2',
      details.seamOffForLikely,
      LIKELY,
    ),
    ...step(
      'Seams within this always keep a block right',
      '(T − n·c)/(2(n − 1))',
      details.seamOffForWorst,
      WORST,
    ),
  ];
}
