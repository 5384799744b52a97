import { type ChecklistItem, checklistItem, stage, type Stage } from '#core/domain/stage';
import { allRows, type ReadableStore, type Row } from './handles';
import { flagOf, groupRows, readBy, textOf } from './rows';

/** The stages of these projects in the order of their plans, each with its checklist. */
export function stagesByProject(
  store: ReadableStore,
  projectIds: readonly string[],
): ReadonlyMap<string, readonly Stage[]> {
  const rows = allRows(
    store,
    `SELECT * FROM stage WHERE project_id IN (SELECT value FROM json_each(?)) ORDER BY project_id, position, id`,
    JSON.stringify(projectIds),
  );
  const items = groupRows(
    allRows(
      store,
      `SELECT checklist_item.* FROM stage JOIN checklist_item ON stage_id = stage.id
      WHERE project_id IN (SELECT value FROM json_each(?)) ORDER BY stage_id, checklist_item.position`,
      JSON.stringify(projectIds),
    ),
    'stage_id',
  );
  const byProject = groupRows(rows, 'project_id');
  const stagesOf = (projectId: string): readonly Stage[] =>
    (byProject.get(projectId) ?? []).map((row) =>
      stageOf(row, (items.get(row['id']) ?? []).map(checklistItemOf)),
    );
  return new Map(projectIds.map((projectId) => [projectId, stagesOf(projectId)]));
}

function stageOf(row: Row, checklist: readonly ChecklistItem[]): Stage {
  return readBy(
    stage,
    {
      id: row['id'],
      projectId: row['project_id'],
      position: row['position'],
      kind: row['kind'],
      name: row['name'],
      state: row['state'],
      estimateMinutes: row['estimate_minutes'],
      heldUpBy: row['held_up_by'],
      notes: row['notes'],
      gatePassedWhy: row['gate_passed_why'],
      startedAt: row['started_at'],
      finishedAt: row['finished_at'],
      checklist,
    },
    `stage ${textOf(row, 'id')}`,
  );
}

export function checklistItemOf(row: Row): ChecklistItem {
  return readBy(
    checklistItem,
    {
      id: row['id'],
      text: row['text'],
      isGate: flagOf(row, 'is_gate'),
      closedBy: row['closed_by'],
      isTicked: flagOf(row, 'is_ticked'),
    },
    `checklist_item ${textOf(row, 'id')}`,
  );
}
