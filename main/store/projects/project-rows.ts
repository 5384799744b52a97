import type { ProjectId } from '#core/domain/ids';
import { type Project, type ProjectDetails, savedDetailsSchema } from '#core/domain/project';
import {
  oneRow,
  type ReadableStore,
  type Row,
  updateRow,
  type Value,
  type WritableStore,
} from '../base/handles';
import { flagOf, idOf, jsonOf, numberOf, readBy } from '../base/rows';

export function projectOf(row: Row): Project {
  const id = idOf<ProjectId>(row, 'id');
  const details = readBy(
    savedDetailsSchema,
    {
      name: row['name'],
      purpose: row['purpose'],
      forWhom: row['for_whom'],
      dueOn: row['due_on'],
      outline: jsonOf(row, 'outline_json'),
      hole: row['hole_diameter'] === null ? null : { diameter: row['hole_diameter'] },
      hasSlit: flagOf(row, 'has_slit'),
      settingChanges: jsonOf(row, 'habit_changes_json'),
      notes: row['notes'],
    },
    `project ${id}`,
  );
  return {
    ...details,
    id,
    isArchived: flagOf(row, 'is_archived'),
    createdAt: numberOf(row, 'created_at'),
    changedAt: numberOf(row, 'changed_at'),
  };
}

export function projectColumns(details: ProjectDetails): Readonly<Record<string, Value>> {
  return {
    name: details.name,
    purpose: details.purpose,
    for_whom: details.forWhom,
    due_on: details.dueOn,
    outline_json: JSON.stringify(details.outline),
    hole_diameter: details.hole?.diameter ?? null,
    has_slit: details.hasSlit ? 1 : 0,
    habit_changes_json: JSON.stringify(details.settingChanges),
    notes: details.notes,
  };
}

/** Marks a project as changed now, as every change of its stages does. */
export function touchProject(store: WritableStore, projectId: string): void {
  updateRow(store, 'project', projectId, { changed_at: store.clockAndIds.now() });
}

/** Null for a project that is not there or was deleted. */
export function readProject(store: ReadableStore, projectId: string): Project | null {
  const row = oneRow(store, 'SELECT * FROM project WHERE id = ? AND deleted_at IS NULL', projectId);
  return row === undefined ? null : projectOf(row);
}
