import { seamCheck } from '#core/calculators/seam-check/seam-check';
import type { SavedSeamCheck } from '#core/contract/workshop';
import { type UsualSeams, usualSeams } from '#core/learned/usual-seams';
import { allRows, type ReadableStore } from '../base/handles';
import { jsonOf, textOf } from '../base/rows';

/**
 * What was measured in all projects that are not deleted, the earliest saved first. Read from the projects by the index of their stages:
 * the saved answers are too many to look through.
 */
export function savedSeamChecks(store: ReadableStore): readonly SavedSeamCheck[] {
  const sql = `SELECT project_id, input_json FROM project CROSS JOIN stage ON stage.project_id = project.id
    CROSS JOIN calculation ON calculation.stage_id = stage.id AND calculation.calculator = ?
    WHERE deleted_at IS NULL ORDER BY calculation.kept_at, calculation.seq`;
  return allRows(store, sql, seamCheck.name).map((row) => ({
    projectId: textOf(row, 'project_id'),
    input: jsonOf(row, 'input_json'),
  }));
}

export function readUsualSeams(store: ReadableStore): UsualSeams {
  return usualSeams(savedSeamChecks(store));
}
