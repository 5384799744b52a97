import type { Calculator } from '#core/calculators/calculator';
import { type Answer, answerCalculator } from '#core/calculators/complete-input';
import { calculatorByName } from '#core/calculators/registry';
import type { SavedCalculation } from '#core/contract/calculations';
import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import type { CalculationId, StageId } from '#core/domain/ids';
import { measurementsOfProject } from '#core/domain/measurements';
import { failure, type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import {
  allRows,
  insertRow,
  oneRow,
  type ReadableStore,
  type Row,
  updateRow,
  type Value,
  type WritableStore,
  write,
} from '../base/handles';
import { findStage, notFound, type StageRef } from '../base/lookups';
import { listedStagesByProject } from './stage-rows';
import { projectOf, touchProject } from './project-rows';
import { idOf, jsonOf, numberOf, textOf } from '../base/rows';
import { settingsInUse } from '../workshop/settings-in-use';

/** The answers saved with a stage, in the order they were first saved. */
export function listCalculations(
  store: ReadableStore,
  { stageId }: ChannelInput<'calculation:list'>,
): readonly SavedCalculation[] {
  const sql = 'SELECT * FROM calculation WHERE stage_id = ? ORDER BY seq';
  return allRows(store, sql, stageId).map(calculationOf);
}

/** Calculates the answer from the project as it is now. It replaces the answer this calculator saved before. */
export function saveCalculation(
  store: ReadableStore,
  input: ChannelInput<'calculation:save'>,
): Result<ChannelOutput<'calculation:save'>, Problem> {
  const answer = answerToSave(store, input);
  if (!answer.ok) return answer;
  const { stage, title, calculation } = answer.value;
  return recordChange(store, `Saved “${title}” for “${stage.name}”`, (writable) => {
    const calculationId = writeCalculation(writable, calculation);
    touchProject(writable, stage.projectId);
    return success({ calculationId });
  });
}

/** An answer that is worked out and not written yet. */
export interface AnswerToSave {
  readonly stage: StageRef;
  readonly title: string;
  readonly calculation: CalculationToWrite;
}

/** Works an answer out from the project as it is now. */
export function answerToSave(
  store: ReadableStore,
  { stageId, calculator: name, ownInput }: ChannelInput<'calculation:save'>,
): Result<AnswerToSave, Problem> {
  const stage = findStage(store, stageId);
  if (!stage.ok) return stage;
  const calculator = calculatorByName(name);
  if (calculator === undefined) return notFound('calculator');
  const { projectId } = stage.value;
  const project = projectOf(oneRow(store, 'SELECT * FROM project WHERE id = ?', projectId) ?? {});
  const stages = listedStagesByProject(store, [projectId]).get(projectId) ?? [];
  const measurements = measurementsOfProject(project, settingsInUse(store), stages);
  const answer = answerCalculator(calculator, measurements, ownInput);
  // The page shows why while the maker types; this only stops a save when the project has changed meanwhile.
  if (!answer.ok) return failure<Problem>({ code: 'no-answer', calculator: calculator.title });
  const columns = calculationColumns(store, calculator, answer.value);
  const calculation = { stageId, calculator: name, columns };
  return success({ stage: stage.value, title: calculator.title, calculation });
}

export function calculationColumns(
  store: ReadableStore,
  { version }: Calculator,
  { input, ownInput, calculation }: Answer,
): Readonly<Record<string, Value>> {
  return {
    version,
    input_json: JSON.stringify(input),
    own_input_json: JSON.stringify(ownInput),
    answer_json: JSON.stringify(calculation),
    kept_at: store.clockAndIds.now(),
  };
}

export interface CalculationToWrite {
  readonly stageId: StageId;
  readonly calculator: string;
  readonly columns: Readonly<Record<string, Value>>;
}

/** Replaces the answer that the calculator saved with the stage before, or adds the first one. */
export function writeCalculation(
  store: WritableStore,
  { stageId, calculator, columns }: CalculationToWrite,
): CalculationId {
  const sql = 'SELECT id FROM calculation WHERE stage_id = ? AND calculator = ?';
  const before = oneRow(store, sql, stageId, calculator);
  if (before !== undefined) {
    const id = idOf<CalculationId>(before, 'id');
    updateRow(store, 'calculation', id, columns);
    return id;
  }
  const id = store.clockAndIds.newId() as CalculationId;
  insertRow(store, 'calculation', { id, stage_id: stageId, calculator, ...columns });
  return id;
}

export function deleteCalculation(
  store: ReadableStore,
  { calculationId }: ChannelInput<'calculation:delete'>,
): Result<Changed, Problem> {
  const sql = `SELECT calculation.calculator, project_id FROM calculation JOIN stage ON stage.id = stage_id
    WHERE calculation.id = ?`;
  const row = oneRow(store, sql, calculationId);
  if (row === undefined) return notFound('saved-answer');
  const title = calculatorByName(textOf(row, 'calculator'))?.title ?? textOf(row, 'calculator');
  return recordChange(store, `Deleted the answer of “${title}”`, (writable) => {
    write(writable, 'DELETE FROM calculation WHERE id = ?', calculationId);
    touchProject(writable, textOf(row, 'project_id'));
    return success({});
  });
}

export function calculationOf(row: Row): SavedCalculation {
  return {
    id: idOf<CalculationId>(row, 'id'),
    stageId: idOf<StageId>(row, 'stage_id'),
    calculator: textOf(row, 'calculator'),
    version: numberOf(row, 'version'),
    input: jsonOf(row, 'input_json'),
    ownInput: jsonOf(row, 'own_input_json'),
    answer: jsonOf(row, 'answer_json'),
    savedAt: numberOf(row, 'kept_at'),
  };
}
