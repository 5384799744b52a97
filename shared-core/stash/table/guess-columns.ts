import type { StashColumn, TableMapping } from '#core/domain/stash-table';
import { guessMapping } from './column-titles';
import { isUnmeasured, kindOfAmount } from './read-amount';
import { readWrittenDate } from './read-written-date';

/** Of the filled cells of a column, so many must look alike. */
const MOST = 0.6;

/** What the cells of a column must look like to be taken for it; the surest first. */
const LOOKS: readonly (readonly [StashColumn, (cell: string) => boolean])[] = [
  ['bought-on', (cell) => !/^\d{1,3}$/.test(cell) && readWrittenDate(cell, 'month-first').ok],
  ['cost', (cell) => /^\p{Sc} ?\d|\d ?\p{Sc}$|^free$/u.test(cell)],
  ['size', (cell) => kindOfAmount(cell) !== null || isUnmeasured(cell) || SIZE.test(cell)],
];
const SIZE = /^[\d\s/.,½¼¾⅓⅔⅛⅜⅝⅞]+(?:yards?|yds?|inch(?:es)?|in|"|cm|m)\.?(?:\s*[x×].*)?$/i;

/** By the titles; then, for columns whose title says nothing, by what most of their cells look like. */
export function guessColumns(
  titles: readonly string[],
  rows: readonly (readonly string[])[],
  hasTitles: boolean,
): TableMapping {
  const byTitle = hasTitles ? guessMapping(titles) : titles.map(() => null);
  const mapping = [...byTitle];
  for (const [column, looks] of LOOKS) {
    if (mapping.includes(column) || (column === 'size' && mapping.includes('piece-length'))) continue;
    const at = mapping.findIndex((known, index) => known === null && isMostly(rows, index, looks));
    if (at >= 0) mapping[at] = column;
  }
  return mapping;
}

function isMostly(
  rows: readonly (readonly string[])[],
  index: number,
  looks: (cell: string) => boolean,
): boolean {
  const filled = rows.map((cells) => (cells[index] ?? '').trim()).filter((cell) => cell !== '');
  return filled.length > 0 && filled.filter(looks).length >= MOST * filled.length;
}
