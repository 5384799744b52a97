import type { DayMoves, PlannedDates } from '#core/contract/dates';
import type { ProjectGlance, StageGlance } from '#core/contract/projects';
import type { ProjectId, StageId, TripId } from '#core/domain/ids';
import { isOver, type StageState } from '#core/domain/stage';
import { isBookedAhead } from '#core/domain/trip';
import type { DaysAway } from '#core/learned/days-away';
import type { ProjectDates, StepDates } from '#core/planner/schedule';
import { addDays, type CalendarDate, daysBetween, weekday } from '#core/units/calendar-date';

/** The days of the calendar: whole weeks, from a Monday. */
export interface Scale {
  readonly from: CalendarDate;
  readonly days: number;
}

/** A stretch of a stage: work at home, or time at the quilter. */
export interface Bar {
  readonly key: string;
  readonly stageId: StageId;
  readonly name: string;
  readonly kind: 'work' | 'away';
  readonly state: StageState;
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  /** For time at the quilter: how long, and where that figure comes from; null if a return date is promised. */
  readonly away: DaysAway | null;
}

/** A day that can be moved, with the day that is saved. */
export interface Mark {
  readonly on: CalendarDate;
  readonly savedOn: CalendarDate;
}

export interface ProjectRow {
  readonly id: ProjectId;
  readonly name: string;
  readonly bars: readonly Bar[];
  readonly dates: ProjectDates;
  readonly due: Mark | null;
  /** The current trip, with the day it was promised back. */
  readonly back: (Mark & { readonly tripId: TripId; readonly withWhom: string }) | null;
}

const WEEKS_AFTER = 2;
const LONGEST_SCALE = 3 * 52 * 7;

/** From the Monday of this week, or of the week of the oldest open day, to two weeks after the last day. */
export function scaleOf(rows: readonly ProjectRow[], weeks: PlannedDates['weeks'], on: CalendarDate): Scale {
  const marks = rows.flatMap(({ due, back }) => [due, back].filter((mark) => mark !== null));
  // Only saved days count, or the start of the scale would move while a day is dragged.
  const past = marks
    .map(({ savedOn: keptOn }) => keptOn)
    .filter((day) => day < on && daysBetween(day, on) < 28);
  const earliest = past.toSorted()[0] ?? on;
  const ends = [
    ...rows.flatMap(({ dates }) => dates.finishOn ?? []),
    ...marks.map((mark) => mark.on),
    weeks.at(-1)?.from ?? on,
  ];
  const last = ends.toSorted().at(-1) ?? on;
  const from = addDays(earliest, 1 - weekday(earliest));
  const toWeekEnd = addDays(last, 8 - weekday(last) + 7 * WEEKS_AFTER);
  return { from, days: Math.min(LONGEST_SCALE, daysBetween(from, toWeekEnd)) };
}

/** One row for each project that has something left to do, in the order of their due dates. */
export function rowsOf(
  glances: readonly ProjectGlance[],
  { plan, away }: PlannedDates,
  moves: DayMoves,
): readonly ProjectRow[] {
  const awayOf = new Map(away.map((one) => [one.stageId, one]));
  const datesById = new Map(plan.projects.map((dates) => [dates.id, dates]));
  return glances
    .flatMap((glance): ProjectRow[] => {
      const dates = datesById.get(glance.project.id);
      return dates === undefined ? [] : [rowOf(glance, dates, moves, awayOf)];
    })
    .toSorted(byDay);
}

function byDay(one: ProjectRow, other: ProjectRow): number {
  const day = ({ due, dates }: ProjectRow) => due?.savedOn ?? `after ${dates.finishOn ?? '9999'}`;
  return day(one).localeCompare(day(other)) || one.name.localeCompare(other.name);
}

type AwayOf = ReadonlyMap<StageId, DaysAway>;

function rowOf(
  { project, stages, trips }: ProjectGlance,
  dates: ProjectDates,
  moves: DayMoves,
  awayOf: AwayOf,
): ProjectRow {
  const dueOn = moves.dues.find(({ projectId }) => projectId === project.id)?.dueOn ?? project.dueOn;
  const trip = trips.findLast(
    ({ stageId, backOn }) =>
      backOn === null && stages.some((stage) => stage.id === stageId && !isOver(stage)),
  );
  const isBooked = stages.some(({ id, state }) => id === trip?.stageId && isBookedAhead(trip, state));
  const isPromised = (stage: StageGlance) =>
    stage.state === 'out' && trip?.stageId === stage.id && trip.promisedOn !== null;
  const movedBack = moves.promises.find(({ tripId }) => tripId === trip?.id);
  return {
    id: project.id,
    name: project.name,
    bars: dates.steps.flatMap((step, place) => {
      const stage = stages.find(({ id }) => id === step.id);
      if (stage === undefined) return [];
      const bar = barOf(step, place, stage);
      const away = step.kind === 'wait' && !isPromised(stage) ? (awayOf.get(stage.id) ?? null) : null;
      return bar === null ? [] : [{ ...bar, away }];
    }),
    dates,
    due: dueOn === null || project.dueOn === null ? null : { on: dueOn, savedOn: project.dueOn },
    back:
      trip === undefined || isBooked || trip.promisedOn === null
        ? null
        : {
            on: movedBack?.promisedOn ?? trip.promisedOn,
            savedOn: trip.promisedOn,
            tripId: trip.id,
            withWhom: trip.withWhom,
          },
  };
}

function barOf(step: StepDates, place: number, stage: StageGlance): Omit<Bar, 'away'> | null {
  if (step.startOn === null || step.endOn === null) return null;
  // A trip ends on the morning of the day it is back, so one without days has no bar.
  if (step.kind === 'wait' && step.startOn === step.endOn) return null;
  return {
    key: `${step.id} ${String(place)}`,
    stageId: stage.id,
    name: stage.name,
    kind: step.kind === 'wait' ? 'away' : 'work',
    state: stage.state,
    from: step.startOn,
    to: step.kind === 'wait' ? addDays(step.endOn, -1) : step.endOn,
  };
}

/** The moves with one due date changed. Moving it to the saved day removes the move. */
export function withDue(moves: DayMoves, projectId: ProjectId, { on, savedOn: keptOn }: Mark): DayMoves {
  const others = moves.dues.filter((one) => one.projectId !== projectId);
  return { ...moves, dues: on === keptOn ? others : [...others, { projectId, dueOn: on }] };
}

/** The moves with one return date changed. Moving it to the saved day removes the move. */
export function withPromise(moves: DayMoves, tripId: TripId, { on, savedOn: keptOn }: Mark): DayMoves {
  const others = moves.promises.filter((one) => one.tripId !== tripId);
  return { ...moves, promises: on === keptOn ? others : [...others, { tripId, promisedOn: on }] };
}

/** What the moves change for one project. */
export interface Effect {
  readonly id: string;
  readonly finishedBefore: CalendarDate | null;
  readonly finishedAfter: CalendarDate | null;
  readonly lateBefore: number;
  readonly lateAfter: number;
}

/** The projects that the moves change, first those that become late or on time. */
export function effectsOf(saved: PlannedDates, trial: PlannedDates): readonly Effect[] {
  const before = new Map(saved.plan.projects.map((dates) => [dates.id, dates]));
  const late = (dates: ProjectDates | undefined) => Math.max(0, dates?.lateDays ?? 0);
  return trial.plan.projects
    .map((after): Effect => {
      const was = before.get(after.id);
      return {
        id: after.id,
        finishedBefore: was?.finishOn ?? null,
        finishedAfter: after.finishOn,
        lateBefore: late(was),
        lateAfter: late(after),
      };
    })
    .filter((one) => one.finishedBefore !== one.finishedAfter || one.lateBefore !== one.lateAfter)
    .toSorted((one, other) => weight(other) - weight(one));
}

/** More than any number of late days. */
const TURNS_FIRST = 10_000;

function weight({ lateBefore, lateAfter }: Effect): number {
  const turns = lateBefore > 0 !== lateAfter > 0 ? TURNS_FIRST : 0;
  return turns + Math.abs(lateAfter - lateBefore);
}
