import { answerCalculator } from '#core/calculators/complete-input';
import { calculatorByName } from '#core/calculators/registry';
import type { KeptCalculation } from '#core/contract/calculations';
import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import type { CalculationId, StageId } from '#core/domain/ids';
import { measurementsOfProject } from '#core/domain/measurements';
import { failure, type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import { allRows, insertRow, oneRow, type ReadableStore, type Row, updateRow, write } from '../base/handles';
import { findStage, notFound } from '../base/lookups';
import { projectOf, touchProject } from './project-rows';
import { idOf, jsonOf, numberOf, textOf } from '../base/rows';
import { settingsInUse } from '../workshop/settings-in-use';

/** The answers kept with a stage, in the order they were first kept. */
export function listCalculations(
  store: ReadableStore,
  { stageId }: ChannelInput<'calculation:list'>,
): readonly KeptCalculation[] {
  const sql = 'SELECT * FROM calculation WHERE stage_id = ? ORDER BY seq';
  return allRows(store, sql, stageId).map(calculationOf);
}

/** Works the answer out from the project as it is now and keeps it in place of the calculator's last one. */
export function keepCalculation(
  store: ReadableStore,
  { stageId, calculator: name, ownInput }: ChannelInput<'calculation:keep'>,
): Result<ChannelOutput<'calculation:keep'>, Problem> {
  const stage = findStage(store, stageId);
  if (!stage.ok) return stage;
  const calculator = calculatorByName(name);
  if (calculator === undefined) return notFound('calculator');
  const { projectId } = stage.value;
  const project = projectOf(oneRow(store, 'SELECT * FROM project WHERE id = ?', projectId) ?? {});
  const measurements = measurementsOfProject(project, settingsInUse(store));
  const answer = answerCalculator(calculator, measurements, ownInput);
  if (!answer.ok) return failure(toProblem(answer.error));
  const columns = {
    version: calculator.version,
    input_json: JSON.stringify(answer.value.input),
    own_input_json: JSON.stringify(answer.value.ownInput),
    answer_json: JSON.stringify(answer.value.calculation),
    kept_at: store.surroundings.now(),
  };
  return recordChange(store, `Kept “${calculator.title}” with “${stage.value.name}”`, (writable) => {
    const before = oneRow(
      writable,
      'SELECT id FROM calculation WHERE stage_id = ? AND calculator = ?',
      stageId,
      name,
    );
    const calculationId = (
      before === undefined ? store.surroundings.newId() : textOf(before, 'id')
    ) as CalculationId;
    if (before === undefined) {
      insertRow(writable, 'calculation', {
        id: calculationId,
        stage_id: stageId,
        calculator: name,
        ...columns,
      });
    } else {
      updateRow(writable, 'calculation', calculationId, columns);
    }
    touchProject(writable, projectId);
    return success({ calculationId });
  });
}

export function removeCalculation(
  store: ReadableStore,
  { calculationId }: ChannelInput<'calculation:remove'>,
): Result<Changed, Problem> {
  const sql = `SELECT calculation.calculator, project_id FROM calculation JOIN stage ON stage.id = stage_id
    WHERE calculation.id = ?`;
  const row = oneRow(store, sql, calculationId);
  if (row === undefined) return notFound('answer');
  const title = calculatorByName(textOf(row, 'calculator'))?.title ?? textOf(row, 'calculator');
  return recordChange(store, `Removed “${title}”`, (writable) => {
    write(writable, 'DELETE FROM calculation WHERE id = ?', calculationId);
    touchProject(writable, textOf(row, 'project_id'));
    return success({});
  });
}

/** The page shows a refusal while it is typed; here it only keeps an answer that is none from being kept. */
function toProblem(error: Extract<ReturnType<typeof answerCalculator>, { ok: false }>['error']): Problem {
  if (error.code === 'invalid-input') return error;
  const { field, says } = error.refusal;
  return { code: 'invalid-input', fields: [{ path: ['ownInput', ...field], read: '', expected: says }] };
}

function calculationOf(row: Row): KeptCalculation {
  return {
    id: idOf<CalculationId>(row, 'id'),
    stageId: idOf<StageId>(row, 'stage_id'),
    calculator: textOf(row, 'calculator'),
    version: numberOf(row, 'version'),
    input: jsonOf(row, 'input_json'),
    ownInput: jsonOf(row, 'own_input_json'),
    answer: jsonOf(row, 'answer_json'),
    keptAt: numberOf(row, 'kept_at'),
  };
}
