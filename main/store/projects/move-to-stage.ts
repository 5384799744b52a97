import type { ChannelInput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import type { Stage, StageState } from '#core/domain/stage';
import { failure, type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import { oneRow, type ReadableStore } from '../base/handles';
import { findProject, notFound } from '../base/lookups';
import { allowMove, type AllowedMove, makeMove } from './stage-moves';
import { stagesByProject } from './stage-rows';

/**
 * Moves a project to one of its stages, or past the last one with null, as one change. Earlier stages become done, later ones
 * planned. Moving back reopens the stage; moving forward leaves it planned.
 */
export function moveProjectToStage(
  store: ReadableStore,
  { projectId, stageId }: ChannelInput<'project:move-to-stage'>,
): Result<Changed, Problem> {
  const project = findProject(store, projectId);
  if (!project.ok) return project;
  const stages = stagesByProject(store, [projectId]).get(projectId) ?? [];
  const at = stageId === null ? stages.length : stages.findIndex(({ id }) => id === stageId);
  if (at < 0) return notFound('stage');
  const where = stages[at]?.name ?? 'finished';
  return recordChange(store, `Moved “${project.value.name}” to “${where}”`, (writable) => {
    for (const [place, stage] of stages.entries()) {
      const to = stateAt(stage, place, at);
      if (to === stage.state) continue;
      const move = allowLeaving(writable, stage, to);
      if (!move.ok) return move;
      makeMove(writable, move.value);
    }
    return success({});
  });
}

function stateAt(stage: Stage, place: number, at: number): StageState {
  if (place < at) return stage.state === 'skipped' ? 'skipped' : 'done';
  if (place > at) return stage.state === 'skipped' ? 'skipped' : 'planned';
  return stage.state === 'done' ? 'in-hand' : stage.state === 'skipped' ? 'planned' : stage.state;
}

/** A stage at the quilter cannot be left until its trip has ended. */
function allowLeaving(store: ReadableStore, stage: Stage, to: StageState): Result<AllowedMove, Problem> {
  const away = oneRow(store, 'SELECT 1 AS away FROM trip WHERE stage_id = ? AND back_on IS NULL', stage.id);
  if (stage.state === 'out' && away !== undefined) {
    return failure<Problem>({ code: 'still-away', stage: stage.name });
  }
  return allowMove(store, stage.id, to);
}
