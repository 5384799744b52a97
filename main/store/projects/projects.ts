import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import type { ProjectId } from '#core/domain/ids';
import { type Result, success } from '#core/result';
import { removeRow } from '../history/change-flip';
import { recordChange } from '../history/changes';
import {
  allRows,
  insertRow,
  type ReadableStore,
  updateRow,
  type WritableStore,
  write,
} from '../base/handles';
import { appendBooking } from '../ledger/ledger-append';
import { findProject, notFound, type ProjectRef } from '../base/lookups';
import { projectColumns, projectOf, readProject, touchProject } from './project-rows';
import { numberOf } from '../base/rows';
import { resizeEstimates, stagesForProject } from './resize-estimates';
import { findStagePlan } from './stage-plans';
import { stagesByProject } from './stage-rows';
import { addPlannedStages } from './stages';

export function createProject(
  store: ReadableStore,
  { details, stagePlanId }: ChannelInput<'project:create'>,
): Result<ChannelOutput<'project:create'>, Problem> {
  const plan = findStagePlan(store, stagePlanId);
  if (plan === undefined) return notFound('stage-plan');
  return recordChange(store, `Started “${details.name}”`, (writable) => {
    const projectId = insertProject(writable, projectColumns(details));
    addPlannedStages(writable, projectId, stagesForProject(plan, details));
    return success({ projectId });
  });
}

export function changeProject(
  store: ReadableStore,
  { projectId, details }: ChannelInput<'project:change'>,
): Result<Changed, Problem> {
  const before = readProject(store, projectId);
  if (before === null) return notFound('project');
  return recordChange(store, `Changed “${details.name}”`, (writable) => {
    updateRow(writable, 'project', projectId, projectColumns(details));
    resizeEstimates(writable, before, details);
    touchProject(writable, projectId);
    return success({});
  });
}

/** A copy with the same details and stages, none of them started. Photos, trips, answers and fabric are not copied. */
export function duplicateProject(
  store: ReadableStore,
  { projectId }: ChannelInput<'project:duplicate'>,
): Result<ChannelOutput<'project:duplicate'>, Problem> {
  const [row] = allRows(store, 'SELECT * FROM project WHERE id = ? AND deleted_at IS NULL', projectId);
  if (row === undefined) return notFound('project');
  const original = projectOf(row);
  const name = `${original.name.slice(0, 113)} (copy)`;
  return recordChange(store, `Copied “${original.name}”`, (writable) => {
    const copyId = insertProject(writable, projectColumns({ ...original, name }));
    addPlannedStages(writable, copyId, stagesByProject(store, [projectId]).get(projectId) ?? []);
    return success({ projectId: copyId });
  });
}

export function archiveProject(
  store: ReadableStore,
  { projectId, archived }: ChannelInput<'project:archive'>,
): Result<Changed, Problem> {
  const project = findProject(store, projectId);
  if (!project.ok) return project;
  const words = archived ? `Archived “${project.value.name}”` : `Restored “${project.value.name}”`;
  return recordChange(store, words, (writable) => {
    updateRow(writable, 'project', projectId, { is_archived: archived ? 1 : 0 });
    touchProject(writable, projectId);
    return success({});
  });
}

/**
 * Deletes a project with its stages and releases the fabric set aside for it. The ledger keeps the fabric it used; in that case
 * the project's row stays too, marked as deleted, so that the ledger can show its name.
 */
export function deleteProject(
  store: ReadableStore,
  { projectId }: ChannelInput<'project:delete'>,
): Result<Changed, Problem> {
  const project = findProject(store, projectId);
  if (!project.ok) return project;
  return recordChange(store, `Deleted “${project.value.name}”`, (writable) => {
    releaseAll(writable, project.value);
    write(writable, 'DELETE FROM stage WHERE project_id = ?', projectId);
    write(writable, 'DELETE FROM stage_event WHERE project_id = ?', projectId);
    removeRow(writable, 'project', projectId);
    return success({});
  });
}

function insertProject(store: WritableStore, columns: ReturnType<typeof projectColumns>): ProjectId {
  const { newId, now } = store.clockAndIds;
  const id = newId() as ProjectId;
  const at = now();
  insertRow(store, 'project', { id, ...columns, is_archived: 0, created_at: at, changed_at: at });
  return id;
}

function releaseAll(store: WritableStore, project: ProjectRef): void {
  const sql = `SELECT piece_seq, held, fabric_seq FROM piece_hold JOIN fabric_piece ON fabric_piece.seq = piece_seq
    WHERE project_seq = ? AND held > 0`;
  for (const row of allRows(store, sql, project.seq)) {
    const booking = {
      fabricSeq: numberOf(row, 'fabric_seq'),
      projectSeq: project.seq,
      stage: null,
      note: '',
      on: store.clockAndIds.today(),
    };
    appendBooking(store, booking, [
      {
        pieceSeq: numberOf(row, 'piece_seq'),
        kind: 'released',
        lengthChange: 0,
        heldChange: -numberOf(row, 'held'),
        valueChange: 0,
      },
    ]);
  }
}
