import { answerCalculator } from '#core/calculators/complete-input';
import { trialsIn } from '#core/calculators/fact-fields';
import { calculatorByName } from '#core/calculators/registry';
import { openDecisions, unsettledFacts } from '#core/calculators/unsettled';
import type { ChannelInput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import { type Measurements, measurementsOfProject } from '#core/domain/measurements';
import type { Project } from '#core/domain/project';
import {
  decideFacts,
  type DecidedFacts,
  FACT_NAMES,
  factTitle,
  type UnsettledFact,
} from '#core/domain/project-facts';
import { failure, type Result, success } from '#core/result';
import { allRows, oneRow, type ReadableStore, updateRow, write } from '../base/handles';
import { notFound } from '../base/lookups';
import { textOf } from '../base/rows';
import { recordChange } from '../history/changes';
import { settingsInUse } from '../workshop/settings-in-use';
import { calculationColumns, calculationOf } from './calculations';
import { listedStagesByProject } from './stage-rows';
import { projectColumns, readProject, touchProject } from './project-rows';
import { resizeEstimates } from './resize-estimates';

/** The facts on which the saved answers of a project disagree with it, by stage. */
export function unsettledFactsOf(
  store: ReadableStore,
  { projectId }: ChannelInput<'project:unsettled'>,
): Result<readonly UnsettledFact[], Problem> {
  const project = readProject(store, projectId);
  if (project === null) return notFound('project');
  const sql = `SELECT calculation.* FROM calculation JOIN stage ON stage.id = stage_id
    WHERE project_id = ? ORDER BY position, calculation.seq`;
  const answers = allRows(store, sql, projectId).map(calculationOf);
  return success(unsettledFacts(answers, measurementsOf(store, project)));
}

export function decideForProject(
  store: ReadableStore,
  { projectId, decided }: ChannelInput<'project:decide'>,
): Result<Changed, Problem> {
  const project = readProject(store, projectId);
  if (project === null) return notFound('project');
  return recordChange(store, decidedWords(project.name, decided), (writable) => {
    const details = decideFacts(project, decided);
    updateRow(writable, 'project', projectId, projectColumns(details));
    resizeEstimates(writable, project, details);
    touchProject(writable, projectId);
    return success({});
  });
}

/** The facts by name: `Decided for “Winter ring”: hole, seam allowance`. */
function decidedWords(name: string, decided: DecidedFacts): string {
  const facts = FACT_NAMES.filter((fact) => fact in decided).map((fact) => factTitle(fact).toLowerCase());
  return `Decided for “${name}”: ${facts.join(', ')}`;
}

/** Gives a saved answer the facts of its project. An answer that still decides other facts is deleted. */
export function followProject(
  store: ReadableStore,
  { calculationId }: ChannelInput<'calculation:follow-project'>,
): Result<Changed, Problem> {
  const sql = `SELECT calculation.*, project_id FROM calculation JOIN stage ON stage.id = stage_id
    WHERE calculation.id = ?`;
  const row = oneRow(store, sql, calculationId);
  const project = row === undefined ? null : readProject(store, textOf(row, 'project_id'));
  if (row === undefined || project === null) return notFound('saved-answer');
  const saved = calculationOf(row);
  const calculator = calculatorByName(saved.calculator);
  if (calculator === undefined) return notFound('calculator');
  const measurements = measurementsOf(store, project);
  const own = Object.fromEntries(Object.entries(saved.ownInput ?? {}));
  const tried = new Set(trialsIn(calculator, measurements, own).map(({ field }) => field));
  const rest = Object.fromEntries(Object.entries(own).filter(([field]) => !tried.has(field)));
  const isDropped = openDecisions(calculator, measurements, rest).length > 0;
  const answer = answerCalculator(calculator, measurements, rest);
  if (!isDropped && !answer.ok) return failure<Problem>({ code: 'no-answer', calculator: calculator.title });
  const words = `“${calculator.title}” follows “${project.name}” again`;
  return recordChange(store, words, (writable) => {
    if (isDropped || !answer.ok) write(writable, 'DELETE FROM calculation WHERE id = ?', calculationId);
    else
      updateRow(writable, 'calculation', calculationId, calculationColumns(store, calculator, answer.value));
    touchProject(writable, project.id);
    return success({});
  });
}

function measurementsOf(store: ReadableStore, project: Project): Measurements {
  const stages = listedStagesByProject(store, [project.id]).get(project.id) ?? [];
  return measurementsOfProject(project, settingsInUse(store), stages);
}
