import {
  pieceKindSchema,
  pieceWidthSchema,
  type FabricDetails,
  printDirectionSchema,
  printRunsSchema,
  NO_COLOR,
} from '#core/domain/stash';
import { placeNames, placePathOf } from '#core/domain/place';
import type { CellProblem, PieceToAdd, StashColumn, StashRow } from '#core/domain/stash-table';
import type { Result } from '#core/result';
import { type Length, lengthFromMeters } from '#core/units/length';
import type { LengthUnit } from '#core/units/length-unit';
import type { CurrencyCode } from '#core/units/money';
import { hexOfColorWords } from '../color-words';
import type { ColumnHabits } from './column-habits';
import { isUnmeasured, kindOfAmount, readAmount } from './read-amount';
import { type CellReader, readChoice, readCost, readDay, readLength, readText, readYesNo } from './read-cell';

/** The unit of numbers without one, and the values for cells that are empty. */
export interface TableSettings {
  readonly currency: CurrencyCode;
  /** Of widths; the amounts of a column may be in another one. */
  readonly bareUnit: LengthUnit;
  readonly habits: ColumnHabits;
  readonly fabricWidth: Length;
  /** Results by column and text: the same cell often repeats, and is read once. */
  readonly memory: Map<string, Result<unknown, CellProblem>>;
}

export interface RowProblem {
  readonly field: StashColumn;
  readonly problem: CellProblem;
}

const MAXIMUM_REMEMBERED = 20_000;
/** In minor units, as the contract takes it. */
const MAXIMUM_COST = 100_000_000;
const isWidth = (length: Length): boolean => pieceWidthSchema.safeParse(length).success;
/** The end of a bolt may be shorter than any length that is bought. */
const isLength = (length: Length): boolean => length > 0 && length <= lengthFromMeters(300);

/**
 * Reads one line of a table. A line with a size, piece width or piece length has a piece of fabric; any other is a fabric
 * without pieces. Reports everything that is wrong with the line at once.
 */
export function readStashRow(
  cells: ReadonlyMap<StashColumn, string>,
  settings: TableSettings,
):
  | { readonly ok: true; readonly row: StashRow }
  | { readonly ok: false; readonly problems: readonly RowProblem[] } {
  const problems: RowProblem[] = [];
  const cell: CellReader = (column, fallback, read) => {
    const text = cells.get(column) ?? '';
    // Notes may be blank but not empty, and are kept as they are.
    if ((column === 'notes' ? text : text.trim()) === '') return fallback;
    const result = remembered({ cells, column, text, memory: settings.memory }, read);
    if (result.ok) return result.value;
    problems.push({ field: column, problem: result.error });
    return fallback;
  };
  const details = readDetails(cell, settings);
  if (details.name === '' && !problems.some(({ field }) => field === 'name')) {
    problems.push({ field: 'name', problem: { kind: 'missing' } });
  }
  const piece = readPiece(cell, cells, details, settings);
  if (piece === 'incomplete') {
    const field = cells.has('size') ? 'size' : 'piece-length';
    problems.push({ field, problem: { kind: 'missing' } });
  }
  if (problems.length > 0 || piece === 'incomplete') return { ok: false, problems };
  const number = cells.get('fabric-number')?.trim() ?? '';
  const fabric = withUnmeasured(details, cells.get('size') ?? '');
  return {
    ok: true,
    row: { details: fabric, piece, fabricKey: JSON.stringify([number, ...Object.values(fabric)]) },
  };
}

/** “Scrap” is no length, but it is not lost. */
function withUnmeasured(details: FabricDetails, size: string): FabricDetails {
  if (!isUnmeasured(size)) return details;
  const said = `Amount in the table: ${size.trim()}`;
  return { ...details, notes: details.notes === '' ? said : `${details.notes}\n${said}` };
}

/** Names and notes rarely repeat and are quick to read, so they are not remembered. */
const RARELY_REPEATED: readonly StashColumn[] = ['name', 'notes'];

interface CellToRead extends Pick<TableSettings, 'memory'> {
  readonly cells: ReadonlyMap<StashColumn, string>;
  readonly column: StashColumn;
  readonly text: string;
}

function remembered<Value>(
  { cells, column, text, memory }: CellToRead,
  read: (text: string) => Result<Value, CellProblem>,
): Result<Value, CellProblem> {
  if (RARELY_REPEATED.includes(column)) return read(text);
  // A size such as FQ or 1 yd depends on the width of the fabric too.
  const key = `${column} ${column === 'size' ? (cells.get('fabric-width') ?? '') : ''} ${text}`;
  const before = memory.get(key) as Result<Value, CellProblem> | undefined;
  if (before !== undefined) return before;
  const result = read(text);
  if (memory.size < MAXIMUM_REMEMBERED) memory.set(key, result);
  return result;
}

function readDetails(cell: CellReader, { bareUnit, fabricWidth }: TableSettings): FabricDetails {
  const short = (column: StashColumn) => cell(column, '', readText(120));
  return {
    name: short('name'),
    print: short('print'),
    colorWords: short('color-words'),
    fiber: short('fiber'),
    direction: cell('direction', 'any', readChoice(printDirectionSchema.options, DIRECTION_WORDS)),
    width: cell('fabric-width', fabricWidth, readLength(bareUnit, isWidth)),
    isWashed: cell('washed', false, readYesNo),
    supplier: short('supplier'),
    place: placePathOf(placeNames(short('place'))),
    swatch: cell('swatch', hexOfColorWords(short('color-words')) ?? NO_COLOR, (text) => {
      const swatch = text.trim().toLowerCase();
      return /^#[0-9a-f]{6}$/.test(swatch)
        ? { ok: true, value: swatch }
        : { ok: false, error: { kind: 'unknown', read: text.slice(0, 40), expected: ['#a0522d'] } };
    }),
    notes: cell('notes', '', (text) =>
      text.length <= 5_000
        ? { ok: true, value: text }
        : { ok: false, error: { kind: 'too-long', most: 5_000 } },
    ),
  };
}

function readPiece(
  cell: CellReader,
  cells: ReadonlyMap<StashColumn, string>,
  details: FabricDetails,
  { bareUnit, currency, habits }: TableSettings,
): PieceToAdd | 'incomplete' | null {
  const isFilled = (column: StashColumn) => (cells.get(column) ?? '').trim() !== '';
  const size = cell('size', null, (text) => {
    if (isUnmeasured(text)) return { ok: true, value: null };
    const read = readAmount(text, habits.bareUnit, details.width);
    return read.ok ? read : { ok: false, error: { kind: 'length', problem: read.error } };
  });
  const own = readLength(habits.bareUnit, isLength);
  const width = cell('piece-width', size?.width ?? details.width, readLength(bareUnit, isWidth));
  const length = cell('piece-length', size?.length ?? null, own);
  const kind = cell(
    'kind',
    kindOfAmount(cells.get('size') ?? '') ?? 'yardage',
    readChoice(pieceKindSchema.options, {}),
  );
  const kindName = cell('kind-name', '', readText(60));
  const unitLength = cell('unit-length', size?.unitLength ?? null, own);
  const place = placePathOf(placeNames(cell('piece-place', '', readText(120))));
  const runs = cell('piece-print', 'along', readChoice(printRunsSchema.options, {}));
  const costMinor = cell(
    'cost',
    null,
    readCost(currency, { most: MAXIMUM_COST, thousands: habits.thousands }),
  );
  const on = cell('bought-on', null, readDay(habits.dateOrder));
  if (length !== null)
    return { kind, kindName, width, length, unitLength, place, printRuns: runs, costMinor, on };
  // A size that could not be read is already a problem; a width or a cost alone is not a whole piece.
  if (isFilled('size') || isFilled('piece-length')) return null;
  return isFilled('piece-width') || isFilled('cost') ? 'incomplete' : null;
}

const DIRECTION_WORDS: Readonly<Record<string, 'any' | 'one-way' | 'two-way'>> = {
  none: 'any',
  no: 'any',
  'no direction': 'any',
  yes: 'one-way',
  'one way up': 'one-way',
  'up and down alike': 'two-way',
  'non-directional': 'any',
  directional: 'one-way',
};
