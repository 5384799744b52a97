import type { Table } from './explanation';

/** The title of the table in which a calculator says how its answer is sewn: step, what to do, measure. */
const HOW_TO = 'How to do it';

/** Whether the table is the work in order. A page that shows the steps of a stage leaves such a table out. */
export function isHowTo({ title }: Table): boolean {
  return title === HOW_TO;
}
