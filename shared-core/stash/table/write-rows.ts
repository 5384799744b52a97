import type { StashColumn, StashRow } from '#core/domain/stash-table';
import { stashColumnSchema } from '#core/domain/stash-table';
import { decimalText } from '#core/units/decimal-text';
import { formatMoneyForEditing } from '#core/units/format-money';
import { type Length, UNITS_PER_MILLIMETER } from '#core/units/length';
import { type CurrencyCode, moneyFromMinor } from '#core/units/money';
import { columnTitle } from './column-titles';
import { guardCell } from './formula-guard';

/** The columns of an exported table. Piece width and piece length stand for the size. */
export const WRITTEN_COLUMNS: readonly StashColumn[] = stashColumnSchema.options.filter(
  (column) => column !== 'size',
);

/** A fabric of the stash with its pieces. */
export interface StashItem {
  readonly details: StashRow['details'];
  readonly pieces: readonly NonNullable<StashRow['piece']>[];
}

/** The whole stash as lines of cells, the titles first. Reading them gives the same stash. No cell is a formula. */
export function stashLines(
  items: readonly StashItem[],
  currency: CurrencyCode,
): readonly (readonly string[])[] {
  let number = 0;
  const lines = items.flatMap(({ details, pieces }, index) => {
    const linesOfFabric = pieces.length === 0 ? [null] : pieces;
    return linesOfFabric.map((piece) => {
      if (piece !== null) number += 1;
      const cells = cellsOf(details, piece, { currency, fabric: index + 1, piece: number });
      return WRITTEN_COLUMNS.map((column) => guardCell(cells[column]));
    });
  });
  return [WRITTEN_COLUMNS.map(columnTitle), ...lines];
}

interface Numbered {
  readonly currency: CurrencyCode;
  readonly fabric: number;
  readonly piece: number;
}

function cellsOf(
  details: StashItem['details'],
  piece: StashRow['piece'],
  { currency, fabric, piece: number }: Numbered,
): Readonly<Record<StashColumn, string>> {
  const unitLength = piece?.unitLength ?? null;
  return {
    'fabric-number': String(fabric),
    name: details.name,
    print: details.print,
    'color-words': details.colorWords,
    fiber: details.fiber,
    direction: details.direction,
    'fabric-width': exactLength(details.width),
    washed: details.isWashed ? 'yes' : 'no',
    supplier: details.supplier,
    place: details.place,
    swatch: details.swatch,
    notes: details.notes,
    'piece-number': piece === null ? '' : String(number),
    kind: piece?.kind ?? '',
    'kind-name': piece?.kindName ?? '',
    size: '',
    'piece-width': piece === null ? '' : exactLength(piece.width),
    'piece-length': piece === null ? '' : exactLength(piece.length),
    'unit-length': unitLength === null ? '' : exactLength(unitLength),
    'piece-place': piece?.place ?? '',
    'piece-print': piece?.printRuns ?? '',
    cost: piece === null ? '' : (costText(piece.costMinor, currency) ?? ''),
    'bought-on': piece?.on ?? '',
  };
}

/** A cost as a plain number; null if it is not known. */
export function costText(minor: number | null, currency: CurrencyCode): string | null {
  return minor === null ? null : formatMoneyForEditing(moneyFromMinor(minor, currency));
}

/** Millimeters with six decimals, which is exact: 1/320 mm is 0.003125 mm. */
export function exactLength(length: Length): string {
  return `${decimalText(length / UNITS_PER_MILLIMETER, 6)} mm`;
}
