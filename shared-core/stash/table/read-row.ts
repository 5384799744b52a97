import {
  pieceKindSchema,
  pieceWidthSchema,
  type FabricDetails,
  printDirection,
  printRuns,
} from '#core/domain/stash';
import { placeNames, placePathOf } from '#core/domain/place';
import type { CellProblem, PieceToAdd, StashColumn, StashRow } from '#core/domain/stash-table';
import type { Result } from '#core/result';
import type { CalendarDate } from '#core/units/calendar-date';
import { type Length, lengthFromUnits, UNITS_PER_METER } from '#core/units/length';
import type { LengthUnit } from '#core/units/length-unit';
import type { CurrencyCode } from '#core/units/money';
import { parseFabricSize } from '#core/units/parse-fabric-size';
import { type CellReader, readChoice, readCost, readDay, readLength, readText, readYesNo } from './read-cell';

/** What a cell without a unit means, and what stands where a table says nothing. */
export interface TableSettings {
  readonly currency: CurrencyCode;
  readonly bareUnit: LengthUnit;
  readonly fabricWidth: Length;
  readonly today: CalendarDate;
  /** Cells read before, by what they say and their text: a table says the same again and again. */
  readonly memory: Map<string, Result<unknown, CellProblem>>;
}

export interface RowProblem {
  readonly says: StashColumn;
  readonly problem: CellProblem;
}

/** The color fabric is drawn in while nobody has said which. */
const UNSAID_SWATCH = '#b9a88c';
const MOST_KEPT = 20_000;
const MOST_COST = 100_000_000;
const isWidth = (length: Length): boolean => pieceWidthSchema.safeParse(length).success;
/** The end of a bolt may be shorter than anything that is bought. */
const isLength = (length: Length): boolean => length > 0 && length <= lengthFromUnits(300 * UNITS_PER_METER);

/**
 * Reads one line by what its columns say. A line with any of size, piece width or piece length has a piece; a line with
 * none is a fabric alone. Everything wrong with the line is told at once.
 */
export function readStashRow(
  cells: ReadonlyMap<StashColumn, string>,
  settings: TableSettings,
):
  | { readonly ok: true; readonly row: StashRow }
  | { readonly ok: false; readonly problems: readonly RowProblem[] } {
  const problems: RowProblem[] = [];
  const cell: CellReader = (says, fallback, read) => {
    const text = cells.get(says) ?? '';
    // Notes are kept to the last space; anything else that is blank says nothing.
    if ((says === 'notes' ? text : text.trim()) === '') return fallback;
    const result = remembered(cells, says, text, settings, read);
    if (result.ok) return result.value;
    problems.push({ says, problem: result.error });
    return fallback;
  };
  const details = readDetails(cell, settings);
  if (details.name === '' && !problems.some(({ says }) => says === 'name')) {
    problems.push({ says: 'name', problem: { kind: 'missing' } });
  }
  const piece = readPiece(cell, cells, details, settings);
  if (piece === 'half') problems.push({ says: 'piece-length', problem: { kind: 'missing' } });
  if (problems.length > 0 || piece === 'half') return { ok: false, problems };
  const number = cells.get('fabric-number')?.trim() ?? '';
  return {
    ok: true,
    row: { details, piece, fabricKey: JSON.stringify([number, ...Object.values(details)]) },
  };
}

/** What a name or a note says is seldom said again, and soon read. */
const SELDOM_AGAIN: readonly StashColumn[] = ['name', 'notes'];

function remembered<Value>(
  cells: ReadonlyMap<StashColumn, string>,
  says: StashColumn,
  text: string,
  { memory }: TableSettings,
  read: (text: string) => Result<Value, CellProblem>,
): Result<Value, CellProblem> {
  if (SELDOM_AGAIN.includes(says)) return read(text);
  const known = `${says} ${says === 'size' ? (cells.get('fabric-width') ?? '') : ''} ${text}`;
  const before = memory.get(known) as Result<Value, CellProblem> | undefined;
  if (before !== undefined) return before;
  const result = read(text);
  if (memory.size < MOST_KEPT) memory.set(known, result);
  return result;
}

function readDetails(cell: CellReader, { bareUnit, fabricWidth }: TableSettings): FabricDetails {
  const short = (says: StashColumn) => cell(says, '', readText(120));
  return {
    name: short('name'),
    print: short('print'),
    colorWords: short('color-words'),
    fiber: short('fiber'),
    direction: cell('direction', 'any', readChoice(printDirection.options, DIRECTION_WORDS)),
    width: cell('fabric-width', fabricWidth, readLength(bareUnit, isWidth)),
    isWashed: cell('washed', false, readYesNo),
    supplier: short('supplier'),
    place: placePathOf(placeNames(short('place'))),
    swatch: cell('swatch', UNSAID_SWATCH, (text) => {
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
  { bareUnit, currency, today }: TableSettings,
): PieceToAdd | 'half' | null {
  const says = (column: StashColumn) => (cells.get(column) ?? '').trim() !== '';
  const size = cell('size', null, (text) => {
    const read = parseFabricSize(text, bareUnit, details.width);
    return read.ok ? read : { ok: false, error: { kind: 'length', problem: read.error } };
  });
  const own = readLength(bareUnit, isLength);
  const width = cell('piece-width', size?.width ?? details.width, readLength(bareUnit, isWidth));
  const length = cell('piece-length', size?.length ?? null, own);
  const kind = cell('kind', isFat(cells.get('size')) ?? 'yardage', readChoice(pieceKindSchema.options, {}));
  const kindName = cell('kind-name', '', readText(60));
  const unitLength = cell('unit-length', null, own);
  const place = placePathOf(placeNames(cell('piece-place', '', readText(120))));
  const runs = cell('piece-print', 'along', readChoice(printRuns.options, {}));
  const costMinor = cell('cost', 0, readCost(currency, MOST_COST));
  const on = cell('bought-on', today, readDay);
  if (length !== null)
    return { kind, kindName, width, length, unitLength, place, printRuns: runs, costMinor, on };
  // A size that could not be read is told already; a width or a cost alone is half a piece.
  if (says('size') || says('piece-length')) return null;
  return says('piece-width') || says('cost') ? 'half' : null;
}

function isFat(size: string | undefined): 'fat-quarter' | 'fat-eighth' | null {
  const text = (size ?? '').trim().toLowerCase();
  if (text === 'fq' || text === 'fat quarter') return 'fat-quarter';
  return ['f8', 'fe', 'fat eighth'].includes(text) ? 'fat-eighth' : null;
}

const DIRECTION_WORDS: Readonly<Record<string, 'any' | 'one-way' | 'two-way'>> = {
  none: 'any',
  no: 'any',
  'no direction': 'any',
  yes: 'one-way',
  'one way up': 'one-way',
  'up and down alike': 'two-way',
};
