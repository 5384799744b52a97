import { assertNever } from '#core/assert-never';
import type { CellFault, CellProblem, TableRefusal } from '#core/domain/stash-table';
import { columnTitle } from '#core/stash/table/column-titles';
import { lengthProblemWords, moneyProblemWords, orList } from './field-problems';

/** Why a file cannot be imported, and what to do about it. */
export function tableRefusalWords(refusal: TableRefusal): string {
  switch (refusal.why) {
    case 'gone':
      return 'The file is gone. Choose it again.';
    case 'empty':
      return 'This table is empty.';
    case 'too-large':
      return `This file is ${megabytes(refusal.bytes)}. A fabric table can be ${megabytes(refusal.most)} at most. Is it the right file?`;
    case 'not-text':
      return `This file isn’t plain text (line ${String(refusal.line)}). Save the spreadsheet as CSV and choose that file.`;
    case 'wrong-encoding':
      return `Line ${String(refusal.line)}, column ${String(refusal.column)} can’t be read in this encoding. Choose another one, or save the table as UTF-8.`;
    case 'quote-left-open':
      return `The quotation mark that opens in line ${String(refusal.line)} is never closed.`;
    case 'stray-quote':
      return `Line ${String(refusal.line)} has text after a closing quotation mark. Write a quotation mark inside a cell twice.`;
    case 'line-too-long':
      return `Line ${String(refusal.line)} is longer than ${String(refusal.most)} characters. A quotation mark may be missing, or this isn’t a table.`;
    case 'too-many-lines':
      return `This table has more than ${String(refusal.most)} lines. Import it in parts.`;
    case 'too-many-columns':
      return `Line ${String(refusal.line)} has more than ${String(refusal.most)} columns. This isn’t a fabric table.`;
    case 'not-json':
      return `The file can’t be read past line ${String(refusal.line)}, column ${String(refusal.column)}.`;
    case 'not-a-stash-file':
      return refusal.at === ''
        ? 'This isn’t a stash file.'
        : `This isn’t a stash file that Ringbound can read: look at “${refusal.at}”.`;
    case 'other-currency':
      return `This stash is in ${refusal.found}, and your workshop uses ${refusal.expected}.`;
    default:
      return assertNever(refusal);
  }
}

/** `Line 14, column 3 (Size)`; in a stash file, the path to the value. */
export function faultPlace({ line, column, at, field }: CellFault): string {
  if (at !== null) return `${at}, ${columnTitle(field)}`;
  return column === 0
    ? `Line ${String(line)}, ${columnTitle(field)}`
    : `Line ${String(line)}, column ${String(column)} (${columnTitle(field)})`;
}

/** What is wrong with a cell, and what to write instead. */
export function cellProblemWords(problem: CellProblem): string {
  switch (problem.kind) {
    case 'length':
      return lengthProblemWords(problem.problem);
    case 'money':
      return moneyProblemWords(problem.problem);
    case 'negative':
      return `“${problem.read}” is less than zero.`;
    case 'unknown':
      return `“${problem.read}” isn’t one of the choices. Write ${orList(problem.expected)}.`;
    case 'date':
      return `“${problem.read}” isn’t a date. Write the year first, such as 2027-02-28.`;
    case 'out-of-range':
      return `“${problem.read}” is too large or too small.`;
    case 'too-long':
      return `This is longer than ${String(problem.most)} characters.`;
    case 'missing':
      return 'This cell is empty.';
    default:
      return assertNever(problem);
  }
}

function megabytes(bytes: number): string {
  return `${String(Math.ceil(bytes / 2 ** 20))} MB`;
}
