import { handSewnParts } from '#core/calculators/hand-finish/work';
import { handFinishInputFromProject } from '#core/calculators/hand-finish/input';
import type { WorkDone } from '#core/domain/clock';
import type { Measurements } from '#core/domain/measurements';
import type { Stage } from '#core/domain/stage';
import { type StageKind, stageKindRecord } from '#core/domain/stage-kinds';
import { roundNearest, roundUpTo } from '#core/units/rounding';
import { minutesByOwnRate, type OwnRates, rateInUse } from './rates';
import type { EstimatePart, StageEstimate } from './stage-estimate';

const MOST_MINUTES = 100_000;

export type EstimatedStage = Pick<Stage, 'kind' | 'estimateMinutes' | 'isOwnEstimate'>;

/** What an estimate is based on, besides the stage itself. */
export interface EstimateGrounds {
  /** The work counted by the answers saved with the stage. */
  readonly work: readonly WorkDone[];
  /** The project with the settings in use; these hold the maker's own hand-sewing rate once it is learned. */
  readonly measurements: Measurements;
  readonly rates: OwnRates;
}

/**
 * How long a stage will take. First choice: the hours the maker set for it. Then the maker's own rates, once they are learned and
 * the stage's saved answers say how much work there is (hand finishing is measured on the project when no answer is saved).
 * Otherwise the hours from the stage plan.
 */
export function stageEstimate(stage: EstimatedStage, grounds: EstimateGrounds): StageEstimate {
  const parts = partsOf(stage.kind, grounds);
  const ratesMinutes = minutesByRates(stage.kind, parts);
  const estimate = { storedMinutes: stage.estimateMinutes, ratesMinutes, parts };
  if (stage.isOwnEstimate) return { ...estimate, minutes: stage.estimateMinutes, from: 'own' };
  return ratesMinutes === null
    ? { ...estimate, minutes: stage.estimateMinutes, from: 'plan' }
    : { ...estimate, minutes: ratesMinutes, from: 'rates' };
}

/** When two answers count the same measure, the larger is used: it includes the smaller. */
function partsOf(kind: StageKind, { work, measurements, rates }: EstimateGrounds): readonly EstimatePart[] {
  const { estimatedBy: measures, isSewnByHand } = stageKindRecord(kind);
  if (measures.length === 0) return [];
  const all = isSewnByHand && work.length === 0 ? handWork(measurements) : work;
  return measures.flatMap((what): readonly EstimatePart[] => {
    const amount = Math.max(0, ...all.filter((one) => one.what === what).map((one) => one.amount));
    if (amount === 0) return [];
    const isHand = what === 'hand' && rateInUse(rates, what) !== null;
    // The hand rate is read from the settings, because a project may have its own.
    const minutes = isHand
      ? roundUpTo((60 * amount) / measurements.settings.handStitchPerHour, 1)
      : minutesByOwnRate(rates, what, amount);
    return [{ what, amount, learned: rates[what], minutes }];
  });
}

function handWork(measurements: Measurements): readonly WorkDone[] {
  const seams = handSewnParts(handFinishInputFromProject(measurements)) ?? [];
  const amount = roundNearest(
    seams.reduce((sum, { length }) => sum + length, 0),
    1,
  );
  return [{ what: 'hand', amount }];
}

function minutesByRates(kind: StageKind, parts: readonly EstimatePart[]): number | null {
  const leading = stageKindRecord(kind).mainMeasure ?? parts[0]?.what;
  if ((parts.find(({ what }) => what === leading)?.minutes ?? null) === null) return null;
  const minutes = parts.reduce((sum, part) => sum + (part.minutes ?? 0), 0);
  return Math.min(MOST_MINUTES, roundUpTo(minutes, 5));
}
