/** What a spreadsheet takes for the beginning of a formula, also in the wide forms of East Asian text. */
const OPENS_FORMULA = /^'*[=+\-@\t\r\n＝＋－＠]/;

/** A cell that no spreadsheet runs: a mark stands before whatever could open a formula. `unguardCell` takes it off again. */
export function guardCell(text: string): string {
  return OPENS_FORMULA.test(text) ? `'${text}` : text;
}

/** The text that was guarded; any other is given back as it is. */
export function unguardCell(cell: string): string {
  return cell.startsWith("'") && OPENS_FORMULA.test(cell) ? cell.slice(1) : cell;
}
