import type { CellFault, StashColumn, StashRow, TableMapping, TableToRead } from '#core/domain/stash-table';
import { columnTitle, guessMapping, looksLikeTitles } from '#core/stash/table/column-titles';
import { unguardCell } from '#core/stash/table/formula-guard';
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
  /** Rows that repeat an earlier row in every cell. */
  readonly repeats: readonly { readonly line: number; readonly sameAs: number }[];
}

const FAULTS_LISTED = 200;
const SAMPLE_ROWS = 20;

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
  const guessed = hasTitles ? guessMapping(head) : head.map(() => null);
  const mapping = head.map((_cell, index) => (table.mapping ?? guessed)[index] ?? null);
  const reader = rowReader(mapping, settings);
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
  if (!hasTitles) take(opening.value);
  for (const line of lines) take(line);
  const titles = head.map((cell, index) => (hasTitles ? cell : `Column ${String(index + 1)}`));
  return { titles, samples, hasTitles, mapping, lines: count, repeats, ...reader.read() };
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
  let faultCount = 0;
  return {
    take: (cells: ReadonlyMap<StashColumn, string>, line: number, at: string | null): void => {
      const read = readStashRow(cells, settings);
      if (read.ok) {
        rows.push({ line, row: read.row });
        return;
      }
      faultCount += read.problems.length;
      for (const { field, problem } of read.problems.slice(0, FAULTS_LISTED - faults.length)) {
        faults.push({ line, column: mapping.indexOf(field) + 1, at, field, problem });
      }
    },
    read: () => ({ rows, faults, faultCount }),
  };
}
