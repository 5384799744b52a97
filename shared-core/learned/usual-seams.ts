import { seamCheck } from '#core/calculators/seam-check/seam-check';
import { studentFactor } from '#core/calculators/seam-check/student';
import type { SeamCheckWork } from '#core/calculators/seam-check/work';
import type { Settings } from '#core/domain/workshop';
import { type Length, lengthFromExact, lengthFromInches } from '#core/units/length';
import { ENOUGH_CASES } from './learned';

/** What was measured on one stage of a project. */
export interface SavedSeamCheck {
  readonly projectId: string;
  /** As stored: anything. */
  readonly input: unknown;
}

/** How far the maker's seams and cuts usually are off. Lengths as doubles in 1/320 mm, on each side of a seam. */
export interface UsualSeams {
  /** Projects whose seams are known well enough; one case each. */
  readonly projects: number;
  /** Of the seams, over these projects: more than 0 if they take too much. Null without a project. */
  readonly mean: number | null;
  /** The standard deviation from project to project. Null with fewer than two. */
  readonly spread: number | null;
  /** In place of the settings, rounded up; null until there are enough projects. */
  readonly inUse: Pick<Settings, 'seamOff' | 'cutOff'> | null;
}

/** What is known of the seams and cuts of one project. */
type Known = SeamCheckWork & {
  readonly seam: NonNullable<SeamCheckWork['seam']>;
  readonly scatter: NonNullable<SeamCheckWork['scatter']>;
};

/**
 * Each project counts once, with the last of its checks that says something. The seams of the next project are off by the mean and, in
 * 95 of 100 cases, by no more than Student's factor times the spread beside it; its cuts by the scatter of all projects together.
 */
export function usualSeams(checks: readonly SavedSeamCheck[]): UsualSeams {
  const ofProject = new Map<string, Known>();
  for (const { projectId, input } of checks) {
    const known = knownFrom(input);
    if (known !== null) ofProject.set(projectId, known);
  }
  const known = [...ofProject.values()];
  const sides = known.map(({ seam }) => seam.value / 2);
  const mean = sides.length === 0 ? null : sides.reduce((sum, side) => sum + side, 0) / sides.length;
  const spread = mean === null || sides.length < 2 ? null : deviationFrom(mean, sides);
  if (mean === null || spread === null || known.length < ENOUGH_CASES)
    return { projects: known.length, mean, spread, inUse: null };
  const next = studentFactor(known.length - 1) * spread * Math.sqrt(1 + 1 / known.length);
  const inUse = { seamOff: offLength(Math.abs(mean) + next), cutOff: offLength(usualCut(known)) };
  return { projects: known.length, mean, spread, inUse };
}

/** The settings with what was learned in place of the defaults. */
export function settingsWithUsualSeams(settings: Settings, { inUse }: UsualSeams): Settings {
  return inUse === null ? settings : { ...settings, ...inUse };
}

/** A seam that may be off by more than half a seam allowance either way is not known well enough to learn from. */
function knownFrom(stored: unknown): Known | null {
  const input = seamCheck.input.safeParse(stored);
  const answer = input.success ? seamCheck.calculate(input.data) : null;
  if (!input.success || answer?.ok !== true) return null;
  const { seam, scatter } = answer.value.details;
  if (seam === null || scatter === null || seam.within > input.data.seamAllowance / 2) return null;
  return { ...answer.value.details, seam, scatter };
}

function deviationFrom(mean: number, values: readonly number[]): number {
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return Math.sqrt(squares / (values.length - 1));
}

/** One patch is within this in 95 of 100 cases. The scatter of each project counts by its degrees of freedom. */
function usualCut(known: readonly Known[]): number {
  const freedom = known.reduce((sum, { scatter }) => sum + scatter.freedom, 0);
  const squares = known.reduce((sum, { scatter }) => sum + scatter.freedom * scatter.each ** 2, 0);
  return studentFactor(freedom) * Math.sqrt(squares / freedom);
}

/** Rounded up, and no more than the settings let through. */
function offLength(off: number): Length {
  return lengthFromExact(Math.min(off, lengthFromInches(1 / 4)), 'up');
}
