import { calculatorByName } from '#core/calculators/registry';
import { readInput } from '#core/calculators/read-input';
import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { WorkDone } from '#core/domain/clock';
import type { StageId } from '#core/domain/ids';
import { measurementsOfProject } from '#core/domain/measurements';
import type { Project } from '#core/domain/project';
import { stageEstimate } from '#core/learned/estimate';
import type { StageEstimate } from '#core/learned/stage-estimate';
import { type Result, success } from '#core/result';
import { settingsInUse } from '../workshop/settings-in-use';
import { allRows, type ReadableStore } from '../base/handles';
import { findProject } from '../base/lookups';
import { openProject } from './project-glances';
import { groupRows, jsonOf, textOf } from '../base/rows';
import type { ListedStage } from './stage-rows';
import { readOwnRates } from '../workshop/work-rows';

interface Estimated {
  readonly project: Project;
  readonly stages: readonly ListedStage[];
}

/** How long every stage that is not over will take, in all these projects. */
export function estimatesOf(
  store: ReadableStore,
  projects: readonly Estimated[],
): ReadonlyMap<StageId, StageEstimate> {
  const [settings, rates] = [settingsInUse(store), readOwnRates(store)];
  const ids = projects.flatMap(({ stages }) => stages.filter(isLeft).map(({ id }) => id));
  const work = workByStage(store, ids);
  return new Map(
    projects.flatMap(({ project, stages }) => {
      const measurements = measurementsOfProject(project, settings);
      return stages.filter(isLeft).map((stage) => {
        const grounds = { work: work.get(stage.id) ?? [], measurements, rates };
        return [stage.id, stageEstimate(stage, grounds)] as const;
      });
    }),
  );
}

export function estimatesOfProject(
  store: ReadableStore,
  { projectId }: ChannelInput<'stage:estimates'>,
): Result<ChannelOutput<'stage:estimates'>, Problem> {
  const project = findProject(store, projectId);
  if (!project.ok) return project;
  const spread = openProject(store, { projectId });
  if (!spread.ok) return spread;
  return success(Object.fromEntries(estimatesOf(store, [spread.value])));
}

function isLeft({ state }: ListedStage): boolean {
  return state !== 'done' && state !== 'skipped';
}

/** What there is to do by the answers kept with these stages. */
function workByStage(
  store: ReadableStore,
  ids: readonly StageId[],
): ReadonlyMap<string, readonly WorkDone[]> {
  const sql = `SELECT stage_id, calculator, input_json FROM calculation
    WHERE stage_id IN (SELECT value FROM json_each(?)) ORDER BY stage_id`;
  const kept = groupRows(allRows(store, sql, JSON.stringify(ids)), 'stage_id');
  return new Map(
    ids.map((id) => [
      id,
      (kept.get(id) ?? []).flatMap((row) =>
        workOfInput(textOf(row, 'calculator'), textOf(row, 'input_json')),
      ),
    ]),
  );
}

/** The same question has the same answer: it is worked out once, since all days are planned anew after every change. */
const known = new Map<string, readonly WorkDone[]>();
const MOST_KNOWN = 2_000;

function workOfInput(name: string, inputJson: string): readonly WorkDone[] {
  const key = `${name} ${inputJson}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const work = worked(name, jsonOf({ input: inputJson }, 'input'));
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(key, work);
  return work;
}

/** None where the calculator is not known any more, or no longer reads what it was asked. */
function worked(name: string, asked: unknown): readonly WorkDone[] {
  const calculator = calculatorByName(name);
  if (calculator?.workIn === undefined) return [];
  const input = readInput(calculator.input, asked, 'in');
  const answer = input.ok ? calculator.calculate(input.value) : input;
  return answer.ok ? calculator.workIn(answer.value.details) : [];
}
