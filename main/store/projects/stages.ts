import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import type { StageId } from '#core/domain/ids';
import type { PlannedStage } from '#core/domain/stage';
import { type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import {
  allRows,
  insertRow,
  oneNumber,
  type ReadableStore,
  updateRow,
  type WritableStore,
  write,
} from '../base/handles';
import { findProject, findStage, notFound } from '../base/lookups';
import { touchProject } from './project-rows';
import { textOf } from '../base/rows';
import { stagesByProject } from './stage-rows';

/** What a new stage starts with, from a plan or from the stage it is copied from. */
type NewStage = Pick<
  PlannedStage,
  'kind' | 'name' | 'estimateMinutes' | 'checklist' | 'isBeside' | 'calculators'
> & { readonly isOwnEstimate?: boolean };

export function addPlannedStages(store: WritableStore, projectId: string, stages: readonly NewStage[]): void {
  stages.forEach((stage, position) => insertStage(store, projectId, position, stage));
}

export function changeStage(
  store: ReadableStore,
  { stageId, name, estimateMinutes, heldUpBy, notes }: ChannelInput<'stage:change'>,
): Result<Changed, Problem> {
  const stage = findStage(store, stageId);
  if (!stage.ok) return stage;
  return recordChange(store, `Changed “${name}”`, (writable) => {
    write(
      writable,
      'UPDATE stage SET is_own_estimate = 1 WHERE id = ? AND estimate_minutes <> ?',
      stageId,
      estimateMinutes,
    );
    const columns = { name, estimate_minutes: estimateMinutes, held_up_by: heldUpBy, notes };
    updateRow(writable, 'stage', stageId, columns);
    touchProject(writable, stage.value.projectId);
    return success({});
  });
}

/** Chooses where the estimate comes from: the maker's own rates, or the hours stored with the stage. */
export function setEstimateSource(
  store: ReadableStore,
  { stageId, by }: ChannelInput<'stage:set-estimate-source'>,
): Result<Changed, Problem> {
  const stage = findStage(store, stageId);
  if (!stage.ok) return stage;
  const source = by === 'rates' ? 'your own rates' : 'your own hours';
  return recordChange(store, `Set the estimate of “${stage.value.name}” to ${source}`, (writable) => {
    updateRow(writable, 'stage', stageId, { is_own_estimate: by === 'own' ? 1 : 0 });
    touchProject(writable, stage.value.projectId);
    return success({});
  });
}

export function addStage(
  store: ReadableStore,
  { projectId, position, kind, name }: ChannelInput<'stage:add'>,
): Result<ChannelOutput<'stage:add'>, Problem> {
  const project = findProject(store, projectId);
  if (!project.ok) return project;
  return recordChange(store, `Added the stage “${name}”`, (writable) => {
    const stage = { kind, name, estimateMinutes: 0, checklist: [] };
    return success({ stageId: placeStage(writable, projectId, position, stage) });
  });
}

export function repeatStage(
  store: ReadableStore,
  { stageId }: ChannelInput<'stage:repeat'>,
): Result<ChannelOutput<'stage:repeat'>, Problem> {
  const found = findStage(store, stageId);
  if (!found.ok) return found;
  const { projectId, position, name } = found.value;
  const stage = stagesByProject(store, [projectId])
    .get(projectId)
    ?.find((one) => one.id === stageId);
  if (stage === undefined) return notFound('stage');
  return recordChange(store, `Repeated “${name}”`, (writable) =>
    success({ stageId: placeStage(writable, projectId, position + 1, stage) }),
  );
}

export function reorderStage(
  store: ReadableStore,
  { stageId, position }: ChannelInput<'stage:reorder'>,
): Result<Changed, Problem> {
  const stage = findStage(store, stageId);
  if (!stage.ok) return stage;
  const { projectId, name } = stage.value;
  const others = stageIds(store, projectId).filter((id) => id !== stageId);
  const order = [...others.slice(0, position), stageId, ...others.slice(position)];
  if (order.indexOf(stageId) === stage.value.position) {
    return recordChange(store, `Moved “${name}”`, () => success({}));
  }
  return recordChange(store, `Moved “${name}”`, (writable) => {
    order.forEach((id, at) =>
      write(writable, 'UPDATE stage SET position = ? WHERE id = ? AND position <> ?', at, id, at),
    );
    touchProject(writable, projectId);
    return success({});
  });
}

export function deleteStage(
  store: ReadableStore,
  { stageId }: ChannelInput<'stage:delete'>,
): Result<Changed, Problem> {
  const stage = findStage(store, stageId);
  if (!stage.ok) return stage;
  const { projectId, position, name } = stage.value;
  return recordChange(store, `Deleted the stage “${name}”`, (writable) => {
    write(writable, 'DELETE FROM stage WHERE id = ?', stageId);
    write(
      writable,
      'UPDATE stage SET position = position - 1 WHERE project_id = ? AND position > ?',
      projectId,
      position,
    );
    touchProject(writable, projectId);
    return success({});
  });
}

/** Sets whether it can be worked on beside the stage before it, and which calculators its page shows. */
export function setUpStage(
  store: ReadableStore,
  { stageId, isBeside, calculators }: ChannelInput<'stage:set-up'>,
): Result<Changed, Problem> {
  const stage = findStage(store, stageId);
  if (!stage.ok) return stage;
  return recordChange(store, `Changed the setup of “${stage.value.name}”`, (writable) => {
    updateRow(writable, 'stage', stageId, setUpColumns({ isBeside, calculators }));
    touchProject(writable, stage.value.projectId);
    return success({});
  });
}

export function setUpColumns({
  isBeside = false,
  calculators = null,
}: Pick<NewStage, 'isBeside' | 'calculators'>) {
  return {
    is_beside: isBeside ? 1 : 0,
    calculators_json: calculators === null ? null : JSON.stringify(calculators),
  };
}

/** Inserts a new stage at `position`, or at the end if there are fewer stages, and moves later ones along. */
export function placeStage(
  store: WritableStore,
  projectId: string,
  position: number,
  stage: NewStage,
): StageId {
  const count = oneNumber(store, 'SELECT count(*) FROM stage WHERE project_id = ?', projectId);
  const place = Math.min(position, count);
  write(
    store,
    'UPDATE stage SET position = position + 1 WHERE project_id = ? AND position >= ?',
    projectId,
    place,
  );
  const stageId = insertStage(store, projectId, place, stage);
  touchProject(store, projectId);
  return stageId;
}

function insertStage(store: WritableStore, projectId: string, position: number, stage: NewStage): StageId {
  const { newId } = store.clockAndIds;
  const id = newId() as StageId;
  insertRow(store, 'stage', {
    id,
    project_id: projectId,
    position,
    kind: stage.kind,
    name: stage.name,
    state: 'planned',
    estimate_minutes: stage.estimateMinutes,
    is_own_estimate: stage.isOwnEstimate === true ? 1 : 0,
    held_up_by: '',
    notes: '',
    gate_passed_why: '',
    started_at: null,
    finished_at: null,
    ...setUpColumns(stage),
  });
  stage.checklist.forEach((item, at) =>
    insertRow(store, 'checklist_item', {
      id: newId(),
      stage_id: id,
      position: at,
      text: item.text,
      is_gate: item.isGate ? 1 : 0,
      closed_by: item.closedBy,
      is_ticked: 0,
    }),
  );
  return id;
}

function stageIds(store: ReadableStore, projectId: string): readonly string[] {
  const rows = allRows(
    store,
    'SELECT id, position FROM stage WHERE project_id = ? ORDER BY position',
    projectId,
  );
  return rows.map((row) => textOf(row, 'id'));
}
