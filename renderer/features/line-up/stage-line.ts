import type { ProjectGlance, StageGlance } from '#core/contract/projects';
import { currentStage } from '#core/domain/stage';

/** Where the needle can be: at one of the project's stages, or past the last one (null). */
export type Stop = StageGlance | null;

type Staged = Pick<ProjectGlance, 'stages'>;

/** The stages a project needs, in order. Skipped stages have no stitches and no stop. */
function neededStages({ stages }: Staged): readonly StageGlance[] {
  return stages.filter(({ state }) => state !== 'skipped');
}

/** All stops of the needle, in order: the needed stages, and then the finish. */
export function stopsOf(project: Staged): readonly Stop[] {
  return [...neededStages(project), null];
}

/** The index of the stop the needle is at now. */
export function currentStop(project: Staged): number {
  const now = currentStage(project.stages);
  return stopsOf(project).findIndex((stop) => (stop?.id ?? null) === (now?.id ?? null));
}

/** The first stage on the way to a stop that may not be passed yet: its checklist is open, or it is at the quilter. */
export function stageInTheWay(project: Staged, stop: number): StageGlance | null {
  const onTheWay = neededStages(project).slice(currentStop(project), stop);
  return onTheWay.find(({ state, isGateShut }) => state === 'out' || isGateShut) ?? null;
}

/** The line of stitches in CSS pixels: each stage has a part of equal width, and the finish has its room at the end. */
export interface LineMeasure {
  readonly stageWidth: number;
  readonly stageCount: number;
}

/** Room for the word "Finished" after the last stage, in CSS pixels. */
export const FINISH_WIDTH = 68;
/** Half the needle's length, in CSS pixels. */
const NEEDLE_HALF = 20;
/** Half the width of a raised needle, which waits at the gap of a stage at the quilter. */
const RAISED_HALF = 15;
/** The room of the knot at the end of a gap, in CSS pixels. */
const KNOT = 8;
/** A gap with the needle and a date needs this many CSS pixels. */
const GAP_WITH_DATE = 82;

export function lineMeasure(width: number, stageCount: number): LineMeasure {
  return { stageWidth: Math.max(0, width - FINISH_WIDTH) / Math.max(1, stageCount), stageCount };
}

/** Where the middle of the needle is at a stop: halfway along a stage in progress, else at the start of its part. */
export function needlePosition(
  { stageWidth, stageCount }: LineMeasure,
  stops: readonly Stop[],
  stop: number,
): number {
  const stage = stops[stop] ?? null;
  if (stage === null) return stageCount * stageWidth + FINISH_WIDTH / 2;
  if (stage.state === 'in-hand') return (stop + 0.5) * stageWidth;
  const start = stage.state === 'out' ? RAISED_HALF : NEEDLE_HALF;
  return stop * stageWidth + Math.min(start, stageWidth / 2);
}

/** The stop whose part of the line is under the pointer. */
export function stopAt({ stageWidth, stageCount }: LineMeasure, x: number): number {
  if (stageWidth === 0) return 0;
  return Math.min(stageCount, Math.max(0, Math.floor(x / stageWidth)));
}

/** Where the date in the gap of a stage at the quilter is centered, after the needle; null if the gap is too short for it. */
export function gapDatePosition({ stageWidth }: LineMeasure, stop: number): number | null {
  if (stageWidth < GAP_WITH_DATE) return null;
  return stop * stageWidth + (2 * RAISED_HALF + stageWidth - KNOT) / 2;
}
