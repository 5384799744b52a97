import { workOfSavedAnswer } from '#core/calculators/saved-answer';
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
import { memo } from '../base/memo';
import { openProject } from './project-glances';
import { groupRows, jsonOf, textOf } from '../base/rows';
import type { ListedStage } from './stage-rows';
import { readOwnRates } from '../workshop/work-rows';

interface Estimated {
  readonly project: Project;
  readonly stages: readonly ListedStage[];
}

/** How long each stage that is not over will take, for all these projects. */
export function estimatesOf(
  store: ReadableStore,
  projects: readonly Estimated[],
): ReadonlyMap<StageId, StageEstimate> {
  const settings = settingsInUse(store);
  const rates = readOwnRates(store);
  const ids = projects.flatMap(({ stages }) => stages.filter(isLeft).map(({ id }) => id));
  const work = workByStage(store, ids);
  return new Map(
    projects.flatMap(({ project, stages }) => {
      const measurements = measurementsOfProject(project, settings, stages);
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

/** The work counted by the answers saved with these stages. */
function workByStage(
  store: ReadableStore,
  ids: readonly StageId[],
): ReadonlyMap<string, readonly WorkDone[]> {
  const sql = `SELECT stage_id, calculator, input_json FROM calculation
    WHERE stage_id IN (SELECT value FROM json_each(?)) ORDER BY stage_id`;
  const answers = groupRows(allRows(store, sql, JSON.stringify(ids)), 'stage_id');
  return new Map(
    ids.map((id) => [
      id,
      (answers.get(id) ?? []).flatMap((row) =>
        workOfInput(textOf(row, 'calculator'), textOf(row, 'input_json')),
      ),
    ]),
  );
}

/** The same input has the same answer, and every change plans all days again: each answer is worked out once. */
const rememberedWork = memo<readonly WorkDone[]>(2_000);

function workOfInput(calculator: string, inputJson: string): readonly WorkDone[] {
  return rememberedWork(`${calculator} ${inputJson}`, () =>
    workOfSavedAnswer({ calculator, input: jsonOf({ input: inputJson }, 'input') }),
  );
}
