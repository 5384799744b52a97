import { seamOnBack } from '#core/calculators/hand-finish/seam-on-back';
import { handFinishInputFromProject } from '#core/calculators/hand-finish/input';
import type { WorkDone, WorkMeasure } from '#core/domain/clock';
import type { Measurements } from '#core/domain/measurements';
import type { Stage, StageKind } from '#core/domain/stage';
import { roundNearest, roundUpTo } from '#core/units/rounding';
import { minutesByOwnRate, type OwnRates, rateInUse } from './rates';
import type { EstimatePart, StageEstimate } from './stage-estimate';

/** What a stage of a kind consists of as far as it can be counted; without the first rate the others say too little of it. */
const MEASURES: Readonly<Partial<Record<StageKind, readonly [WorkMeasure, ...WorkMeasure[]]>>> = {
  piecing: ['blocks', 'cuts'],
  'hand-finish': ['hand'],
};

/** A stage of the maker's own is whatever its answers say it is. */
const OWN_KIND: readonly WorkMeasure[] = ['blocks', 'hand', 'cuts'];

const MOST_MINUTES = 100_000;

export type EstimatedStage = Pick<Stage, 'kind' | 'estimateMinutes' | 'isOwnEstimate'>;

/** What bears on an estimate beside the stage itself. */
export interface EstimateGrounds {
  /** What there is to do by the answers kept with the stage. */
  readonly work: readonly WorkDone[];
  /** The piece, with the settings in use: the maker's own rate by hand stands in them once it is learned. */
  readonly measurements: Measurements;
  readonly rates: OwnRates;
}

/**
 * How long a stage will take: hours the maker set for it herself; else by her own rates, once they are learned and the stage's
 * kept answers tell how much there is to do (the hand finish is measured on the piece itself where no answer is kept); else
 * what the stage began with.
 */
export function stageEstimate(stage: EstimatedStage, grounds: EstimateGrounds): StageEstimate {
  const parts = partsOf(stage.kind, grounds);
  const ratesMinutes = minutesByRates(stage.kind, parts);
  const said = { saidMinutes: stage.estimateMinutes, ratesMinutes, parts };
  if (stage.isOwnEstimate) return { ...said, minutes: stage.estimateMinutes, from: 'own' };
  return ratesMinutes === null
    ? { ...said, minutes: stage.estimateMinutes, from: 'plan' }
    : { ...said, minutes: ratesMinutes, from: 'rates' };
}

/** Of two answers that count the same the larger one: the smaller is part of it. */
function partsOf(kind: StageKind, { work, measurements, rates }: EstimateGrounds): readonly EstimatePart[] {
  const measures = measuresOf(kind);
  if (measures.length === 0) return [];
  const all = kind === 'hand-finish' && work.length === 0 ? handWork(measurements) : work;
  return measures.flatMap((what): readonly EstimatePart[] => {
    const amount = Math.max(0, ...all.filter((one) => one.what === what).map((one) => one.amount));
    if (amount === 0) return [];
    const isHand = what === 'hand' && rateInUse(rates, what) !== null;
    // The setting in use says it too, and the piece may have one of its own.
    const minutes = isHand
      ? roundUpTo((60 * amount) / measurements.settings.handStitchPerHour, 1)
      : minutesByOwnRate(rates, what, amount);
    return [{ what, amount, learned: rates[what], minutes }];
  });
}

function handWork(measurements: Measurements): readonly WorkDone[] {
  const seams = seamOnBack(handFinishInputFromProject(measurements)) ?? [];
  const amount = roundNearest(
    seams.reduce((sum, { length }) => sum + length, 0),
    1,
  );
  return [{ what: 'hand', amount }];
}

function measuresOf(kind: StageKind): readonly WorkMeasure[] {
  return kind === 'other' ? OWN_KIND : (MEASURES[kind] ?? []);
}

function minutesByRates(kind: StageKind, parts: readonly EstimatePart[]): number | null {
  const [leading] = MEASURES[kind] ?? [parts[0]?.what];
  if ((parts.find(({ what }) => what === leading)?.minutes ?? null) === null) return null;
  const minutes = parts.reduce((sum, part) => sum + (part.minutes ?? 0), 0);
  return Math.min(MOST_MINUTES, roundUpTo(minutes, 5));
}
