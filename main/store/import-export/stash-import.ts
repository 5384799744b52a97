import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { FabricDetails } from '#core/domain/stash';
import type { PieceToAdd, StashRow, TableReading, TableToRead } from '#core/domain/stash-table';
import type { Settings } from '#core/domain/workshop';
import type { Customs } from '#core/stash/table/column-habits';
import { failure, type Result, success } from '#core/result';
import { fileState, TableRefused } from '#main/files/table-text';
import { recordChange } from '../history/changes';
import { addRows, type FabricToAdd } from './stash-import-rows';
import { findDuplicates } from './import-duplicates';
import { readTable, type ReadTable } from './stash-table';
import type { ImportContext } from './import-context';
import { readWorkshop } from '../workshop/workshop';

const ROWS_SHOWN = 500;
const REPEATS_LISTED = 50;

/** Reads a table and says what importing it would add. */
export function previewTable(
  context: ImportContext,
  { table, rows: shown = ROWS_SHOWN }: ChannelInput<'table:preview'>,
): Result<TableReading, Problem> {
  const read = readWhole(context, table);
  if (!read.ok) return read;
  const { titles, samples, rows, faults, faultCount, repeats, ...rest } = read.value;
  const plan = planImport(context, read.value, table);
  return success({
    ...rest,
    columns: titles.map((title, index) => ({
      title,
      samples: samples.slice(0, 3).map((cells) => (cells[index] ?? '').slice(0, 60)),
    })),
    preview: rows.slice(0, shown).map(({ row }) => row),
    faults,
    faultCount,
    sameNameCount: sameNamesOf(rows).length,
    repeats: repeats.slice(0, REPEATS_LISTED),
    repeatCount: repeats.length,
    alreadyHere: plan.alreadyHere,
    adds: countsOf(plan.fabrics),
  });
}

/** Imports every row that can be read as one change. */
export function importTable(
  context: ImportContext,
  { table }: ChannelInput<'table:import'>,
): Result<ChannelOutput<'table:import'>, Problem> {
  const read = readWhole(context, table);
  if (!read.ok) return read;
  if (read.value.rows.length === 0 && read.value.faultCount > 0) {
    return failure<Problem>({ code: 'table-has-faults', count: read.value.faultCount });
  }
  const { fabrics } = planImport(context, read.value, table);
  const counts = countsOf(fabrics);
  const words = `Imported ${String(counts.pieces)} ${counts.pieces === 1 ? 'piece' : 'pieces'} of fabric`;
  context.lastTable = null;
  return recordChange(context.store, words, (writable) => {
    addRows(writable, fabrics);
    return success(counts);
  });
}

function readWhole(
  context: ImportContext,
  table: ChannelInput<'table:preview'>['table'],
): Result<ReadTable, Problem> {
  const { store, tables } = context;
  const { currency, settings } = readWorkshop(store);
  const asked = {
    currency,
    bareUnit: settings.unitSystem === 'inch' ? 'in' : 'cm',
    habits: CUSTOMS[settings.unitSystem],
    fabricWidth: settings.fabricWidth,
  } as const;
  const file = table.source.kind === 'file' ? (tables.get(table.source.token) ?? null) : null;
  // What to do with repeats does not change what the table says.
  const from = JSON.stringify([
    { ...table, repeats: null, sameNames: null },
    file,
    file && fileState(file),
    asked,
  ]);
  if (context.lastTable?.from === from) return success(context.lastTable.read);
  context.lastTable = null;
  try {
    const read = readTable(table, file, { ...asked, memory: new Map() });
    context.lastTable = { from, read };
    return success(read);
  } catch (error) {
    if (!(error instanceof TableRefused)) throw error;
    return failure<Problem>({ code: 'table-refused', refusal: error.refusal });
  }
}

/** How dates and numbers are mostly written where lengths are in inches, and elsewhere. */
const CUSTOMS: Readonly<Record<Settings['unitSystem'], Customs>> = {
  inch: { dateOrder: 'month-first', bareUnit: 'in', thousands: ',' },
  metric: { dateOrder: 'day-first', bareUnit: 'cm', thousands: '.' },
};

/** Rows whose fabric has the name and the color words of an earlier one and differs otherwise. */
function sameNamesOf(rows: ReadTable['rows']): readonly number[] {
  const first = new Map<string, string>();
  return rows.flatMap(({ line, row }) => {
    const key = nameKey(row);
    const known = first.get(key);
    if (known === undefined) first.set(key, row.fabricKey);
    return known === undefined || known === row.fabricKey ? [] : [line];
  });
}

function nameKey({ details: { name, colorWords } }: StashRow): string {
  return JSON.stringify([name.toLowerCase(), colorWords.toLowerCase()]);
}

/** The row as one of a fabric that another row describes: what is its own goes with its piece or into the notes. */
function joinedDetails(one: FabricDetails, other: FabricDetails): FabricDetails {
  if (one.notes === other.notes) return one;
  const notes = [...new Set([...one.notes.split('\n'), ...other.notes.split('\n')])].filter(
    (line) => line !== '',
  );
  return { ...one, notes: notes.join('\n').slice(0, 5_000) };
}

interface ImportPlan {
  readonly fabrics: readonly FabricToAdd[];
  readonly alreadyHere: number;
}

/** Decides which rows to add to which fabric: a new one, or the same one in the stash. */
function planImport(
  { store }: ImportContext,
  table: ReadTable,
  { repeats, sameNames }: Pick<TableToRead, 'repeats' | 'sameNames'>,
): ImportPlan {
  const isLeftOut = new Set(repeats === 'leave-out' ? table.repeats.map(({ line }) => line) : []);
  const duplicates = repeats === 'leave-out' ? findDuplicates(store) : null;
  const fabrics = new Map<
    string,
    { details: FabricDetails; readonly pieces: PieceToAdd[]; readonly seq: number | null }
  >();
  let alreadyHere = 0;
  for (const { line, row } of table.rows) {
    if (isLeftOut.has(line)) continue;
    const seq = duplicates?.fabric(row.details) ?? null;
    if (seq !== null && (row.piece === null || duplicates?.takePiece(seq, row.piece) === true)) {
      alreadyHere += 1;
      continue;
    }
    const own = sameNames === 'one-fabric' ? nameKey(row) : row.fabricKey;
    const key = seq === null ? own : String(seq);
    const group = fabrics.get(key) ?? { details: row.details, pieces: [], seq };
    const { place } = row.details;
    const isElsewhere = row.piece?.place === '' && place !== group.details.place;
    const piece = row.piece !== null && isElsewhere ? { ...row.piece, place } : row.piece;
    if (piece !== null) group.pieces.push(piece);
    group.details = joinedDetails(group.details, row.details);
    fabrics.set(key, group);
  }
  return {
    alreadyHere,
    fabrics: [...fabrics.values()],
  };
}

function countsOf(fabrics: readonly FabricToAdd[]): TableReading['adds'] {
  const pieces = fabrics.flatMap((fabric) => fabric.pieces);
  return {
    fabrics: fabrics.filter(({ seq }) => seq === null).length,
    pieces: pieces.length,
    costMinor: pieces.reduce((sum, { costMinor }) => sum + (costMinor ?? 0), 0),
    unpriced: pieces.filter(({ costMinor }) => costMinor === null).length,
  };
}
