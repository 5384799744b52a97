/** For systems with coefficients near 1: a pivot this small is rounding error, so the system has no single solution. */
const SINGULAR = 1e-14;

/** Solves a square system of equations by elimination with row exchange; null if it has no single solution. */
export function solveLinear(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): readonly number[] | null {
  let rows = matrix.map((row, index) => [...row, right[index] ?? 0]);
  const size = rows.length;
  for (let column = 0; column < size; column += 1) {
    const pivot = largestBelow(rows, column);
    const lead = rows[pivot]?.[column] ?? 0;
    if (Math.abs(lead) < SINGULAR) return null;
    const chosen = (rows[pivot] ?? []).map((value) => value / lead);
    const others = rows.map((row, index) => (index === pivot ? (rows[column] ?? row) : row));
    rows = others.map((row, index) => {
      if (index === column) return chosen;
      const factor = row[column] ?? 0;
      return row.map((value, at) => value - factor * (chosen[at] ?? 0));
    });
  }
  return rows.map((row) => row[size] ?? 0);
}

function largestBelow(rows: readonly (readonly number[])[], column: number): number {
  const size = (row: number) => Math.abs(rows[row]?.[column] ?? 0);
  let largest = column;
  for (let row = column + 1; row < rows.length; row += 1) if (size(row) > size(largest)) largest = row;
  return largest;
}
