/** Throws RangeError for a negative axis, as does `ellipsePerimeter`. */
export function ellipseArea(semiAxis: number, otherSemiAxis: number): number {
  assertSemiAxes(semiAxis, otherSemiAxis);
  return Math.PI * semiAxis * otherSemiAxis;
}

/**
 * Length of the edge with a relative error under 1e-12, by the arithmetic-geometric mean of Gauss: with a, b and c² = a² - b²
 * at each step n of the mean M, the perimeter is 2π (a₀² - Σ 2ⁿ⁻¹ cₙ²) / M. A flat ellipse (one axis 0) counts as its long axis
 * taken twice.
 */
export function ellipsePerimeter(semiAxis: number, otherSemiAxis: number): number {
  assertSemiAxes(semiAxis, otherSemiAxis);
  const long = Math.max(semiAxis, otherSemiAxis);
  const short = Math.min(semiAxis, otherSemiAxis);
  if (short === 0) return 4 * long;
  let [a, b] = [1, short / long];
  let sum = (1 - b * b) / 2;
  for (let weight = 1; a - b > 1e-15; weight *= 2) {
    const c = (a - b) / 2;
    [a, b] = [(a + b) / 2, Math.sqrt(a * b)];
    sum += weight * c * c;
  }
  return (2 * Math.PI * long * (1 - sum)) / a;
}

function assertSemiAxes(...axes: readonly number[]): void {
  for (const axis of axes) {
    if (!(axis >= 0) || !Number.isFinite(axis)) throw new RangeError(`Not a semi-axis: ${String(axis)}`);
  }
}
