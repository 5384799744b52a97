import type { ChannelInput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import { type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import { insertRow, oneNumber, oneRow, type ReadableStore, updateRow, write } from '../base/handles';
import { findStage, notFound } from '../base/lookups';
import { touchProject } from './project-rows';
import { flagOf, textOf } from '../base/rows';

export function addChecklistItem(
  store: ReadableStore,
  { stageId, text, isGate }: ChannelInput<'checklist:add'>,
): Result<Changed, Problem> {
  const stage = findStage(store, stageId);
  if (!stage.ok) return stage;
  return recordChange(store, `Added “${text}”`, (writable) => {
    const last = 'SELECT coalesce(max(position), -1) AS last FROM checklist_item WHERE stage_id = ?';
    insertRow(writable, 'checklist_item', {
      id: store.clockAndIds.newId(),
      stage_id: stageId,
      position: oneNumber(writable, last, stageId) + 1,
      text,
      is_gate: isGate ? 1 : 0,
      closed_by: null,
      is_ticked: 0,
    });
    touchProject(writable, stage.value.projectId);
    return success({});
  });
}

export function tickChecklistItem(
  store: ReadableStore,
  { checklistItemId, ticked }: ChannelInput<'checklist:tick'>,
): Result<Changed, Problem> {
  const item = findItem(store, checklistItemId);
  if (item === undefined) return notFound('checklist-item');
  return recordChange(store, `${ticked ? 'Checked off' : 'Unchecked'} “${item.text}”`, (writable) => {
    if (item.isTicked === ticked) return success({});
    updateRow(writable, 'checklist_item', checklistItemId, { is_ticked: ticked ? 1 : 0 });
    touchProject(writable, item.projectId);
    return success({});
  });
}

export function deleteChecklistItem(
  store: ReadableStore,
  { checklistItemId }: ChannelInput<'checklist:delete'>,
): Result<Changed, Problem> {
  const item = findItem(store, checklistItemId);
  if (item === undefined) return notFound('checklist-item');
  return recordChange(store, `Deleted “${item.text}”`, (writable) => {
    write(writable, 'DELETE FROM checklist_item WHERE id = ?', checklistItemId);
    touchProject(writable, item.projectId);
    return success({});
  });
}

interface FoundItem {
  readonly text: string;
  readonly isTicked: boolean;
  readonly projectId: string;
}

function findItem(store: ReadableStore, id: string): FoundItem | undefined {
  const sql = `SELECT text, is_ticked, project_id FROM checklist_item JOIN stage ON stage.id = stage_id
    WHERE checklist_item.id = ?`;
  const row = oneRow(store, sql, id);
  if (row === undefined) return undefined;
  return {
    text: textOf(row, 'text'),
    isTicked: flagOf(row, 'is_ticked'),
    projectId: textOf(row, 'project_id'),
  };
}
