import { assertNever } from '#core/assert-never';
import type { CellFault, CellProblem, TableRefusal } from '#core/domain/stash-table';
import { columnTitle } from '#core/stash/table/column-titles';
import { lengthProblemWords, moneyProblemWords, orList } from './field-problems';

/** Why a table is not read, and what to do about it. */
export function tableRefusalWords(refusal: TableRefusal): string {
  switch (refusal.why) {
    case 'gone':
      return 'The file cannot be found any more. Choose it again.';
    case 'empty':
      return 'There is nothing in this table.';
    case 'too-large':
      return `This file has ${megabytes(refusal.bytes)}; a table of fabrics may have ${megabytes(refusal.most)} at most. It was not read. Is it the right file?`;
    case 'not-text':
      return `This file is not a table of text: line ${String(refusal.line)} has bytes that are no letters. From a spreadsheet, save it as CSV.`;
    case 'wrong-encoding':
      return `Line ${String(refusal.line)}, column ${String(refusal.column)} is not written in this encoding. Choose another one, or save the table as UTF-8.`;
    case 'quote-left-open':
      return `The quotation mark that opens in line ${String(refusal.line)} is never closed.`;
    case 'stray-quote':
      return `Line ${String(refusal.line)} goes on after a closing quotation mark. A quotation mark inside a cell is written twice.`;
    case 'line-too-long':
      return `Line ${String(refusal.line)} does not end within ${String(refusal.most)} characters: a quotation mark may be missing, or this is no table.`;
    case 'too-many-lines':
      return `This table has more than ${String(refusal.most)} lines. Bring it in in parts.`;
    case 'too-many-columns':
      return `Line ${String(refusal.line)} has more than ${String(refusal.most)} columns. This is no table of fabrics.`;
    case 'not-json':
      return `Line ${String(refusal.line)}, column ${String(refusal.column)} breaks the file of data off.`;
    case 'not-a-stash-file':
      return `${refusal.at === '' ? 'This file of data' : `“${refusal.at}”`} is not as a stash is written (${refusal.expected}).`;
    case 'other-currency':
      return `This stash was written in ${refusal.found}; this workshop counts in ${refusal.expected}.`;
    default:
      return assertNever(refusal);
  }
}

/** `Line 14, column 3 (Size)`; in a file of data, the place by its names. */
export function faultPlace({ line, column, at, field }: CellFault): string {
  if (at !== null) return `${at}, ${columnTitle(field)}`;
  return column === 0
    ? `Line ${String(line)}, ${columnTitle(field)}`
    : `Line ${String(line)}, column ${String(column)} (${columnTitle(field)})`;
}

/** What is wrong with a cell, and what would be taken. */
export function cellProblemWords(problem: CellProblem): string {
  switch (problem.kind) {
    case 'length':
      return lengthProblemWords(problem.problem);
    case 'money':
      return moneyProblemWords(problem.problem);
    case 'negative':
      return `“${problem.read}” is less than nothing.`;
    case 'unknown':
      return `“${problem.read}” is not known here. Write ${orList(problem.expected)}.`;
    case 'date':
      return `“${problem.read}” is no day. Write the year first, such as 2027-02-28.`;
    case 'out-of-range':
      return `“${problem.read}” is more, or less, than there can be.`;
    case 'too-long':
      return `This is longer than ${String(problem.most)} letters.`;
    case 'missing':
      return 'Nothing is said here.';
    default:
      return assertNever(problem);
  }
}

function megabytes(bytes: number): string {
  return `${String(Math.ceil(bytes / 2 ** 20))} MB`;
}
