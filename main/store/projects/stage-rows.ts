import { z } from 'zod';
import type { StageGlance } from '#core/contract/projects';
import type { ChecklistItemId, ProjectId, StageId } from '#core/domain/ids';
import {
  type ChecklistItem,
  openGateItems,
  type Stage,
  stageKindSchema,
  stageStateSchema,
} from '#core/domain/stage';
import { allRows, type ReadableStore, type Row } from '../base/handles';
import {
  choiceOf,
  flagOf,
  groupRows,
  idOf,
  jsonOf,
  numberOf,
  numberOrNullOf,
  readBy,
  textOf,
} from '../base/rows';

const calculatorNames = z.array(z.string()).readonly();

/** A stage in a list, without its checklist. Planning the days reads hundreds of these after every change. */
export type ListedStage = Omit<StageGlance, 'isGateShut'>;

const LISTED_COLUMNS =
  'id, project_id, position, kind, name, state, estimate_minutes, is_own_estimate, held_up_by, is_beside';

/** The stages of these projects in order, without their checklists. */
export function listedStagesByProject(
  store: ReadableStore,
  projectIds: readonly string[],
): ReadonlyMap<string, readonly ListedStage[]> {
  return mapStages(store, projectIds, LISTED_COLUMNS, (listed) => listed);
}

/** The same, each with whether its gate is shut. Only gate lines that may be open are read. */
export function stageGlancesByProject(
  store: ReadableStore,
  projectIds: readonly string[],
): ReadonlyMap<string, readonly StageGlance[]> {
  const lines = readChecklists(
    store,
    projectIds,
    'AND is_gate = 1 AND (is_ticked = 0 OR closed_by IS NOT NULL)',
  );
  return mapStages(store, projectIds, LISTED_COLUMNS, (listed, _row, all) => ({
    ...listed,
    isGateShut: isGateShut(lines.get(listed.id) ?? [], all),
  }));
}

/** The stages with everything stored about them. */
export function stagesByProject(
  store: ReadableStore,
  projectIds: readonly string[],
): ReadonlyMap<string, readonly (Stage & StageGlance)[]> {
  const lines = readChecklists(store, projectIds, '');
  return mapStages(store, projectIds, '*', (listed, row, all) => {
    const checklist = lines.get(listed.id) ?? [];
    return {
      ...listed,
      notes: textOf(row, 'notes'),
      gatePassedWhy: textOf(row, 'gate_passed_why'),
      startedAt: numberOrNullOf(row, 'started_at'),
      finishedAt: numberOrNullOf(row, 'finished_at'),
      calculators:
        row['calculators_json'] === null
          ? null
          : readBy(calculatorNames, jsonOf(row, 'calculators_json'), `stage ${listed.id}`),
      checklist,
      isGateShut: isGateShut(checklist, all),
    };
  });
}

function isGateShut(checklist: readonly ChecklistItem[], stages: readonly ListedStage[]): boolean {
  return openGateItems({ checklist }, stages).length > 0;
}

/** Reads these columns (from code, never from input) and passes each stage to `convert` with all stages of its project. */
function mapStages<Converted>(
  store: ReadableStore,
  projectIds: readonly string[],
  columns: string,
  convert: (stage: ListedStage, row: Row, all: readonly ListedStage[]) => Converted,
): ReadonlyMap<string, readonly Converted[]> {
  const sql = `SELECT ${columns} FROM stage WHERE project_id IN (SELECT value FROM json_each(?))
    ORDER BY project_id, position, id`;
  const byProject = groupRows(allRows(store, sql, JSON.stringify(projectIds)), 'project_id');
  return new Map(
    projectIds.map((id) => {
      const read = (byProject.get(id) ?? []).map((row) => ({ row, listed: listedOf(row) }));
      const all = read.map(({ listed }) => listed);
      return [id, read.map(({ row, listed }) => convert(listed, row, all))];
    }),
  );
}

function listedOf(row: Row): ListedStage {
  return {
    id: idOf<StageId>(row, 'id'),
    projectId: idOf<ProjectId>(row, 'project_id'),
    position: numberOf(row, 'position'),
    kind: choiceOf(row, 'kind', stageKindSchema.options),
    name: textOf(row, 'name'),
    state: choiceOf(row, 'state', stageStateSchema.options),
    estimateMinutes: numberOf(row, 'estimate_minutes'),
    isOwnEstimate: flagOf(row, 'is_own_estimate'),
    heldUpBy: textOf(row, 'held_up_by'),
    isBeside: flagOf(row, 'is_beside'),
  };
}

/** Checklist lines by stage. `condition` comes from code, never from input. */
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

function checklistItemOf(row: Row): ChecklistItem {
  return {
    id: idOf<ChecklistItemId>(row, 'id'),
    text: textOf(row, 'text'),
    isGate: flagOf(row, 'is_gate'),
    closedBy: row['closed_by'] === null ? null : choiceOf(row, 'closed_by', stageKindSchema.options),
    isTicked: flagOf(row, 'is_ticked'),
  };
}
