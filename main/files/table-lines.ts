import Papa from 'papaparse';
import { newlines, TableRefused } from './table-text';

const MAX_LINES = 200_000;
const MAX_COLUMNS = 200;
const MAX_LINE_LENGTH = 1_000_000;

/** The cells of one row of a table, and the line number in the file where the row starts. */
export interface TableLine {
  readonly line: number;
  readonly cells: readonly string[];
}

interface Parsed {
  readonly data: readonly (readonly string[])[];
  readonly errors: readonly { readonly code: string; readonly row: number }[];
  readonly meta: { readonly cursor: number };
}

/** Reads separated values part by part. Blank lines are skipped; broken or oversized lines are refused with their number. */
export function* linesOfText(parts: Iterable<string>): Generator<TableLine> {
  let left = '';
  let line = 1;
  let read = 0;
  let parser: Papa.Parser | null = null;
  const take = function* (text: string, isLast: boolean): Generator<TableLine> {
    parser ??= parserFor(text);
    const { data, errors, meta } = parser.parse(text, 0, !isLast) as Parsed;
    const [fault] = errors;
    for (const [index, cells] of data.entries()) {
      if (fault?.row === index) refuseQuote(fault.code, line);
      if (cells.length > MAX_COLUMNS) {
        throw new TableRefused({ why: 'too-many-columns', line, most: MAX_COLUMNS });
      }
      if (cells.some((cell) => cell !== '')) {
        read += 1;
        if (read > MAX_LINES) throw new TableRefused({ why: 'too-many-lines', most: MAX_LINES });
        yield { line, cells };
      }
      line += 1 + newlinesIn(cells);
    }
    left = isLast ? '' : text.slice(meta.cursor);
  };
  for (const part of parts) {
    yield* take(left + part, false);
    if (left.length > MAX_LINE_LENGTH)
      throw new TableRefused({ why: 'line-too-long', line, most: MAX_LINE_LENGTH });
  }
  if (left !== '') yield* take(left, true);
}

function refuseQuote(code: string, line: number): never {
  throw new TableRefused(
    code === 'MissingQuotes' ? { why: 'quote-left-open', line } : { why: 'stray-quote', line },
  );
}

function newlinesIn(cells: readonly string[]): number {
  let count = 0;
  for (const cell of cells) if (cell.includes('\n')) count += newlines(cell);
  return count;
}

/** The separator is the most frequent one in the first line; the line ending is that of the first line. */
function parserFor(text: string): Papa.Parser {
  const [first = ''] = text.split(/\r\n|\r|\n/, 1);
  const bare = first.replace(/"[^"]*"/g, '');
  const countOf = (mark: string): number => bare.split(mark).length;
  const delimiter = [',', '\t', ';', '|'].reduce((best, mark) =>
    countOf(mark) > countOf(best) ? mark : best,
  );
  const end = text.slice(first.length, first.length + 2);
  const newline = end === '\r\n' ? '\r\n' : end.startsWith('\r') ? '\r' : '\n';
  return new Papa.Parser({ delimiter, newline, quoteChar: '"' });
}

/** Lines of cells as comma-separated values that every spreadsheet opens, with a byte order mark for the encoding. */
export function textOfLines(lines: readonly (readonly string[])[]): string {
  return `\ufeff${Papa.unparse(lines as string[][], { newline: '\r\n' })}\r\n`;
}
