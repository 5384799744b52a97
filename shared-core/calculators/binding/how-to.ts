import type { Quantity, Table } from '../explanation';
import { countQuantity, wordsQuantity } from '../quantities';

/** One step of the work: what to do, and the measure it needs. */
export type HowToStep = readonly [says: string, measure: Quantity];

export const NO_MEASURE = wordsQuantity('');

/** The work in order, numbered. */
export function howToTable(steps: readonly HowToStep[]): Table {
  return {
    title: 'How to do it',
    columns: ['Step', 'What to do', 'Measure'],
    rows: steps.map(([says, measure], index) => [
      countQuantity(index + 1, ['', '']),
      wordsQuantity(says),
      measure,
    ]),
  };
}
