import { roundDownTo } from '#core/units/rounding';

/**
 * Smallest multiple of `step`, at least one step and at most `most`, for which `isEnough` holds; null where none does. Only for
 * a question that, once answered yes, stays yes for everything larger: it doubles up to the first yes and halves back, so that
 * the work goes by the size of the answer and not by the size of `most`.
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
