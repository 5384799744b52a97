import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed, PreviewedStage } from '#core/contract/projects';
import { matchPlan, type PlanStep, type RunningStage } from '#core/domain/plan-match';
import type { PlannedStage, Stage } from '#core/domain/stage';
import { type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import { allRows, insertRow, type ReadableStore, type WritableStore, write } from '../base/handles';
import { findProject, notFound } from '../base/lookups';
import { readProject, touchProject } from './project-rows';
import { stagesForProject } from './resize-estimates';
import { textOf } from '../base/rows';
import { allowMove, makeMove } from './stage-moves';
import { findStagePlan } from './stage-plans';
import { stagesByProject } from './stage-rows';
import { placeStage, setUpColumns } from './stages';

type RecordedStage = Stage & RunningStage;

/** Gives a started project the stages of another plan, as one change. Nothing recorded is lost. */
export function followPlan(
  store: ReadableStore,
  { projectId, stagePlanId }: ChannelInput<'project:follow-plan'>,
): Result<Changed, Problem> {
  const project = findProject(store, projectId);
  if (!project.ok) return project;
  const plan = findStagePlan(store, stagePlanId);
  if (plan === undefined) return notFound('stage-plan');
  const details = readProject(store, projectId);
  if (details === null) return notFound('project');
  const planned = stagesForProject(plan, details);
  const { steps, gone } = matchPlan(recordedStages(store, projectId), planned);
  return recordChange(store, `Switched “${project.value.name}” to the plan “${plan.name}”`, (writable) => {
    for (const { id } of gone) write(writable, 'DELETE FROM stage WHERE id = ?', id);
    for (const [position, step] of steps.entries()) {
      const moved = applyStep(writable, projectId, position, step);
      if (!moved.ok) return moved;
    }
    touchProject(writable, projectId);
    return success({});
  });
}

/** What `followPlan` would do with each stage. */
export function previewPlanChange(
  store: ReadableStore,
  { projectId, stagePlanId }: ChannelInput<'project:preview-plan-change'>,
): Result<ChannelOutput<'project:preview-plan-change'>, Problem> {
  const project = findProject(store, projectId);
  if (!project.ok) return project;
  const plan = findStagePlan(store, stagePlanId);
  if (plan === undefined) return notFound('stage-plan');
  const { steps, gone } = matchPlan(recordedStages(store, projectId), plan.stages);
  return success([
    ...steps.map((step): PreviewedStage => {
      if (step.how === 'fresh') return { how: 'fresh', name: step.planned.name, isSkipped: false };
      const { name } = step.stage;
      if (step.how === 'stays') return { how: 'stays', name, isSkipped: false };
      return { how: 'kept', name, isSkipped: isLeftOpen(step.stage) };
    }),
    ...gone.map(({ name }): PreviewedStage => ({ how: 'gone', name, isSkipped: false })),
  ]);
}

/** A stage that is not in the plan is skipped, unless it is at the quilter or over. */
function isLeftOpen({ state }: Stage): boolean {
  return state === 'planned' || state === 'in-hand';
}

/** A row for a stage in one of these tables is a record of it. A test compares this list with the schema. */
export const STAGE_RECORD_TABLES = [
  'trip',
  'photo',
  'calculation',
  'work',
  'stage_event',
  'booking',
] as const;

/** The stages of a project, each with whether anything is recorded about it. */
function recordedStages(store: ReadableStore, projectId: string): readonly RecordedStage[] {
  const records = STAGE_RECORD_TABLES.map(
    (table) => `EXISTS (SELECT 1 FROM ${table} WHERE ${table}.stage_id = stage.id)`,
  );
  const sql = `SELECT id FROM stage WHERE project_id = ? AND (notes <> '' OR held_up_by <> '' OR state <> 'planned'
    OR EXISTS (SELECT 1 FROM checklist_item WHERE stage_id = stage.id AND is_ticked = 1)
    OR ${records.join(' OR ')})`;
  const recorded = new Set(allRows(store, sql, projectId).map((row) => textOf(row, 'id')));
  const stages = stagesByProject(store, [projectId]).get(projectId) ?? [];
  return stages.map((stage) => ({ ...stage, isRecorded: recorded.has(stage.id) }));
}

function applyStep(
  store: WritableStore,
  projectId: string,
  position: number,
  step: PlanStep<RecordedStage>,
): Result<object, Problem> {
  if (step.how === 'fresh') {
    placeStage(store, projectId, position, step.planned);
    return success({});
  }
  write(
    store,
    'UPDATE stage SET position = ? WHERE id = ? AND position <> ?',
    position,
    step.stage.id,
    position,
  );
  if (step.how === 'stays') addPlanned(store, step.stage, step.planned);
  else if (isLeftOpen(step.stage)) {
    const move = allowMove(store, step.stage.id, 'skipped');
    if (!move.ok) return move;
    makeMove(store, move.value);
  }
  return success({});
}

/** Adds what the plan has and the stage does not: missing checklist lines and the stage's setup. */
function addPlanned(store: WritableStore, stage: Stage, planned: PlannedStage): void {
  const { is_beside: isBeside, calculators_json: calculators } = setUpColumns(planned);
  write(
    store,
    'UPDATE stage SET is_beside = ?, calculators_json = ? WHERE id = ? AND (is_beside <> ? OR calculators_json IS NOT ?)',
    isBeside,
    calculators,
    stage.id,
    isBeside,
    calculators,
  );
  const present = new Set(stage.checklist.map(({ text }) => text));
  planned.checklist
    .filter(({ text }) => !present.has(text))
    .forEach(({ text, isGate, closedBy }, at) =>
      insertRow(store, 'checklist_item', {
        id: store.clockAndIds.newId(),
        stage_id: stage.id,
        position: stage.checklist.length + at,
        text,
        is_gate: isGate ? 1 : 0,
        closed_by: closedBy,
        is_ticked: 0,
      }),
    );
}
