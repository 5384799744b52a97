import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { PieceToAdd, StashRow, TableReading } from '#core/domain/stash-table';
import { failure, type Result, success } from '#core/result';
import { fileState, TableRefused } from '#main/files/table-text';
import { recordChange } from '../history/changes';
import { addRows, type FabricToAdd } from './stash-import-rows';
import { knownStash } from './import-duplicates';
import { readTable, type ReadTable } from './stash-table';
import type { StoreContext } from '../thread/store-context';
import { readWorkshop } from '../workshop/workshop';

const PREVIEW = 20;
const REPEATS_TOLD = 50;

/** Reads a table as it would be brought in. */
export function previewTable(
  context: StoreContext,
  { table }: ChannelInput<'table:read'>,
): Result<TableReading, Problem> {
  const read = readWhole(context, table);
  if (!read.ok) return read;
  const { titles, samples, rows, faults, faultCount, repeats, ...rest } = read.value;
  const plan = whatToAdd(context, read.value, table.repeats);
  return success({
    ...rest,
    columns: titles.map((title, index) => ({
      title,
      samples: samples.slice(0, 3).map((cells) => (cells[index] ?? '').slice(0, 60)),
    })),
    preview: rows.slice(0, PREVIEW).map(({ row }) => row),
    faults,
    faultCount,
    repeats: repeats.slice(0, REPEATS_TOLD),
    repeatCount: repeats.length,
    alreadyHere: plan.alreadyHere,
    adds: countsOf(plan.fabrics),
  });
}

/** Brings the whole table in as one change, or nothing of it. */
export function bringTableIn(
  context: StoreContext,
  { table }: ChannelInput<'table:bring-in'>,
): Result<ChannelOutput<'table:bring-in'>, Problem> {
  const read = readWhole(context, table);
  if (!read.ok) return read;
  if (read.value.faultCount > 0) {
    return failure<Problem>({ code: 'table-has-faults', count: read.value.faultCount });
  }
  const { fabrics } = whatToAdd(context, read.value, table.repeats);
  const counts = countsOf(fabrics);
  const words = `Brought in ${String(counts.pieces)} ${counts.pieces === 1 ? 'piece' : 'pieces'} of fabric from a table`;
  context.lastTable = null;
  return recordChange(context.store, words, (writable) => {
    addRows(writable, fabrics);
    return success(counts);
  });
}

function readWhole(
  context: StoreContext,
  table: ChannelInput<'table:read'>['table'],
): Result<ReadTable, Problem> {
  const { store, tables } = context;
  const { currency, settings } = readWorkshop(store);
  const asked = {
    currency,
    bareUnit: settings.unitSystem === 'inch' ? 'in' : 'cm',
    fabricWidth: settings.fabricWidth,
    today: store.surroundings.today(),
  } as const;
  const file = table.source.kind === 'file' ? (tables.get(table.source.token) ?? null) : null;
  // What is done with repeats does not change what a table says.
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

interface Plan {
  readonly fabrics: readonly FabricToAdd[];
  readonly alreadyHere: number;
}

/** Which rows are to be added to which fabric: one of the table, or one of the stash that is the same. */
function whatToAdd({ store }: StoreContext, table: ReadTable, repeats: 'leave-out' | 'add'): Plan {
  const isLeftOut = new Set(repeats === 'leave-out' ? table.repeats.map(({ line }) => line) : []);
  const known = repeats === 'leave-out' ? knownStash(store) : null;
  const fabrics = new Map<
    string,
    { readonly row: StashRow; readonly pieces: PieceToAdd[]; readonly seq: number | null }
  >();
  let alreadyHere = 0;
  for (const { line, row } of table.rows) {
    if (isLeftOut.has(line)) continue;
    const seq = known?.fabric(row.details) ?? null;
    if (seq !== null && (row.piece === null || known?.takePiece(seq, row.piece) === true)) {
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
    costMinor: pieces.reduce((sum, { costMinor }) => sum + costMinor, 0),
  };
}
