import { z } from 'zod';
import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed, StagePlan } from '#core/contract/projects';
import type { stagePlanIdSchema } from '#core/domain/ids';
import { plannedStageSchema } from '#core/domain/stage';
import { STARTING_PLANS } from '#core/domain/starting-plans';
import { failure, type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import { allRows, insertRow, oneRow, type ReadableStore, type Row, updateRow, write } from '../base/handles';
import { notFound } from '../base/lookups';
import { idOf, jsonOf, readBy, textOf } from '../base/rows';

type StagePlanId = z.infer<typeof stagePlanIdSchema>;

/** The built-in plans in their order, then the maker's own by name. */
export function listStagePlans(store: ReadableStore): readonly StagePlan[] {
  const own = allRows(store, 'SELECT * FROM stage_plan ORDER BY name COLLATE NOCASE, id').map(planOf);
  return [...builtInPlans(), ...own];
}

export function findStagePlan(store: ReadableStore, id: string): StagePlan | undefined {
  const builtIn = builtInPlans().find((plan) => plan.id === id);
  if (builtIn !== undefined) return builtIn;
  const row = oneRow(store, 'SELECT * FROM stage_plan WHERE id = ?', id);
  return row === undefined ? undefined : planOf(row);
}

/** Saves a plan of the maker's own: a new one when `id` is null, otherwise a change of that plan. */
export function saveStagePlan(
  store: ReadableStore,
  { stagePlanId: id, name, says, stages }: ChannelInput<'stage-plan:save'>,
): Result<ChannelOutput<'stage-plan:save'>, Problem> {
  const columns = { name, says, stages_json: JSON.stringify(stages) };
  if (id === null) {
    return recordChange(store, `Saved the stage plan “${name}”`, (writable) => {
      const newId = store.clockAndIds.newId() as StagePlanId;
      insertRow(writable, 'stage_plan', { id: newId, ...columns });
      return success({ stagePlanId: newId });
    });
  }
  const own = findOwnPlan(store, id);
  if (!own.ok) return own;
  return recordChange(store, `Changed the stage plan “${name}”`, (writable) => {
    updateRow(writable, 'stage_plan', id, columns);
    return success({ stagePlanId: id });
  });
}

export function deleteStagePlan(
  store: ReadableStore,
  { stagePlanId: id }: ChannelInput<'stage-plan:delete'>,
): Result<Changed, Problem> {
  const own = findOwnPlan(store, id);
  if (!own.ok) return own;
  return recordChange(store, `Deleted the stage plan “${own.value.name}”`, (writable) => {
    write(writable, 'DELETE FROM stage_plan WHERE id = ?', id);
    return success({});
  });
}

function findOwnPlan(store: ReadableStore, id: string): Result<StagePlan, Problem> {
  const plan = findStagePlan(store, id);
  if (plan === undefined) return notFound('stage-plan');
  return plan.isOwn ? success(plan) : failure<Problem>({ code: 'built-in', name: plan.name });
}

function builtInPlans(): readonly StagePlan[] {
  return STARTING_PLANS.map((plan) => ({ ...plan, isOwn: false }));
}

const plannedStages = z.array(plannedStageSchema).readonly();

function planOf(row: Row): StagePlan {
  const id = idOf<StagePlanId>(row, 'id');
  return {
    id,
    name: textOf(row, 'name'),
    says: textOf(row, 'says'),
    isOwn: true,
    piece: null,
    size: null,
    stages: readBy(plannedStages, jsonOf(row, 'stages_json'), `stage_plan ${id}`),
  };
}
