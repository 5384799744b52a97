import type { Quantity, Table } from './explanation';
import { countQuantity, wordsQuantity } from './quantities';

/** One step of the work: what to do, and the measure it needs. */
export type HowToStep = readonly [says: string, measure: Quantity];

export const NO_MEASURE = wordsQuantity('');

const HOW_TO = 'How to do it';

/** The work in order, numbered: how an answer is sewn. */
export function howToTable(steps: readonly HowToStep[]): Table {
  return {
    title: HOW_TO,
    columns: ['Step', 'What to do', 'Measure'],
    rows: steps.map(([says, measure], index) => [
      countQuantity(index + 1, ['', '']),
      wordsQuantity(says),
      measure,
    ]),
  };
}

/** Whether the table is the work in order. A page that shows the steps of a stage leaves such a table out. */
export function isHowTo({ title }: Table): boolean {
  return title === HOW_TO;
}
