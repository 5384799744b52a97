import type { ProjectGlance } from '#core/contract/projects';
import { allRows, type ReadableStore } from '../base/handles';
import { projectOf } from './project-rows';
import { textOf } from '../base/rows';
import { type ListedStage, listedStagesByProject } from './stage-rows';
import { tripsByProject } from './trip-rows';

/** The parts of a project that planning its days needs. */
export interface OpenProject extends Pick<ProjectGlance, 'project' | 'trips'> {
  readonly stages: readonly ListedStage[];
}

/** All projects that are not archived, by due date. */
export function listOpenProjects(store: ReadableStore): readonly OpenProject[] {
  const rows = allRows(
    store,
    `SELECT * FROM project WHERE is_archived = 0 AND deleted_at IS NULL ORDER BY due_on IS NULL, due_on, seq`,
  );
  const ids = rows.map((row) => textOf(row, 'id'));
  const stages = listedStagesByProject(store, ids);
  const trips = tripsByProject(store, ids);
  return rows.map((row) => {
    const project = projectOf(row);
    return { project, stages: stages.get(project.id) ?? [], trips: trips.get(project.id) ?? [] };
  });
}
