import type { CountedWork } from '#core/contract/clock';
import { type RunningClock, type Work, type WorkDone, workMeasureSchema } from '#core/domain/clock';
import type { ProjectId, StageId, WorkId } from '#core/domain/ids';
import { type OwnRates, ownRates } from '#core/learned/rates';
import { allRows, oneRow, type ReadableStore, type Row } from '../base/handles';
import { choiceOf, dateOf, idOf, numberOf, numberOrNullOf, textOf } from '../base/rows';

/** The running clock; null if there is none, or if its project is deleted. */
export function runningClock(store: ReadableStore): RunningClock | null {
  const sql = `SELECT work.id, stage_id, work.started_at, on_day, stage.name AS stage_name, project_id, project.name AS project_name
    FROM work JOIN stage ON stage.id = stage_id JOIN project ON project.id = project_id
    WHERE minutes IS NULL AND deleted_at IS NULL`;
  const row = oneRow(store, sql);
  if (row === undefined) return null;
  return {
    id: idOf<WorkId>(row, 'id'),
    stageId: idOf<StageId>(row, 'stage_id'),
    stageName: textOf(row, 'stage_name'),
    projectId: idOf<ProjectId>(row, 'project_id'),
    projectName: textOf(row, 'project_name'),
    startedAt: numberOf(row, 'started_at'),
    startedOn: dateOf(row, 'on_day'),
  };
}

export function workOfStage(store: ReadableStore, stageId: StageId): readonly Work[] {
  const sql = 'SELECT * FROM work WHERE stage_id = ? AND minutes IS NOT NULL ORDER BY on_day, seq';
  return allRows(store, sql, stageId).map((row) => ({
    id: idOf<WorkId>(row, 'id'),
    stageId,
    on: dateOf(row, 'on_day'),
    startedAt: numberOrNullOf(row, 'started_at'),
    minutes: numberOf(row, 'minutes'),
    done: doneOf(row),
    note: textOf(row, 'note'),
  }));
}

/** Minutes logged on each stage of these projects. Stages without any are left out. */
export function minutesByStage(
  store: ReadableStore,
  projectIds: readonly string[],
): ReadonlyMap<string, number> {
  const sql = `SELECT stage_id, sum(minutes) AS minutes FROM work JOIN stage ON stage.id = stage_id
    WHERE minutes IS NOT NULL AND project_id IN (SELECT value FROM json_each(?)) GROUP BY stage_id`;
  const rows = allRows(store, sql, JSON.stringify(projectIds));
  return new Map(rows.map((row) => [textOf(row, 'stage_id'), numberOf(row, 'minutes')]));
}

export function countedWork(store: ReadableStore): readonly CountedWork[] {
  const sql =
    'SELECT minutes, done_what, done_amount FROM work WHERE minutes IS NOT NULL AND done_what IS NOT NULL ORDER BY seq';
  return allRows(store, sql).map((row) => ({ minutes: numberOf(row, 'minutes'), done: doneOf(row) }));
}

export function readOwnRates(store: ReadableStore): OwnRates {
  return ownRates(countedWork(store));
}

function doneOf(row: Row): WorkDone | null {
  if (row['done_what'] === null) return null;
  return {
    what: choiceOf(row, 'done_what', workMeasureSchema.options),
    amount: numberOf(row, 'done_amount'),
  };
}
