import { stageKindSchema } from '#core/domain/stage';
import { stageKindRecord } from '#core/domain/stage-kinds';
import type { Problem } from '#core/contract/problem';
import type { CutStep } from '#core/cutting/tree/cut-steps';
import type { KeptPlan } from '#core/domain/cutting-plan';
import type { CuttingLine } from '#core/domain/cutting-setup';
import type { ProjectId } from '#core/domain/ids';
import { type Result, success } from '#core/result';
import { allocate } from '#core/units/allocate';
import { oneRow, type ReadableStore } from '../base/handles';
import { findProject, findStage, heldBy, type PieceRef, type StageRef } from '../base/lookups';
import { textOf } from '../base/rows';

/** What one project takes of a step, and the stage it is booked for. */
export interface StepShare {
  readonly projectId: ProjectId;
  readonly projectSeq: number;
  readonly stage: StageRef | null;
  /** Of the step's length, 1/320 mm; never 0. */
  readonly length: number;
  readonly ownHold: number;
}

/**
 * Shares a step's length among the projects whose patches it gives, by the area of their patches. The project with the largest area comes
 * first and takes the leftovers. A step without patches goes to the project that the plan was made for.
 */
export function sharesOf(
  store: ReadableStore,
  { setup }: KeptPlan,
  step: CutStep,
  piece: PieceRef,
): Result<readonly StepShare[], Problem> {
  const [lead] = setup.projects;
  const areas = new Map<ProjectId, { area: number; line: CuttingLine | null }>();
  for (const { patch, copies } of step.patches) {
    const line = setup.lines[patch];
    if (line === undefined) continue;
    const before = areas.get(line.projectId);
    const area = (before?.area ?? 0) + line.width * line.length * copies;
    areas.set(line.projectId, { area, line: before?.line ?? line });
  }
  if (areas.size === 0 && lead !== undefined) areas.set(lead, { area: 1, line: null });
  const sorted = [...areas].toSorted(([, one], [, other]) => other.area - one.area);
  const lengths = lengthsOf(
    step,
    piece.width,
    sorted.map(([, { area }]) => area),
  );
  const shares: StepShare[] = [];
  for (const [index, [projectId, { line }]] of sorted.entries()) {
    const length = lengths[index] ?? 0;
    if (length === 0) continue;
    const project = findProject(store, projectId);
    if (!project.ok) return project;
    const ownHold = heldBy(store, piece.seq, project.value.seq);
    const stage = stageOf(store, projectId, line);
    shares.push({ projectId, projectSeq: project.value.seq, stage, length, ownHold });
  }
  return success(shares);
}

/** The first share has the leftovers too. As it has the largest area, rounding never makes it too small for them. */
function lengthsOf(step: CutStep, width: number, areas: readonly number[]): readonly number[] {
  const kept = step.leftovers.reduce((sum, leftover) => sum + leftover.width * leftover.length, 0);
  const used = width * step.length - kept;
  const all = areas.reduce((sum, area) => sum + area, 0);
  const weights = areas.map((area, index) => used * (area / all) + (index === 0 ? kept : 0));
  return allocate(step.length, weights);
}

const KINDS_THAT_CUT = stageKindSchema.options.filter((kind) => stageKindRecord(kind).cutsPatches);

/** The stage whose saved answer the patches came from, or else the project's first piecing stage. */
function stageOf(store: ReadableStore, projectId: string, line: CuttingLine | null): StageRef | null {
  const source = line?.source ?? null;
  const named = source === null ? undefined : findStage(store, source.stageId);
  if (named?.ok === true && named.value.projectId === projectId) return named.value;
  const sql = `SELECT id FROM stage
    WHERE project_id = ? AND kind IN (SELECT value FROM json_each(?)) ORDER BY position LIMIT 1`;
  const row = oneRow(store, sql, projectId, JSON.stringify(KINDS_THAT_CUT));
  const piecing = row === undefined ? undefined : findStage(store, textOf(row, 'id'));
  return piecing?.ok === true ? piecing.value : null;
}
