import type { ChannelInput } from '#core/contract/channels';
import type { DayMoves, DateFixes, PlannedDates } from '#core/contract/dates';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import type { TripId } from '#core/domain/ids';
import type { DaysAway } from '#core/learned/days-away';
import { loadOfProjects } from '#core/planner/load-of-projects';
import { moreHours } from '#core/planner/more-hours';
import { moveDates } from '#core/planner/move-dates';
import { chancesOf } from '#core/planner/chances';
import type { ProjectChance } from '#core/planner/schedule';
import type { SpreadOf } from '#core/planner/futures';
import { planDates } from '#core/planner/plan-dates';
import { weekLoads } from '#core/planner/week-loads';
import type { WorkshopLoad } from '#core/planner/workshop-load';
import { type Result, success } from '#core/result';
import type { CalendarDate } from '#core/units/calendar-date';
import { recordChange } from '../history/changes';
import { daysAwayOf } from '../trips/days-away';
import { spreadsOf } from './spreads';
import { oneRow, type ReadableStore, updateRow } from '../base/handles';
import { findProject, notFound } from '../base/lookups';
import { type OpenProject, listOpenProjects } from '../projects/open-projects';
import { touchProject } from '../projects/project-rows';
import { textOf } from '../base/rows';
import { estimatesOf } from '../projects/stage-estimates';
import { minutesByStage } from '../workshop/work-rows';
import { readWorkshop } from '../workshop/workshop';

export function plannedDates(store: ReadableStore, question: ChannelInput<'dates:plan'>): PlannedDates {
  const { load, away } = movedLoadOf(store, question);
  const planned = planDates(load);
  const { sessions: _, ...plan } = planned;
  return { plan, weeks: weekLoads(load, planned), away };
}

/** How sure the dates are. */
export function dateChances(
  store: ReadableStore,
  question: ChannelInput<'dates:chances'>,
): readonly ProjectChance[] {
  const { load, spreadOf } = movedLoadOf(store, question);
  return chancesOf(load, spreadOf);
}

export function suggestDateFixes(
  store: ReadableStore,
  question: ChannelInput<'dates:suggest-fixes'>,
): DateFixes {
  const { load } = movedLoadOf(store, question);
  return { ...moreHours(load), moved: moveDates(load, planDates(load)) };
}

/** Saves moved dates, all of them as one change. */
export function moveDays(
  store: ReadableStore,
  { moves }: ChannelInput<'dates:move'>,
): Result<Changed, Problem> {
  const projects = moves.dues.map(({ projectId }) => findProject(store, projectId));
  const trips = moves.promises.map((promise) => findTrip(store, promise.tripId));
  const missing = [...projects, ...trips].find((found) => !found.ok);
  if (missing?.ok === false) return missing;
  const names = [
    ...projects.flatMap((found) => (found.ok ? [`Moved the due date of “${found.value.name}”`] : [])),
    ...trips.flatMap((found) => (found.ok ? [`Moved the return date of “${found.value.name}”`] : [])),
  ];
  const [first = ''] = names;
  const words = names.length === 1 ? first : `Moved ${String(names.length)} dates`;
  return recordChange(store, words, (writable) => {
    for (const { projectId, dueOn } of moves.dues) {
      updateRow(writable, 'project', projectId, { due_on: dueOn });
      touchProject(writable, projectId);
    }
    for (const { tripId, promisedOn } of moves.promises) {
      updateRow(writable, 'trip', tripId, { promised_on: promisedOn });
    }
    for (const found of trips) if (found.ok) touchProject(writable, found.value.projectId);
    return success({});
  });
}

interface PlanningLoad {
  readonly load: WorkshopLoad;
  readonly away: readonly DaysAway[];
  readonly spreadOf: SpreadOf;
}

/** Everything left to do on projects that are not archived, with these moves applied. */
function movedLoadOf(store: ReadableStore, { on, moves }: ChannelInput<'dates:plan'>): PlanningLoad {
  return planningLoadOf(
    store,
    on,
    listOpenProjects(store).map((one) => withMoves(one, moves)),
  );
}

/** Everything left to do on these projects. */
export function planningLoadOf(
  store: ReadableStore,
  on: CalendarDate,
  open: readonly OpenProject[],
): PlanningLoad {
  const workshop = readWorkshop(store);
  const estimates = estimatesOf(store, open);
  const logged = minutesByStage(
    store,
    open.map(({ project }) => project.id),
  );
  const away = daysAwayOf(store, open, workshop.settings);
  const daysOf = new Map(away.map(({ stageId, days }) => [stageId, days]));
  const projects = open.map((one) => ({
    ...one,
    stages: one.stages.map((stage) => {
      const daysAway = daysOf.get(stage.id);
      return {
        ...stage,
        estimateMinutes: minutesLeft(estimates.get(stage.id)?.minutes ?? 0, logged.get(stage.id) ?? 0),
        ...(daysAway === undefined ? {} : { daysAway }),
      };
    }),
  }));
  const load = loadOfProjects(projects, workshop, on);
  return { load, away, spreadOf: spreadsOf(load, projects, { away, estimates }) };
}

/** The rest of an estimate. A stage that already took longer needs no more time. */
function minutesLeft(estimated: number, logged: number): number {
  return Math.max(0, estimated - logged);
}

function withMoves(open: OpenProject, { dues, promises }: DayMoves): OpenProject {
  const due = dues.find(({ projectId }) => projectId === open.project.id);
  return {
    ...open,
    project: due === undefined ? open.project : { ...open.project, dueOn: due.dueOn },
    trips: open.trips.map((trip) => {
      const promise = promises.find(({ tripId }) => tripId === trip.id);
      return promise === undefined ? trip : { ...trip, promisedOn: promise.promisedOn };
    }),
  };
}

interface TripRef {
  readonly name: string;
  readonly projectId: string;
}

function findTrip(store: ReadableStore, tripId: TripId): Result<TripRef, Problem> {
  const row = oneRow(
    store,
    `SELECT project.name, project.id AS project_id FROM trip JOIN stage ON stage.id = stage_id
    JOIN project ON project.id = project_id WHERE trip.id = ?`,
    tripId,
  );
  if (row === undefined) return notFound('trip');
  return success({ name: textOf(row, 'name'), projectId: textOf(row, 'project_id') });
}
