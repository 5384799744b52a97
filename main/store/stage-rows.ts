import { z } from 'zod';
import type { ChecklistItemId, ProjectId, StageId } from '#core/domain/ids';
import { type ChecklistItem, type Stage, stageKind, stageState } from '#core/domain/stage';
import { allRows, type ReadableStore, type Row } from './handles';
import { choiceOf, flagOf, groupRows, jsonOf, numberOf, numberOrNullOf, readBy, textOf } from './rows';

const calculatorNames = z.array(z.string()).readonly();

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
  return {
    id: textOf(row, 'id') as StageId,
    projectId: textOf(row, 'project_id') as ProjectId,
    position: numberOf(row, 'position'),
    kind: choiceOf(row, 'kind', stageKind.options),
    name: textOf(row, 'name'),
    state: choiceOf(row, 'state', stageState.options),
    estimateMinutes: numberOf(row, 'estimate_minutes'),
    isOwnEstimate: flagOf(row, 'is_own_estimate'),
    heldUpBy: textOf(row, 'held_up_by'),
    notes: textOf(row, 'notes'),
    gatePassedWhy: textOf(row, 'gate_passed_why'),
    startedAt: numberOrNullOf(row, 'started_at'),
    finishedAt: numberOrNullOf(row, 'finished_at'),
    checklist,
    isBeside: flagOf(row, 'is_beside'),
    calculators:
      row['calculators_json'] === null
        ? null
        : readBy(calculatorNames, jsonOf(row, 'calculators_json'), `stage ${textOf(row, 'id')}`),
  };
}

function checklistItemOf(row: Row): ChecklistItem {
  return {
    id: textOf(row, 'id') as ChecklistItemId,
    text: textOf(row, 'text'),
    isGate: flagOf(row, 'is_gate'),
    closedBy: row['closed_by'] === null ? null : choiceOf(row, 'closed_by', stageKind.options),
    isTicked: flagOf(row, 'is_ticked'),
  };
}
