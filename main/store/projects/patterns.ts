import { z } from 'zod';
import type { ChannelInput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import {
  NO_PATTERN,
  type PatternDetails,
  patternDetailsSchema,
  type SavedPattern,
} from '#core/domain/pattern';
import { type Result, success } from '#core/result';
import { patternFile, savePatternFile } from '#main/files/pattern-files';
import {
  insertRow,
  oneRow,
  type ReadableStore,
  type Row,
  updateRow,
  type Value,
  type WritableStore,
  write,
} from '../base/handles';
import { findProject, findStage, notFound } from '../base/lookups';
import { jsonOf, readBy, textOf, textOrNullOf } from '../base/rows';
import { recordChange } from '../history/changes';
import { answerToSave, writeCalculation } from './calculations';
import { touchProject } from './project-rows';

const savedFileSchema = z
  .object({
    name: z.string(),
    hash: z.string().regex(/^[0-9a-f]{64}$/),
    type: z.enum(['application/pdf', 'image/jpeg', 'image/png', 'image/webp']),
    bytes: z.int(),
  })
  .readonly();

export function openPattern(
  store: ReadableStore,
  { projectId }: ChannelInput<'pattern:open'>,
): Result<SavedPattern | null, Problem> {
  const project = findProject(store, projectId);
  if (!project.ok) return project;
  const row = rowOf(store, projectId);
  if (row === undefined) return success(null);
  const file = fileOf(row);
  const shown = file === null ? null : { name: file.name, bytes: file.bytes };
  return success({ ...detailsOf(row), file: shown });
}

/** Saves the pattern and the patches read from it together, so that one undo takes both back. */
export function savePattern(
  store: ReadableStore,
  { projectId, details, answer }: ChannelInput<'pattern:save'>,
): Result<Changed, Problem> {
  const project = findProject(store, projectId);
  if (!project.ok) return project;
  const stage = answer === null ? null : findStage(store, answer.stageId);
  if (stage?.ok === false) return stage;
  if (stage !== null && stage.value.projectId !== projectId) return notFound('stage');
  const isToSave = answer !== null && answer.ownInput !== null;
  const saved = isToSave ? answerToSave(store, answer) : success(null);
  if (!saved.ok) return saved;
  return recordChange(store, `Saved the pattern of “${project.value.name}”`, (writable) => {
    writePattern(writable, projectId, columnsOf(details));
    if (saved.value !== null) writeCalculation(writable, saved.value.calculation);
    else if (answer !== null) dropAnswer(writable, answer);
    touchProject(writable, projectId);
    return success({});
  });
}

/** The list has no patches any more, so none are asked for. */
function dropAnswer(
  store: WritableStore,
  { stageId, calculator }: NonNullable<ChannelInput<'pattern:save'>['answer']>,
): void {
  write(store, 'DELETE FROM calculation WHERE stage_id = ? AND calculator = ?', stageId, calculator);
}

/** The file is written before the row, so that a recorded file is always there. */
export function setPatternFile(
  store: ReadableStore,
  folder: string,
  { projectId, file }: ChannelInput<'pattern:set-file'>,
): Result<Changed, Problem> {
  const project = findProject(store, projectId);
  if (!project.ok) return project;
  const saved = file === null ? success(null) : savePatternFile(folder, file.bytes);
  if (!saved.ok) return saved;
  const json = saved.value === null ? null : JSON.stringify({ ...saved.value, name: file?.name ?? '' });
  const words = json === null ? 'Took the file off the pattern of' : 'Added a file to the pattern of';
  return recordChange(store, `${words} “${project.value.name}”`, (writable) => {
    writePattern(writable, projectId, { file_json: json });
    touchProject(writable, projectId);
    return success({});
  });
}

/** Where the file of a project's pattern is, for the program that shows such files. */
export function findPatternFile(
  store: ReadableStore,
  folder: string,
  projectId: string,
): Result<{ readonly file: string }, Problem> {
  const row = rowOf(store, projectId);
  const file = row === undefined ? null : fileOf(row);
  return file === null
    ? notFound('pattern-file')
    : success({ file: patternFile(folder, file.hash, file.type) });
}

function rowOf(store: ReadableStore, projectId: string): Row | undefined {
  return oneRow(store, 'SELECT * FROM pattern WHERE project_id = ?', projectId);
}

function detailsOf(row: Row): PatternDetails {
  const details = {
    patternName: textOf(row, 'pattern_name'),
    page: textOf(row, 'page'),
    place: textOf(row, 'place'),
    listText: textOf(row, 'list_text'),
    bareUnit: textOf(row, 'bare_unit'),
    fabrics: jsonOf(row, 'fabrics_json'),
  };
  return readBy(patternDetailsSchema, details, `pattern ${textOf(row, 'id')}`);
}

function fileOf(row: Row): z.infer<typeof savedFileSchema> | null {
  if (textOrNullOf(row, 'file_json') === null) return null;
  return readBy(savedFileSchema, jsonOf(row, 'file_json'), `pattern ${textOf(row, 'id')}`);
}

function columnsOf(details: PatternDetails): Readonly<Record<string, Value>> {
  return {
    pattern_name: details.patternName,
    page: details.page,
    place: details.place,
    list_text: details.listText,
    bare_unit: details.bareUnit,
    fabrics_json: JSON.stringify(details.fabrics),
  };
}

/** Changes these columns of the project's pattern, or begins it with them. */
function writePattern(
  store: WritableStore,
  projectId: string,
  columns: Readonly<Record<string, Value>>,
): void {
  const before = rowOf(store, projectId);
  if (before !== undefined) updateRow(store, 'pattern', textOf(before, 'id'), columns);
  else {
    const id = store.clockAndIds.newId();
    insertRow(store, 'pattern', { id, project_id: projectId, ...columnsOf(NO_PATTERN), ...columns });
  }
}
