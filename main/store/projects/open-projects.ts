import type { ProjectGlance } from '#core/contract/projects';
import { allRows, type ReadableStore } from '../base/handles';
import { projectOf } from './project-rows';
import { textOf } from '../base/rows';
import { type ListedStage, listedStagesByProject } from './stage-rows';
import { tripsByProject } from './trip-rows';

/** What is read of a piece to plan it. */
export interface Open extends Pick<ProjectGlance, 'project' | 'trips'> {
  readonly stages: readonly ListedStage[];
}

/** All pieces that are not put away, by the day they are due. */
export function openPieces(store: ReadableStore): readonly Open[] {
  const rows = allRows(
    store,
    `SELECT * FROM project WHERE is_archived = 0 AND deleted_at IS NULL ORDER BY due_on IS NULL, due_on, seq`,
  );
  const ids = rows.map((row) => textOf(row, 'id'));
  const [stages, trips] = [listedStagesByProject(store, ids), tripsByProject(store, ids)];
  return rows.map((row) => {
    const project = projectOf(row);
    return { project, stages: stages.get(project.id) ?? [], trips: trips.get(project.id) ?? [] };
  });
}
