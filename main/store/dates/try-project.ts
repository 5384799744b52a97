import type { ChannelInput } from '#core/contract/channels';
import type { TriedProject } from '#core/contract/dates';
import type { Problem } from '#core/contract/problem';
import type { ProjectId, StageId } from '#core/domain/ids';
import { chancesOf } from '#core/planner/chances';
import { moreHours } from '#core/planner/more-hours';
import { moveDates } from '#core/planner/move-dates';
import { planDates } from '#core/planner/plan-dates';
import { type Result, success } from '#core/result';
import type { ReadableStore } from '../base/handles';
import { notFound } from '../base/lookups';
import { listOpenProjects, type OpenProject } from '../projects/open-projects';
import { stagesForProject } from '../projects/resize-estimates';
import { findStagePlan } from '../projects/stage-plans';
import { planningLoadOf } from './dates';

/** Plans a project that is not started yet, behind everything that is equally urgent. */
export function tryProject(
  store: ReadableStore,
  { on, details, stagePlanId }: ChannelInput<'dates:try-project'>,
): Result<TriedProject, Problem> {
  const plan = findStagePlan(store, stagePlanId);
  if (plan === undefined) return notFound('stage-plan');
  const open = listOpenProjects(store);
  const tried = unstarted(store, details, stagesForProject(plan, details));
  const before = planDates(planningLoadOf(store, on, open).load);
  const { load, spreadOf } = planningLoadOf(store, on, [...open, tried]);
  const after = planDates(load);
  const dates = after.projects.find(({ id }) => id === tried.project.id);
  const chance = chancesOf(load, spreadOf).find(({ id }) => id === tried.project.id);
  if (dates === undefined || chance === undefined) return notFound('stage-plan');
  const lateBefore = new Map(before.projects.map(({ id, lateDays }) => [id, lateDays ?? 0]));
  const madeLater = after.projects.flatMap(({ id, lateDays }) => {
    const was = Math.max(0, lateBefore.get(id) ?? 0);
    const project = open.find((one) => one.project.id === id)?.project;
    return project === undefined || (lateDays ?? 0) <= was
      ? []
      : [{ name: project.name, lateDays: lateDays ?? 0 }];
  });
  const isLate = (dates.lateDays ?? 0) > 0;
  const fixes = isLate ? { ...moreHours(load), moved: moveDates(load, after) } : null;
  const doubtful = tried.stages.find(({ id }) => id === chance.doubtfulStage);
  return success({ dates, madeLater, fixes, chance, doubtfulStageName: doubtful?.name ?? null });
}

function unstarted(
  store: ReadableStore,
  details: ChannelInput<'dates:try-project'>['details'],
  stages: ReturnType<typeof stagesForProject>,
): OpenProject {
  const { newId, now } = store.clockAndIds;
  const id = newId() as ProjectId;
  const project = { ...details, id, isArchived: false, createdAt: now(), changedAt: now() };
  return {
    project,
    trips: [],
    stages: stages.map(({ kind, name, estimateMinutes, isBeside = false }, position) => ({
      id: newId() as StageId,
      projectId: id,
      position,
      kind,
      name,
      state: 'planned',
      estimateMinutes,
      isOwnEstimate: false,
      heldUpBy: '',
      isBeside,
    })),
  };
}
