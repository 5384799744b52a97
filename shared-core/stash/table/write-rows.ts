import type { StashColumn, StashRow } from '#core/domain/stash-table';
import { stashColumnSchema } from '#core/domain/stash-table';
import { decimalText } from '#core/units/decimal-text';
import { formatMoneyForEditing } from '#core/units/format-money';
import { type Length, UNITS_PER_INCH, UNITS_PER_MILLIMETER } from '#core/units/length';
import type { UnitSystem } from '#core/units/unit-system';
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
  { currency, units }: { readonly currency: CurrencyCode; readonly units: UnitSystem },
): readonly (readonly string[])[] {
  let number = 0;
  const lines = items.flatMap(({ details, pieces }, index) => {
    const linesOfFabric = pieces.length === 0 ? [null] : pieces;
    return linesOfFabric.map((piece) => {
      if (piece !== null) number += 1;
      const cells = cellsOf(details, piece, { currency, units, fabric: index + 1, piece: number });
      return WRITTEN_COLUMNS.map((column) => guardCell(cells[column]));
    });
  });
  return [WRITTEN_COLUMNS.map(columnTitle), ...lines];
}

interface Numbered {
  readonly currency: CurrencyCode;
  readonly units: UnitSystem;
  readonly fabric: number;
  readonly piece: number;
}

function cellsOf(
  details: StashItem['details'],
  piece: StashRow['piece'],
  { currency, units, fabric, piece: number }: Numbered,
): Readonly<Record<StashColumn, string>> {
  const unitLength = piece?.unitLength ?? null;
  return {
    'fabric-number': String(fabric),
    name: details.name,
    print: details.print,
    'color-words': details.colorWords,
    fiber: details.fiber,
    direction: details.direction,
    'fabric-width': lengthInUnits(details.width, units),
    washed: details.isWashed ? 'yes' : 'no',
    supplier: details.supplier,
    place: details.place,
    swatch: details.swatch,
    notes: details.notes,
    'piece-number': piece === null ? '' : String(number),
    kind: piece?.kind ?? '',
    'kind-name': piece?.kindName ?? '',
    size: '',
    'piece-width': piece === null ? '' : lengthInUnits(piece.width, units),
    'piece-length': piece === null ? '' : lengthInUnits(piece.length, units),
    'unit-length': unitLength === null ? '' : lengthInUnits(unitLength, units),
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

/** In the maker's units, with as many decimals as it takes to read the same length again: 1/320 mm is 0.000123 in, or 0.0003125 cm. */
function lengthInUnits(length: Length, units: UnitSystem): string {
  return units === 'inch'
    ? `${decimalText(length / UNITS_PER_INCH, 6)} in`
    : `${decimalText(length / (10 * UNITS_PER_MILLIMETER), 7)} cm`;
}

/** Millimeters with six decimals, which is exact: 1/320 mm is 0.003125 mm. */
export function exactLength(length: Length): string {
  return `${decimalText(length / UNITS_PER_MILLIMETER, 6)} mm`;
}
