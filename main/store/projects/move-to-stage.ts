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
 * Brings a piece to stand at one of its stages (or past them all, with null), as one change: what comes before is done, what
 * comes after is planned again. Going back takes the stage up once more; going on leaves it to be begun.
 */
export function standAt(
  store: ReadableStore,
  { projectId, stageId }: ChannelInput<'project:stand-at'>,
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

/** A stage that is away on a trip stays until the trip has ended. */
function allowLeaving(store: ReadableStore, stage: Stage, to: StageState): Result<AllowedMove, Problem> {
  const away = oneRow(store, 'SELECT 1 AS away FROM trip WHERE stage_id = ? AND back_on IS NULL', stage.id);
  if (stage.state === 'out' && away !== undefined) {
    return failure<Problem>({ code: 'still-away', what: stage.name });
  }
  return allowMove(store, stage.id, to);
}
