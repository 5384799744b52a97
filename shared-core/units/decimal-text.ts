/** `value` with at most `places` decimals and no trailing zeros; never `-0`. Throws RangeError unless it is finite. */
export function decimalText(value: number, places: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`Cannot write ${String(value)}`);
  const fixed = value.toFixed(places);
  const trimmed = fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed;
  return trimmed === '-0' ? '0' : trimmed;
}
