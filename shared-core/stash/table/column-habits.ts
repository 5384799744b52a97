import type { StashColumn } from '#core/domain/stash-table';
import type { LengthUnit } from '#core/units/length-unit';
import { normaliseTyped } from '#core/units/typed-text';

/** Which number of 3/4/2025 is the month. */
export type DateOrder = 'month-first' | 'day-first';

/** How the columns of one table are written: a whole column says what one cell cannot. */
export interface ColumnHabits {
  readonly dateOrder: DateOrder;
  /** The unit of lengths without one: that of most lengths of the column that have one. */
  readonly bareUnit: LengthUnit;
  /** What sets off thousands in amounts of money. */
  readonly thousands: ',' | '.';
}

/** How people write where the maker lives; taken where a column says nothing. */
export type Customs = Pick<ColumnHabits, 'dateOrder' | 'bareUnit' | 'thousands'>;

/** Reads the whole column of each meaning. */
export function columnHabits(
  cellsOf: (column: StashColumn) => Iterable<string>,
  customs: Customs,
): ColumnHabits {
  return {
    dateOrder: dateOrderOf(cellsOf('bought-on')) ?? customs.dateOrder,
    bareUnit: unitOf([...cellsOf('size'), ...cellsOf('piece-length')]) ?? customs.bareUnit,
    thousands: thousandsOf(cellsOf('cost')) ?? customs.thousands,
  };
}

const NUMBERED_DATE = /^(\d{1,2})[./-](\d{1,2})[./-]\d{2}(?:\d{2})?$/;

/** A number over 12 is a day. A column with days in both places says nothing. */
function dateOrderOf(cells: Iterable<string>): DateOrder | null {
  const found = new Set<DateOrder>();
  for (const cell of cells) {
    const [, first, second] = NUMBERED_DATE.exec(cell.trim()) ?? [];
    if (Number(first) > 12) found.add('day-first');
    if (Number(second) > 12) found.add('month-first');
  }
  const [only, ...others] = found;
  return only === undefined || others.length > 0 ? null : only;
}

const WITH_UNIT = /[\d/½¼¾⅓⅔⅛⅜⅝⅞]\s*(yards?|yds?\.?|inch(?:es)?|ins?\.?|"|cm|mm|m|meters?|metres?)(?:\s|$)/;
const UNIT_WORDS: Readonly<Record<string, LengthUnit>> = { y: 'yd', i: 'in', '"': 'in', c: 'cm', m: 'm' };

/** The unit that most cells name; null where none does. */
function unitOf(cells: Iterable<string>): LengthUnit | null {
  const counts = new Map<LengthUnit, number>();
  for (const cell of cells) {
    const [, word = ''] = WITH_UNIT.exec(cell.trim().toLowerCase()) ?? [];
    const unit = word === 'mm' ? 'mm' : UNIT_WORDS[word.slice(0, 1)];
    if (unit !== undefined) counts.set(unit, (counts.get(unit) ?? 0) + 1);
  }
  const [most] = [...counts].toSorted(([, one], [, other]) => other - one);
  return most?.[0] ?? null;
}

/** A mark before two last digits is the decimal mark, so the other one sets off thousands. */
function thousandsOf(cells: Iterable<string>): ',' | '.' | null {
  let [points, commas] = [0, 0];
  for (const cell of cells) {
    const typed = normaliseTyped(cell.slice(0, 60));
    if (/\.\d{1,2}(?!\d)/.test(typed) || /\d,\d{3}(?!\d)[^,]*\.\d/.test(typed)) points += 1;
    if (/,\d{1,2}(?!\d)/.test(typed)) commas += 1;
  }
  if (points === commas) return null;
  return points > commas ? ',' : '.';
}
