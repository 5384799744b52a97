/** How much wider a range must be for few measurements. All for 95 of 100 cases, with whole degrees of freedom of 1 or more. */

const SHARE = 0.95;
/** Halving this often leaves nothing of a double. */
const HALVINGS = 60;

/**
 * Student's t: the mean of the truth lies within ± t standard errors in 95 of 100 cases. 12.71 with one degree of freedom, and
 * toward 1.96 with many.
 */
export function studentFactor(freedom: number): number {
  return solve((t) => shareWithin(t, freedom), SHARE);
}

/** What a scatter is to be multiplied by for the lower and the upper end of its range. */
export function scatterFactors(freedom: number): { readonly low: number; readonly high: number } {
  const at = (share: number) => Math.sqrt(freedom / solve((x) => chiSquareBelow(x, freedom), share));
  return { low: at((1 + SHARE) / 2), high: at((1 - SHARE) / 2) };
}

/** The share of Student's distribution within ± t, as a finite sum (Handbook of Mathematical Functions, 26.7.3 and 26.7.4). */
function shareWithin(t: number, freedom: number): number {
  const angle = Math.atan(t / Math.sqrt(freedom));
  const square = Math.cos(angle) ** 2;
  const isOdd = freedom % 2 === 1;
  let addend = isOdd ? Math.cos(angle) : 1;
  let sum = freedom === 1 ? 0 : addend;
  for (let step = isOdd ? 3 : 2; step <= freedom - 2; step += 2) {
    addend *= (square * (step - 1)) / step;
    sum += addend;
  }
  const wave = Math.sin(angle) * sum;
  return isOdd ? (2 / Math.PI) * (angle + wave) : wave;
}

/** The share of the chi-square distribution below `x`, as the power series of the incomplete gamma function. */
function chiSquareBelow(x: number, freedom: number): number {
  const half = x / 2;
  const isOdd = freedom % 2 === 1;
  // The first addend: half^(freedom/2) · e^−half ÷ Γ(freedom/2 + 1), built up by twos.
  let addend = isOdd ? (2 * Math.sqrt(half / Math.PI)) / Math.exp(half) : half / Math.exp(half);
  for (let step = isOdd ? 3 : 4; step <= freedom; step += 2) addend *= half / (step / 2);
  let sum = 0;
  for (let step = freedom + 2; sum + addend > sum; step += 2) {
    sum += addend;
    addend *= half / (step / 2);
  }
  return sum;
}

/** Where a growing function of 0 and more reaches `share`. */
function solve(grows: (x: number) => number, share: number): number {
  let [low, high] = [0, 1];
  while (grows(high) < share) high *= 2;
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2;
    if (grows(middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
