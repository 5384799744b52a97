import { stageKindSchema } from '#core/domain/stage';
import { stageKindRecord } from '#core/domain/stage-kinds';
import type { Problem } from '#core/contract/problem';
import type { CutStep } from '#core/cutting/tree/cut-steps';
import type { KeptPlan } from '#core/domain/cutting-plan';
import type { CuttingLine } from '#core/domain/cutting-setup';
import { type Result, success } from '#core/result';
import { oneRow, type ReadableStore } from '../base/handles';
import { findProject, findStage, heldBy, type PieceRef, type StageRef } from '../base/lookups';
import { textOf } from '../base/rows';

/** What one project takes of a step: fabric by the area of its patches, and the stage that is booked to. */
export interface StepShare {
  readonly projectSeq: number;
  readonly stage: StageRef | null;
  /** Of the step's length, 1/320 mm; never 0. */
  readonly length: number;
  readonly ownHold: number;
}

/**
 * Shares a step's length among the projects whose patches it gives, by the area of these. The one with most comes first
 * and takes what rounding leaves and the leftovers; a step without patches goes to the project the plan was begun from.
 */
export function sharesOf(
  store: ReadableStore,
  { setup }: KeptPlan,
  step: CutStep,
  piece: PieceRef,
): Result<readonly StepShare[], Problem> {
  const [lead] = setup.projects;
  const areas = new Map<string, { area: number; line: CuttingLine | null }>();
  for (const { patch, copies } of step.patches) {
    const line = setup.lines[patch];
    if (line === undefined) continue;
    const known = areas.get(line.projectId);
    const area = (known?.area ?? 0) + line.width * line.length * copies;
    areas.set(line.projectId, { area, line: known?.line ?? line });
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
    shares.push({ projectSeq: project.value.seq, stage, length, ownHold });
  }
  return success(shares);
}

function lengthsOf(step: CutStep, width: number, areas: readonly number[]): readonly number[] {
  const kept = step.leftovers.reduce((sum, leftover) => sum + leftover.width * leftover.length, 0);
  const used = width * step.length - kept;
  const all = areas.reduce((sum, area) => sum + area, 0);
  const [, ...others] = areas.map((area) => Math.floor((used * (area / all)) / width));
  return [others.reduce((left, length) => left - length, step.length), ...others];
}

const KINDS_THAT_CUT = stageKindSchema.options.filter((kind) => stageKindRecord(kind).cutsPatches);

/** The stage whose answer the patches were taken from, or the first at which the project is pieced. */
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
