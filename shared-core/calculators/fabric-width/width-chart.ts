import { UNITS_PER_INCH, UNITS_PER_YARD } from '#core/units/length';

/**
 * Fabric width conversion chart, first issued by the New Jersey Cooperative Extension Service, Rutgers (attribution from
 * memory; two independent copies agree). Columns are fabric widths in inches, entries are eighths of a yard. The chart allows for
 * how pattern pieces fit, so its entries follow no formula and are only looked up.
 */
const WIDTHS: readonly (readonly [number, number])[] = [
  [35, 36],
  [39, 39],
  [41, 41],
  [44, 45],
  [50, 50],
  [52, 54],
  [58, 60],
  [66, 66],
];

const ROWS_IN_EIGHTHS: readonly (readonly number[])[] = [
  [14, 12, 12, 11, 10, 9, 8, 7],
  [16, 14, 14, 13, 12, 11, 10, 9],
  [20, 18, 18, 17, 14, 14, 13, 12],
  [23, 20, 20, 18, 16, 15, 14, 13],
  [27, 24, 23, 22, 19, 18, 16, 15],
  [30, 26, 25, 23, 21, 19, 18, 17],
  [36, 30, 29, 27, 24, 22, 21, 20],
  [38, 32, 31, 29, 26, 23, 22, 21],
  [40, 34, 33, 31, 27, 25, 23, 22],
];

/** What the chart adds for one-way fabric. */
export const ONE_WAY_UNITS = UNITS_PER_YARD / 4;

/** The entry for this length and these widths, in 1/320 mm; null when the chart has no such width or length. */
export function chartLength(length: number, fromWidth: number, toWidth: number): number | null {
  const [from, to] = [columnOf(fromWidth), columnOf(toWidth)];
  const row = ROWS_IN_EIGHTHS.find((cells) => (cells[from] ?? 0) * (UNITS_PER_YARD / 8) === length);
  const cell = row?.[to];
  return cell === undefined ? null : cell * (UNITS_PER_YARD / 8);
}

/** -1 when no column holds this width. */
function columnOf(width: number): number {
  return WIDTHS.findIndex(
    ([least, most]) => width >= least * UNITS_PER_INCH && width <= most * UNITS_PER_INCH,
  );
}
