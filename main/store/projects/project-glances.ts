import { z } from 'zod';
import type { ChannelInput } from '#core/contract/channels';
import type { Page } from '#core/contract/channel';
import type { Problem } from '#core/contract/problem';
import type { ProjectGlance, ProjectSpread, StageEvent, StageGlance } from '#core/contract/projects';
import type { StageId } from '#core/domain/ids';
import { stageStateSchema } from '#core/domain/stage';
import { type Result, success } from '#core/result';
import { allRows, oneNumber, type ReadableStore, type Row } from '../base/handles';
import { notFound } from '../base/lookups';
import { photosOfProject } from './photos';
import { projectOf } from './project-rows';
import { choiceOf, idOf, jsonOf, numberOf, readBy, textOf } from '../base/rows';
import { stageGlancesByProject, stagesByProject } from './stage-rows';
import { tripsByProject } from './trip-rows';

const ALL = -1;
const SWATCHES_SHOWN = 12;

export function listProjects(
  store: ReadableStore,
  { archived, offset = 0, limit = ALL }: ChannelInput<'project:list'>,
): Page<ProjectGlance> {
  const those = archived
    ? 'FROM project WHERE is_archived = 1 AND deleted_at IS NULL'
    : 'FROM project WHERE is_archived = 0 AND deleted_at IS NULL';
  const order = archived ? 'changed_at DESC, seq' : 'due_on IS NULL, due_on, seq';
  const rows = allRows(store, `SELECT * ${those} ORDER BY ${order} LIMIT ? OFFSET ?`, limit, offset);
  return {
    items: glancesOf(store, rows, stageGlancesByProject),
    total: oneNumber(store, `SELECT count(*) ${those}`),
  };
}

export function openProject(
  store: ReadableStore,
  { projectId }: ChannelInput<'project:open'>,
): Result<ProjectSpread, Problem> {
  const rows = allRows(store, 'SELECT * FROM project WHERE id = ? AND deleted_at IS NULL', projectId);
  const [glance] = glancesOf(store, rows, stagesByProject);
  if (glance === undefined) return notFound('project');
  return success({
    ...glance,
    photos: photosOfProject(store, projectId),
    history: historyOf(store, projectId),
  });
}

/** The glances of these project rows, in the same order. `stagesOf` decides how much of each stage is read. */
function glancesOf<Listed extends StageGlance>(
  store: ReadableStore,
  rows: readonly Row[],
  stagesOf: (store: ReadableStore, ids: readonly string[]) => ReadonlyMap<string, readonly Listed[]>,
): readonly (ProjectGlance & { readonly stages: readonly Listed[] })[] {
  const ids = rows.map((row) => textOf(row, 'id'));
  const stages = stagesOf(store, ids);
  const trips = tripsByProject(store, ids);
  const seqs = JSON.stringify(rows.map((row) => numberOf(row, 'seq')));
  const swatches = swatchesOf(store, seqs);
  return rows.map((row) => {
    const project = projectOf(row);
    const seq = numberOf(row, 'seq');
    return {
      project,
      stages: stages.get(project.id) ?? [],
      trips: trips.get(project.id) ?? [],
      swatches: swatches.get(seq) ?? [],
    };
  });
}

/**
 * The colors of the fabrics each project used, most used first, by the project's `seq`. Each project's colors come as one JSON
 * text, because reading them as rows took three times as long.
 */
function swatchesOf(store: ReadableStore, seqs: string): ReadonlyMap<number, readonly string[]> {
  const sql = `SELECT value AS seq, (SELECT json_group_array(swatch) FROM (
      SELECT swatch FROM project_use JOIN fabric ON fabric.seq = fabric_seq
      WHERE project_seq = those.value AND area > 0 ORDER BY area DESC LIMIT ?)) AS swatches
    FROM json_each(?) AS those`;
  const rows = allRows(store, sql, SWATCHES_SHOWN, seqs);
  return new Map(
    rows.map((row) => [
      numberOf(row, 'seq'),
      [...new Set(readBy(swatchList, jsonOf(row, 'swatches'), 'swatch'))],
    ]),
  );
}

const swatchList = z.array(z.string());

function historyOf(store: ReadableStore, projectId: string): readonly StageEvent[] {
  const sql = `SELECT stage_event.*, coalesce(stage.name, stage_event.stage_name) AS name_now
    FROM stage_event LEFT JOIN stage ON stage.id = stage_id
    WHERE stage_event.project_id = ? ORDER BY at DESC, stage_event.seq DESC`;
  return allRows(store, sql, projectId).map((row) => ({
    stageId: idOf<StageId>(row, 'stage_id'),
    stageName: textOf(row, 'name_now'),
    from: choiceOf(row, 'from_state', stageStateSchema.options),
    to: choiceOf(row, 'to_state', stageStateSchema.options),
    why: textOf(row, 'why'),
    at: numberOf(row, 'at'),
  }));
}
