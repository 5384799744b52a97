/** What spreadsheets take for the start of a formula, including the full-width forms of East Asian text. */
const OPENS_FORMULA = /^'*[=+\-@\t\r\n＝＋－＠]/;

/** Puts an apostrophe before text that a spreadsheet would run as a formula. `unguardCell` removes it again. */
export function guardCell(text: string): string {
  return OPENS_FORMULA.test(text) ? `'${text}` : text;
}

/** Removes the apostrophe of `guardCell`; returns any other text unchanged. */
export function unguardCell(cell: string): string {
  return cell.startsWith("'") && OPENS_FORMULA.test(cell) ? cell.slice(1) : cell;
}
