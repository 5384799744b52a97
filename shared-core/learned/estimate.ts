import { handFinish } from '#core/calculators/hand-finish/hand-finish';
import { handFinishInputFromProject } from '#core/calculators/hand-finish/input';
import type { Measurements } from '#core/domain/measurements';
import type { StageKind } from '#core/domain/stage';
import { roundUpTo } from '#core/units/rounding';
import { isWellLearned } from './learned';
import { habitsWithOwnRates, type OwnRates } from './rates';

/**
 * What a stage will take by the maker's own rate, up to the next five minutes; null where the piece does not tell how much there
 * is to do, or the rate is not learned yet. Only the hand finish is measured on the piece itself.
 */
export function ownEstimate(kind: StageKind, measurements: Measurements, rates: OwnRates): number | null {
  if (kind !== 'hand-finish' || !isWellLearned(rates.hand)) return null;
  const habits = habitsWithOwnRates(measurements.habits, rates);
  const answer = handFinish.calculate(handFinishInputFromProject({ ...measurements, habits }));
  return answer.ok ? roundUpTo(answer.value.details.minutes, 5) : null;
}
