import { roundDownTo } from '#core/units/rounding';

/**
 * Smallest multiple of `step`, at least one step and at most `most`, for which `isEnough` holds; null where none does. Only for
 * a question that, once answered yes, stays yes for everything larger: it halves the range instead of walking it.
 */
export function smallestStep(isEnough: (size: number) => boolean, step: number, most: number): number | null {
  let [tooFew, enough] = [0, stepsWithin(most, step)];
  if (enough < 1 || !isEnough(enough * step)) return null;
  while (enough - tooFew > 1) {
    const middle = tooFew + stepsWithin(enough - tooFew, 2);
    if (isEnough(middle * step)) enough = middle;
    else tooFew = middle;
  }
  return enough * step;
}

function stepsWithin(size: number, step: number): number {
  return roundDownTo(size / step, 1);
}
