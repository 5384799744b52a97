import type { Explanation } from '#core/calculators/explanation';
import { givenLength, yardageUp } from '#core/calculators/quantities';
import { commonPractice, derived, givenTerm, term } from '#core/calculators/working/terms';
import { countQuantity, wordsQuantity } from '#core/calculators/quantities';
import type { Table } from '#core/calculators/explanation';
import type { Length } from '#core/units/length';
import { lengthPerFabric, type StripsToCut } from './fabric-needed';

/** From strips to the fabric to buy: working and table, the same wherever patches are cut from strips. */

/** More steps than this are no explanation; the rest are in the table only. */
const MOST_STRIPS = 12;

/** `called` is how a fabric is named within a sentence. */
export function stripSteps(strips: readonly StripsToCut[], called: (fabric: string) => string): Explanation {
  const rule = derived(
    'Each strip is filled with the longest patches that still fit. Strips that are too short for one patch are joined end to end.',
  );
  return strips.slice(0, MOST_STRIPS).map(({ fabric, width, strips: count, length }) => ({
    label: `Strips of ${called(fabric)}`,
    formula: 'fabric = k × b',
    terms: [
      term('k', 'strips', countQuantity(count, ['strip', 'strips'])),
      givenTerm('b', 'cut width of a strip', width),
    ],
    result: givenLength(length),
    rule,
  }));
}

export function fabricSteps(
  strips: readonly StripsToCut[],
  yardageStep: Length,
  called: (fabric: string) => string,
): Explanation {
  return lengthPerFabric(strips).map(({ fabric, length }) => ({
    label: `Fabric to buy, ${called(fabric)}`,
    formula: 'Σ, rounded up to whole y',
    terms: [
      givenTerm('Σ', 'all strips of this fabric', length),
      givenTerm('y', 'step in which fabric is sold', yardageStep),
    ],
    result: yardageUp(length, yardageStep),
    rule: commonPractice('Rounded up to an eighth of a yard or 5 cm, with nothing extra for mistakes.'),
  }));
}

export function stripTable(strips: readonly StripsToCut[]): Table {
  return {
    title: 'Strips across the fabric',
    columns: ['Fabric', 'Strip width', 'How many', 'Length of fabric'],
    rows: strips.map(({ fabric, width, strips: count, length }) => [
      wordsQuantity(fabric),
      givenLength(width),
      countQuantity(count, ['strip', 'strips']),
      givenLength(length),
    ]),
  };
}
