import type { ChannelInput } from '#core/contract/channels';
import type { CuttingPlanPage } from '#core/contract/cutting';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import { cutSteps } from '#core/cutting/tree/cut-steps';
import type { KeptPlan } from '#core/domain/cutting-plan';
import { failure, type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import { findPlan, type PlanRef, type StepRef, stepsOf } from './cutting-rows';
import { releasePlan, setPlanAside } from './plan-holds';
import { insertRow, type ReadableStore, updateRow, type WritableStore, write } from '../base/handles';
import { findProject, notFound } from '../base/lookups';

export function openCuttingPlan(
  store: ReadableStore,
  { projectId }: ChannelInput<'cutting:open'>,
): Result<CuttingPlanPage | null, Problem> {
  const project = findProject(store, projectId);
  if (!project.ok) return project;
  const found = findPlan(store, projectId);
  if (found === undefined) return success(null);
  const ticked = stepsOf(store, found.id).map(({ id: _id, activeBookings: _seqs, ...step }) => step);
  return success({ plan: found.plan, savedAt: found.savedAt, ticked });
}

/**
 * Saves a plan with its project, in place of an earlier one, and sets its fabric aside. The cuts booked by the earlier one must come first
 * in the new plan.
 */
export function saveCuttingPlan(
  store: ReadableStore,
  { projectId, plan }: ChannelInput<'cutting:save'>,
): Result<Changed, Problem> {
  const project = findProject(store, projectId);
  if (!project.ok) return project;
  const before = findPlan(store, projectId);
  const steps = before === undefined ? [] : stepsOf(store, before.id);
  if (before !== undefined && !startsWithBookedCuts(plan, before, steps)) {
    return failure<Problem>({ code: 'plan-changed' });
  }
  return recordChange(store, `Saved the cutting plan of “${project.value.name}”`, (writable) => {
    if (before !== undefined) releasePlan(writable, before, steps);
    const columns = {
      plan_json: JSON.stringify(plan),
      kept_at: store.clockAndIds.now(),
      holds_json: JSON.stringify(setPlanAside(writable, plan, steps)),
    };
    if (before === undefined) {
      const id = store.clockAndIds.newId();
      insertRow(writable, 'cutting_plan', { id, project_id: projectId, ...columns });
    } else {
      renumberSteps(writable, steps);
      updateRow(writable, 'cutting_plan', before.id, columns);
    }
    return success({});
  });
}

/** Deletes the plan and releases what it set aside. Its cuts stay in the ledger. */
export function deleteCuttingPlan(
  store: ReadableStore,
  { projectId }: ChannelInput<'cutting:delete'>,
): Result<Changed, Problem> {
  const project = findProject(store, projectId);
  if (!project.ok) return project;
  const found = findPlan(store, projectId);
  if (found === undefined) return notFound('cutting-plan');
  return recordChange(store, `Deleted the cutting plan of “${project.value.name}”`, (writable) => {
    releasePlan(writable, found, stepsOf(store, found.id));
    write(writable, 'DELETE FROM cutting_plan WHERE id = ?', found.id);
    return success({});
  });
}

/** Whether every piece in the new plan starts with the cuts that were booked by the old one. */
function startsWithBookedCuts(plan: KeptPlan, before: PlanRef, steps: readonly StepRef[]): boolean {
  return [...new Set(steps.map(({ pieceId }) => pieceId))].every((pieceId) => {
    const own = steps.filter((step) => step.pieceId === pieceId);
    const done = own.filter(({ isBooked }) => isBooked);
    const [was, is] = [before.plan, plan].map(
      ({ pieces }) => pieces.find((piece) => piece.pieceId === pieceId)?.tree,
    );
    if (done.length === 0) return true;
    if (was === undefined || is === undefined) return false;
    const old = cutSteps(
      was,
      own.map(({ parts }) => parts),
    );
    const kept = cutSteps(
      is,
      done.map(({ parts }) => parts),
    );
    return done.every(({ place }, index) => old[place]?.length === kept[index]?.length);
  });
}

/** Deletes the steps whose bookings were undone, and numbers the others from 0 again. */
function renumberSteps(store: WritableStore, steps: readonly StepRef[]): void {
  const places = new Map<string, number>();
  for (const { id, pieceId, place, isBooked } of steps) {
    if (!isBooked) {
      write(store, 'DELETE FROM cut_step WHERE id = ?', id);
      continue;
    }
    const next = places.get(pieceId) ?? 0;
    places.set(pieceId, next + 1);
    if (next !== place) updateRow(store, 'cut_step', id, { place: next });
  }
}
