import { roundDownTo } from '#core/units/rounding';

/**
 * Smallest multiple of `step`, from one step up to `most`, for which `isEnough` is true; null when there is none. Everything
 * larger than one that is enough must be enough too. The search doubles up to the first that is enough and then halves the gap,
 * so its cost depends on the answer, not on `most`.
 */
export function smallestStep(isEnough: (size: number) => boolean, step: number, most: number): number | null {
  const last = roundDownTo(most / step, 1);
  if (last < 1) return null;
  let [tooFew, enough] = [0, 1];
  while (!isEnough(enough * step)) {
    if (enough === last) return null;
    [tooFew, enough] = [enough, Math.min(2 * enough, last)];
  }
  while (enough - tooFew > 1) {
    const middle = roundDownTo((tooFew + enough) / 2, 1);
    if (isEnough(middle * step)) enough = middle;
    else tooFew = middle;
  }
  return enough * step;
}
