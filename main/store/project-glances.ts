import type { ChannelInput } from '#core/contract/channels';
import type { Page } from '#core/contract/channel';
import type { Problem } from '#core/contract/problem';
import type { ProjectGlance, ProjectSpread, StageEvent } from '#core/contract/projects';
import type { StageId } from '#core/domain/ids';
import { stageState } from '#core/domain/stage';
import { type Result, success } from '#core/result';
import { allRows, oneNumber, oneRow, type ReadableStore, type Row } from './handles';
import { notFound } from './lookups';
import { photosOfProject } from './photos';
import { projectOf } from './project-rows';
import { groupRows, numberOf, readBy, textOf } from './rows';
import { stagesByProject } from './stage-rows';
import { tripsByProject } from './trips';

const ALL = -1;
const SWATCHES_SHOWN = 8;

export function listProjects(
  store: ReadableStore,
  { archived, offset = 0, limit = ALL }: ChannelInput<'project:list'>,
): Page<ProjectGlance> {
  const those = archived
    ? 'FROM project WHERE is_archived = 1 AND deleted_at IS NULL'
    : 'FROM project WHERE is_archived = 0 AND deleted_at IS NULL';
  const order = archived ? 'changed_at DESC, seq' : 'due_on IS NULL, due_on, seq';
  const rows = allRows(store, `SELECT * ${those} ORDER BY ${order} LIMIT ? OFFSET ?`, limit, offset);
  return { items: glancesOf(store, rows), total: oneNumber(store, `SELECT count(*) ${those}`) };
}

export function openProject(
  store: ReadableStore,
  { projectId }: ChannelInput<'project:open'>,
): Result<ProjectSpread, Problem> {
  const rows = allRows(store, 'SELECT * FROM project WHERE id = ? AND deleted_at IS NULL', projectId);
  const [glance] = glancesOf(store, rows);
  if (glance === undefined) return notFound('project');
  return success({
    ...glance,
    photos: photosOfProject(store, projectId),
    history: historyOf(store, projectId),
  });
}

/** The glances of these project rows, in the same order. */
function glancesOf(store: ReadableStore, rows: readonly Row[]): readonly ProjectGlance[] {
  const ids = rows.map((row) => textOf(row, 'id'));
  const stages = stagesByProject(store, ids);
  const trips = tripsByProject(store, ids);
  const uses = usesOf(store, rows);
  return rows.map((row): ProjectGlance => {
    const project = projectOf(row);
    const used = uses.get(row['seq']) ?? [];
    return {
      project,
      stages: stages.get(project.id) ?? [],
      trips: trips.get(project.id) ?? [],
      swatches: [...new Set(used.map((use) => textOf(use, 'swatch')))].slice(0, SWATCHES_SHOWN),
      costMinor: used.reduce((sum, use) => sum + numberOf(use, 'cost_minor'), 0),
    };
  });
}

/** What each project used of each fabric, most first; a fabric that was all taken back is no longer used. */
function usesOf(store: ReadableStore, rows: readonly Row[]): ReadonlyMap<unknown, readonly Row[]> {
  const sql = `SELECT project_seq, swatch, cost_minor FROM project_use JOIN fabric ON fabric.seq = fabric_seq
    WHERE project_seq IN (SELECT value FROM json_each(?)) AND (area > 0 OR cost_minor <> 0)
    ORDER BY area DESC, fabric.seq`;
  return groupRows(
    allRows(store, sql, JSON.stringify(rows.map((row) => numberOf(row, 'seq')))),
    'project_seq',
  );
}

function historyOf(store: ReadableStore, projectId: string): readonly StageEvent[] {
  const sql = `SELECT stage_event.*, coalesce(stage.name, stage_event.stage_name) AS name_now
    FROM stage_event LEFT JOIN stage ON stage.id = stage_id
    WHERE stage_event.project_id = ? ORDER BY at DESC, stage_event.seq DESC`;
  return allRows(store, sql, projectId).map((row) => ({
    stageId: textOf(row, 'stage_id') as StageId,
    stageName: textOf(row, 'name_now'),
    from: readBy(stageState, row['from_state'], 'stage_event.from_state'),
    to: readBy(stageState, row['to_state'], 'stage_event.to_state'),
    why: textOf(row, 'why'),
    at: numberOf(row, 'at'),
  }));
}

/** Whether anything was ever put into the notebook. */
export function isEmptyNotebook(store: ReadableStore): boolean {
  return oneRow(store, 'SELECT 1 FROM project UNION ALL SELECT 1 FROM fabric LIMIT 1') === undefined;
}
