/**
 * Shares `total` out by `weights` in whole units that add up to exactly `total`: each share is its exact part rounded
 * towards zero, and what is left goes one by one to the largest remainders, the earlier first. A weight of 0 gets nothing.
 * Throws RangeError unless the total is a safe whole number and the weights are finite, not negative and not all zero.
 */
export function allocate(total: number, weights: readonly number[]): readonly number[] {
  if (!Number.isSafeInteger(total)) throw new RangeError(`Cannot share out ${String(total)}`);
  const wholeWeights = inCommonUnits(weights);
  const sum = wholeWeights.reduce((so, weight) => so + weight, 0n);
  if (sum === 0n) throw new RangeError('Nobody to share with: no weight is above zero');

  const size = BigInt(Math.abs(total));
  const parts = wholeWeights.map((weight, index) => ({
    index,
    share: (size * weight) / sum,
    remainder: (size * weight) % sum,
  }));
  const left = Number(parts.reduce((so, part) => so - part.share, size));
  const first = parts.toSorted(
    (a, b) => Number(b.remainder > a.remainder) - Number(b.remainder < a.remainder),
  );
  const lucky = new Set(first.slice(0, left).map((part) => part.index));

  const sign = total < 0 ? -1 : 1;
  return parts.map(({ share, index }) => {
    const units = Number(share) + (lucky.has(index) ? 1 : 0);
    return units === 0 ? 0 : sign * units;
  });
}

/** Every finite double is a whole number over a power of two, so all weights can be made whole without rounding any. */
function inCommonUnits(weights: readonly number[]): readonly bigint[] {
  const doubled = weights.map((weight) => {
    if (!Number.isFinite(weight) || weight < 0) throw new RangeError(`Not a weight: ${String(weight)}`);
    let [whole, doublings] = [weight, 0];
    while (!Number.isInteger(whole)) [whole, doublings] = [whole * 2, doublings + 1];
    return { whole, doublings };
  });
  const most = Math.max(0, ...doubled.map(({ doublings }) => doublings));
  return doubled.map(({ whole, doublings }) => BigInt(whole) << BigInt(most - doublings));
}
