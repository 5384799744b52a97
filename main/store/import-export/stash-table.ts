import type { CellFault, StashColumn, StashRow, TableMapping, TableToRead } from '#core/domain/stash-table';
import { columnHabits } from '#core/stash/table/column-habits';
import { columnTitle, looksLikeTitles } from '#core/stash/table/column-titles';
import { unguardCell } from '#core/stash/table/formula-guard';
import { guessColumns } from '#core/stash/table/guess-columns';
import { readStashRow, type TableSettings } from '#core/stash/table/read-row';
import { stashFileLines } from '#core/stash/table/stash-file';
import { WRITTEN_COLUMNS } from '#core/stash/table/write-rows';
import { readStashFile } from '#main/files/stash-data';
import { linesOfText, type TableLine } from '#main/files/table-lines';
import { TableRefused, textOfFile } from '#main/files/table-text';

/** A table with every row read. */
export interface ReadTable {
  readonly titles: readonly string[];
  readonly samples: readonly (readonly string[])[];
  readonly hasTitles: boolean;
  readonly mapping: TableMapping;
  readonly lines: number;
  readonly rows: readonly { readonly line: number; readonly row: StashRow }[];
  readonly faults: readonly CellFault[];
  readonly faultCount: number;
  readonly faultyRows: number;
  /** Rows that repeat an earlier row in every cell. */
  readonly repeats: readonly { readonly line: number; readonly sameAs: number }[];
}

const FAULTS_LISTED = 200;
const SAMPLE_ROWS = 20;
/** Columns without a title that says what they hold are guessed by so many rows. */
const ROWS_GUESSED_BY = 200;

/** Reads a table to its end; throws TableRefused if it cannot. `file` is the path of a chosen file. */
export function readTable(table: TableToRead, file: string | null, settings: TableSettings): ReadTable {
  const parts = partsOf(table, file);
  const first = parts.next();
  const opening = first.done === true ? '' : first.value;
  const whole = (function* () {
    yield opening;
    yield* parts;
  })();
  return opening.trimStart().startsWith('{')
    ? readData([...whole].join(''), settings)
    : readLines(whole, table, settings);
}

function* partsOf({ source, encoding }: TableToRead, file: string | null): Generator<string> {
  if (source.kind === 'text') yield source.text;
  else if (file === null) throw new TableRefused({ why: 'gone' });
  else yield* textOfFile(file, encoding);
}

function readLines(parts: Iterable<string>, table: TableToRead, settings: TableSettings): ReadTable {
  const lines = linesOfText(parts);
  const opening = lines.next();
  if (opening.done === true) throw new TableRefused({ why: 'empty' });
  const head = opening.value.cells;
  const hasTitles = table.hasTitles ?? looksLikeTitles(head);
  const all = [...(hasTitles ? [] : [opening.value]), ...lines].map((line) => mended(line, table));
  const guessed = guessColumns(
    head,
    all.slice(0, ROWS_GUESSED_BY).map(({ cells }) => cells),
    hasTitles,
  );
  const mapping = head.map((_cell, index) => (table.mapping ?? guessed)[index] ?? null);
  const habits = columnHabits((column) => columnOf(all, mapping.indexOf(column)), settings.habits);
  const reader = rowReader(mapping, { ...settings, habits });
  const samples: (readonly string[])[] = [];
  const repeats: { readonly line: number; readonly sameAs: number }[] = [];
  const seen = new Map<string, number>();
  let count = 0;
  const take = ({ line, cells }: TableLine): void => {
    count += 1;
    if (samples.length < SAMPLE_ROWS) samples.push(cells);
    reader.take(cellsByColumn(cells, mapping), line, null);
    const whole = cells.join('\0');
    const sameAs = seen.get(whole);
    if (sameAs === undefined) seen.set(whole, line);
    else repeats.push({ line, sameAs });
  };
  for (const line of all) take(line);
  const titles = head.map((cell, index) => (hasTitles ? cell : `Column ${String(index + 1)}`));
  return { titles, samples, hasTitles, mapping, lines: count, repeats, ...reader.read() };
}

/** The line with the cells that the maker wrote anew. */
function mended({ line, cells }: TableLine, { mends }: TableToRead): TableLine {
  const own = mends.filter((mend) => mend.line === line);
  return own.length === 0
    ? { line, cells }
    : {
        line,
        cells: cells.map((cell, index) => own.find(({ column }) => column === index + 1)?.text ?? cell),
      };
}

function* columnOf(lines: readonly TableLine[], index: number): Generator<string> {
  if (index < 0) return;
  for (const { cells } of lines) yield cells[index] ?? '';
}

function readData(text: string, settings: TableSettings): ReadTable {
  const file = readStashFile(text, settings.currency);
  const reader = rowReader(WRITTEN_COLUMNS, settings);
  let count = 0;
  for (const { at, cells } of stashFileLines(file)) {
    count += 1;
    reader.take(cells, 0, at);
  }
  const titles = WRITTEN_COLUMNS.map(columnTitle);
  const shared = { titles, samples: [], hasTitles: true, mapping: WRITTEN_COLUMNS, repeats: [] };
  return { ...shared, lines: count, ...reader.read() };
}

function cellsByColumn(cells: readonly string[], mapping: TableMapping): ReadonlyMap<StashColumn, string> {
  const byColumn = new Map<StashColumn, string>();
  for (const [index, field] of mapping.entries()) {
    if (field !== null) byColumn.set(field, unguardCell(cells[index] ?? ''));
  }
  return byColumn;
}

function rowReader(mapping: TableMapping, settings: TableSettings) {
  const rows: { readonly line: number; readonly row: StashRow }[] = [];
  const faults: CellFault[] = [];
  let [faultCount, faultyRows] = [0, 0];
  return {
    take: (cells: ReadonlyMap<StashColumn, string>, line: number, at: string | null): void => {
      const read = readStashRow(cells, settings);
      if (read.ok) {
        rows.push({ line, row: read.row });
        return;
      }
      faultCount += read.problems.length;
      faultyRows += 1;
      for (const { field, problem } of read.problems.slice(0, FAULTS_LISTED - faults.length)) {
        faults.push({
          line,
          column: mapping.indexOf(field) + 1,
          at,
          field,
          text: (cells.get(field) ?? '').slice(0, 200),
          problem,
        });
      }
    },
    read: () => ({ rows, faults, faultCount, faultyRows }),
  };
}
