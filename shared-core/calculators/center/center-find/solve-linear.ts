/** For systems with coefficients near 1: a pivot this small is rounding error, so the system has no single solution. */
const SINGULAR = 1e-14;

/** Solves a square system of equations by elimination with row exchange; null if it has no single solution. */
export function solveLinear(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): readonly number[] | null {
  const size = matrix.length;
  const rows = matrix.map((row, index) => [...row, right[index] ?? 0]);
  for (let column = 0; column < size; column += 1) {
    const pivot = largestBelow(rows, column);
    const [chosen = [], other = []] = [rows[pivot], rows[column]];
    const lead = chosen[column] ?? 0;
    if (Math.abs(lead) < SINGULAR) return null;
    rows[pivot] = other;
    rows[column] = chosen;
    for (let row = column + 1; row < size; row += 1) {
      const below = rows[row] ?? [];
      const factor = (below[column] ?? 0) / lead;
      if (factor === 0) continue;
      for (let at = column; at <= size; at += 1) below[at] = (below[at] ?? 0) - factor * (chosen[at] ?? 0);
    }
  }
  return fromTheBottom(rows);
}

/** The solution of rows in which every unknown stands only in its own row and those above. */
function fromTheBottom(rows: readonly (readonly number[])[]): readonly number[] {
  const size = rows.length;
  const solution = rows.map(() => 0);
  for (let row = size - 1; row >= 0; row -= 1) {
    const values = rows[row] ?? [];
    let left = values[size] ?? 0;
    for (let at = row + 1; at < size; at += 1) left -= (values[at] ?? 0) * (solution[at] ?? 0);
    solution[row] = left / (values[row] ?? 1);
  }
  return solution;
}

function largestBelow(rows: readonly (readonly number[])[], column: number): number {
  const size = (row: number) => Math.abs(rows[row]?.[column] ?? 0);
  let largest = column;
  for (let row = column + 1; row < rows.length; row += 1) if (size(row) > size(largest)) largest = row;
  return largest;
}
