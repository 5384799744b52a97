import type { Explanation, Rule, Step, Term } from '../explanation';
import { countQuantity, lengthDown, lengthUp } from '../quantities';
import { givenTerm } from '../working/terms';
import type { AccuracyDetails } from './work';
import type { AccuracyInput } from './input';
import type { Spread } from './spread';

const WORST: Rule = {
  kind: 'derived',
  says: 'Every cut and seam off the same way; a seam takes its error from both sides.',
};
const LIKELY: Rule = {
  kind: 'derived',
  says:
    'Root of the sum of squares: holds where the errors fall by chance and do not depend on each other. ' +
    'A presser foot that is always off adds up like the worst case.',
};

export function accuracySteps(input: AccuracyInput, details: AccuracyDetails): Explanation {
  const { patchesAcross, blocksAcross, blocksDown, trimsBlocks } = input;
  const inRow = trimsBlocks ? blocksAcross : blocksAcross * patchesAcross;
  const inColumn = trimsBlocks ? blocksDown : blocksDown * patchesAcross;
  return [
    ...spreadSteps('A block', input, patchesAcross, details.block),
    ...spreadSteps('A row', input, inRow, details.row),
    ...spreadSteps('The top from end to end', input, inColumn, details.column),
    {
      label: 'Two rows apart, as a rule within',
      formula: 'R√2',
      terms: [{ symbol: 'R', means: 'one row, as a rule within', quantity: lengthUp(details.row.likely) }],
      result: lengthUp(details.rowsApart.likely),
      rule: LIKELY,
    },
    ...allowedSteps(input, details),
  ];
}

function spreadSteps(
  label: string,
  input: AccuracyInput,
  pieces: number,
  { worst, likely }: Spread,
): Explanation {
  const terms: readonly Term[] = [
    { symbol: 'n', means: 'pieces side by side', quantity: countQuantity(pieces, ['piece', 'pieces']) },
    givenTerm('c', 'how far a cut is off', input.cutOff),
    givenTerm('e', 'how far a seam is off', input.seamOff),
  ];
  return [
    { label: `${label}, at worst`, formula: 'n·c + (n − 1)·2e', terms, result: lengthUp(worst), rule: WORST },
    {
      label: `${label}, as a rule within`,
      formula: '√(n·c² + (n − 1)·(2e)²)',
      terms,
      result: lengthUp(likely),
      rule: LIKELY,
    },
  ];
}

function allowedSteps(input: AccuracyInput, details: AccuracyDetails): Explanation {
  const terms: readonly Term[] = [
    givenTerm('T', 'how far a block may be off', input.tolerance),
    {
      symbol: 'n',
      means: 'patches across',
      quantity: countQuantity(input.patchesAcross, ['patch', 'patches']),
    },
    givenTerm('c', 'how far a cut is off', input.cutOff),
  ];
  const step = (label: string, formula: string, exact: number | null, rule: Rule): readonly Step[] => {
    if (exact === null) return [];
    return [{ label, formula, terms, result: lengthDown(exact), rule }];
  };
  const { seamOffForLikely, seamOffForWorst } = details;
  return [
    ...step(
      'Seams within this keep a block right, as a rule',
      '√((T² − n·c²)/(n − 1))/2, or nothing',
      seamOffForLikely,
      LIKELY,
    ),
    ...step(
      'Seams within this keep a block right at worst',
      '(T − n·c)/(2(n − 1)), or nothing',
      seamOffForWorst,
      WORST,
    ),
  ];
}
