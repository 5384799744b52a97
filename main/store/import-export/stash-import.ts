import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { PieceToAdd, StashRow, TableReading } from '#core/domain/stash-table';
import { failure, type Result, success } from '#core/result';
import { fileState, TableRefused } from '#main/files/table-text';
import { recordChange } from '../history/changes';
import { addRows, type FabricToAdd } from './stash-import-rows';
import { findDuplicates } from './import-duplicates';
import { readTable, type ReadTable } from './stash-table';
import type { ImportContext } from './import-context';
import { readWorkshop } from '../workshop/workshop';

const PREVIEW_ROWS = 20;
const REPEATS_LISTED = 50;

/** Reads a table and says what importing it would add. */
export function previewTable(
  context: ImportContext,
  { table }: ChannelInput<'table:preview'>,
): Result<TableReading, Problem> {
  const read = readWhole(context, table);
  if (!read.ok) return read;
  const { titles, samples, rows, faults, faultCount, repeats, ...rest } = read.value;
  const plan = planImport(context, read.value, table.repeats);
  return success({
    ...rest,
    columns: titles.map((title, index) => ({
      title,
      samples: samples.slice(0, 3).map((cells) => (cells[index] ?? '').slice(0, 60)),
    })),
    preview: rows.slice(0, PREVIEW_ROWS).map(({ row }) => row),
    faults,
    faultCount,
    repeats: repeats.slice(0, REPEATS_LISTED),
    repeatCount: repeats.length,
    alreadyHere: plan.alreadyHere,
    adds: countsOf(plan.fabrics),
  });
}

/** Imports the whole table as one change, or nothing of it. */
export function importTable(
  context: ImportContext,
  { table }: ChannelInput<'table:import'>,
): Result<ChannelOutput<'table:import'>, Problem> {
  const read = readWhole(context, table);
  if (!read.ok) return read;
  if (read.value.faultCount > 0) {
    return failure<Problem>({ code: 'table-has-faults', count: read.value.faultCount });
  }
  const { fabrics } = planImport(context, read.value, table.repeats);
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
    fabricWidth: settings.fabricWidth,
  } as const;
  const file = table.source.kind === 'file' ? (tables.get(table.source.token) ?? null) : null;
  // What to do with repeats does not change what the table says.
  const from = JSON.stringify([{ ...table, repeats: null }, file, file && fileState(file), asked]);
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

interface ImportPlan {
  readonly fabrics: readonly FabricToAdd[];
  readonly alreadyHere: number;
}

/** Decides which rows to add to which fabric: a new one, or the same one in the stash. */
function planImport({ store }: ImportContext, table: ReadTable, repeats: 'leave-out' | 'add'): ImportPlan {
  const isLeftOut = new Set(repeats === 'leave-out' ? table.repeats.map(({ line }) => line) : []);
  const duplicates = repeats === 'leave-out' ? findDuplicates(store) : null;
  const fabrics = new Map<
    string,
    { readonly row: StashRow; readonly pieces: PieceToAdd[]; readonly seq: number | null }
  >();
  let alreadyHere = 0;
  for (const { line, row } of table.rows) {
    if (isLeftOut.has(line)) continue;
    const seq = duplicates?.fabric(row.details) ?? null;
    if (seq !== null && (row.piece === null || duplicates?.takePiece(seq, row.piece) === true)) {
      alreadyHere += 1;
      continue;
    }
    const key = seq === null ? row.fabricKey : String(seq);
    const group = fabrics.get(key) ?? { row, pieces: [], seq };
    if (row.piece !== null) group.pieces.push(row.piece);
    fabrics.set(key, group);
  }
  return {
    alreadyHere,
    fabrics: [...fabrics.values()].map(({ row, pieces, seq }) => ({ details: row.details, pieces, seq })),
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
