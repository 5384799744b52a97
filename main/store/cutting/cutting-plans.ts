import type { ChannelInput } from '#core/contract/channels';
import type { CuttingPlanPage } from '#core/contract/cutting';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import { cutSteps } from '#core/cutting/tree/cut-steps';
import type { KeptPlan } from '#core/domain/cutting-plan';
import { failure, type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import { findPlan, type PlanRef, type StepRef, stepsOf } from './cutting-rows';
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
  const ticked = stepsOf(store, found.id).map(({ pieceId, place, parts, isBooked, on, leftovers }) => ({
    ...{ pieceId, place, parts, isBooked, on, leftovers },
  }));
  return success({ plan: found.plan, keptAt: found.keptAt, ticked });
}

/** Keeps a plan with its project, in place of the one before; what that had cut must stand first in it. */
export function keepCuttingPlan(
  store: ReadableStore,
  { projectId, plan }: ChannelInput<'cutting:keep'>,
): Result<Changed, Problem> {
  const project = findProject(store, projectId);
  if (!project.ok) return project;
  const before = findPlan(store, projectId);
  const steps = before === undefined ? [] : stepsOf(store, before.id);
  if (before !== undefined && !holdsWhatIsCut(plan, before, steps)) {
    return failure<Problem>({ code: 'changed-since', what: 'cutting plan' });
  }
  return recordChange(store, `Kept the cutting plan of “${project.value.name}”`, (writable) => {
    const columns = { plan_json: JSON.stringify(plan), kept_at: store.surroundings.now() };
    if (before === undefined) {
      const id = store.surroundings.newId();
      insertRow(writable, 'cutting_plan', { id, project_id: projectId, ...columns });
    } else {
      closeRanks(writable, steps);
      updateRow(writable, 'cutting_plan', before.id, columns);
    }
    return success({});
  });
}

/** Puts the plan away. What was cut by it stays booked. */
export function removeCuttingPlan(
  store: ReadableStore,
  { projectId }: ChannelInput<'cutting:remove'>,
): Result<Changed, Problem> {
  const project = findProject(store, projectId);
  if (!project.ok) return project;
  const found = findPlan(store, projectId);
  if (found === undefined) return notFound('cutting plan');
  return recordChange(store, `Put away the cutting plan of “${project.value.name}”`, (writable) => {
    write(writable, 'DELETE FROM cutting_plan WHERE id = ?', found.id);
    return success({});
  });
}

/** Whether every piece begins in the new plan with the cuts that were booked by the old one. */
function holdsWhatIsCut(plan: KeptPlan, before: PlanRef, steps: readonly StepRef[]): boolean {
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

/** Forgets the ticks whose bookings were taken back, so that those that stand count from nought again. */
function closeRanks(store: WritableStore, steps: readonly StepRef[]): void {
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
