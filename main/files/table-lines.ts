import Papa from 'papaparse';
import { newlines, TableRefused } from './table-text';

const MOST_LINES = 200_000;
const MOST_COLUMNS = 200;
const MOST_IN_A_LINE = 1_000_000;

/** The cells of one line of a table, and where it begins as a text editor counts lines. */
export interface TableLine {
  readonly line: number;
  readonly cells: readonly string[];
}

interface Parsed {
  readonly data: readonly (readonly string[])[];
  readonly errors: readonly { readonly code: string; readonly row: number }[];
  readonly meta: { readonly cursor: number };
}

/** Reads separated values part by part; blank lines are passed over, and what no table has is refused with its line. */
export function* linesOfText(parts: Iterable<string>): Generator<TableLine> {
  let [left, line, read] = ['', 1, 0];
  let parser: Papa.Parser | null = null;
  const take = function* (text: string, isLast: boolean): Generator<TableLine> {
    parser ??= parserFor(text);
    const { data, errors, meta } = parser.parse(text, 0, !isLast) as Parsed;
    const [fault] = errors;
    for (const [index, cells] of data.entries()) {
      if (fault?.row === index) refuseQuote(fault.code, line);
      if (cells.length > MOST_COLUMNS) {
        throw new TableRefused({ why: 'too-many-columns', line, most: MOST_COLUMNS });
      }
      if (cells.some((cell) => cell !== '')) {
        read += 1;
        if (read > MOST_LINES) throw new TableRefused({ why: 'too-many-lines', most: MOST_LINES });
        yield { line, cells };
      }
      line += 1 + newlinesIn(cells);
    }
    left = isLast ? '' : text.slice(meta.cursor);
  };
  for (const part of parts) {
    yield* take(left + part, false);
    if (left.length > MOST_IN_A_LINE)
      throw new TableRefused({ why: 'line-too-long', line, most: MOST_IN_A_LINE });
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

/** What separates the cells is what stands most often in the first line; lines end as the first of them does. */
function parserFor(text: string): Papa.Parser {
  const [first = ''] = text.split(/\r\n|\r|\n/, 1);
  const bare = first.replace(/"[^"]*"/g, '');
  const often = (mark: string): number => bare.split(mark).length;
  const delimiter = [',', '\t', ';', '|'].reduce((best, mark) => (often(mark) > often(best) ? mark : best));
  const end = text.slice(first.length, first.length + 2);
  const newline = end === '\r\n' ? '\r\n' : end.startsWith('\r') ? '\r' : '\n';
  return new Papa.Parser({ delimiter, newline, quoteChar: '"' });
}

/** Lines of cells as a file of separated values that every spreadsheet opens, with the mark that says its encoding. */
export function textOfLines(lines: readonly (readonly string[])[]): string {
  return `\ufeff${Papa.unparse(lines as string[][], { newline: '\r\n' })}\r\n`;
}
