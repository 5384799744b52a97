import { z } from 'zod';
import type { StageGlance } from '#core/contract/projects';
import type { ChecklistItemId, ProjectId, StageId } from '#core/domain/ids';
import { type ChecklistItem, openGateItems, type Stage, stageKind, stageState } from '#core/domain/stage';
import { allRows, type ReadableStore, type Row } from './handles';
import { choiceOf, flagOf, groupRows, jsonOf, numberOf, numberOrNullOf, readBy, textOf } from './rows';

const calculatorNames = z.array(z.string()).readonly();

/** A stage without its checklist: what plans the days reads hundreds of them after every change. */
export type StageAlone = Omit<Stage, 'checklist'>;

/** The stages of these projects in the order of their plans, without their checklists. */
export function stagesAloneByProject(
  store: ReadableStore,
  projectIds: readonly string[],
): ReadonlyMap<string, readonly StageAlone[]> {
  const rows = allRows(
    store,
    `SELECT * FROM stage WHERE project_id IN (SELECT value FROM json_each(?)) ORDER BY project_id, position, id`,
    JSON.stringify(projectIds),
  );
  const byProject = groupRows(rows, 'project_id');
  return new Map(projectIds.map((id) => [id, (byProject.get(id) ?? []).map(stageOf)]));
}

/** The same, each with whether its gate is shut; of the checklists only the gate lines nobody has ticked are read. */
export function stageGlancesByProject(
  store: ReadableStore,
  projectIds: readonly string[],
): ReadonlyMap<string, readonly StageGlance[]> {
  const lines = readChecklists(store, projectIds, 'AND is_gate = 1 AND is_ticked = 0');
  return mapStages(store, projectIds, (stage, stages) => ({
    ...stage,
    isGateShut: isGateShut(lines.get(stage.id) ?? [], stages),
  }));
}

/** The same, each with its whole checklist. */
export function stagesByProject(
  store: ReadableStore,
  projectIds: readonly string[],
): ReadonlyMap<string, readonly (Stage & StageGlance)[]> {
  const lines = readChecklists(store, projectIds, '');
  return mapStages(store, projectIds, (stage, stages) => {
    const checklist = lines.get(stage.id) ?? [];
    return { ...stage, checklist, isGateShut: isGateShut(checklist, stages) };
  });
}

function isGateShut(checklist: readonly ChecklistItem[], stages: readonly StageAlone[]): boolean {
  return openGateItems({ checklist }, stages).length > 0;
}

function mapStages<Told>(
  store: ReadableStore,
  projectIds: readonly string[],
  tell: (stage: StageAlone, stages: readonly StageAlone[]) => Told,
): ReadonlyMap<string, readonly Told[]> {
  const alone = stagesAloneByProject(store, projectIds);
  return new Map(
    [...alone].map(([projectId, stages]) => [projectId, stages.map((stage) => tell(stage, stages))]),
  );
}

/** The lines by their stage; `condition` is written here, never from input. */
function readChecklists(
  store: ReadableStore,
  projectIds: readonly string[],
  condition: string,
): ReadonlyMap<string, readonly ChecklistItem[]> {
  const sql = `SELECT id, stage_id, text, is_gate, closed_by, is_ticked FROM checklist_item
    WHERE stage_id IN (SELECT id FROM stage WHERE project_id IN (SELECT value FROM json_each(?))) ${condition}
    ORDER BY stage_id, position`;
  const byStage = groupRows(allRows(store, sql, JSON.stringify(projectIds)), 'stage_id');
  return new Map([...byStage].map(([id, rows]) => [String(id), rows.map(checklistItemOf)]));
}

function stageOf(row: Row): StageAlone {
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
