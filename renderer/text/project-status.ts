import type { ProjectGlance, StageGlance, Trip } from '#core/contract/projects';
import { currentStage } from '#core/domain/stage';
import { type CalendarDate, daysBetween } from '#core/units/calendar-date';
import { dateWords, farWords, lateWords } from './dates';
import { progressCount, STAGE_STATE_WORDS } from './stage-words';

/**
 * How a project is doing today. late: overdue back from the quilter, or past its due date; next: its stage is not started yet;
 * waiting: something holds its stage up; finished: every stage is done.
 */
export type ProjectSituation = 'late' | 'in-hand' | 'next' | 'away' | 'waiting' | 'finished';

export interface ProjectStatus {
  readonly situation: ProjectSituation;
  /** The current stage; null once all are over. */
  readonly now: StageGlance | null;
  /** The trip the project is on; null while it is at home. */
  readonly trip: Trip | null;
}

/** One line about how a project is doing; an alert is about something late. */
export interface StatusLine {
  readonly text: string;
  readonly isAlert: boolean;
}

/** A due date this near is shown as late things are. */
const DAYS_OF_NOTICE = 3;

type StatusSource = Pick<ProjectGlance, 'project' | 'stages' | 'trips'>;

export function projectStatus({ project, stages, trips }: StatusSource, on: CalendarDate): ProjectStatus {
  const now = currentStage(stages);
  const trip = now?.state === 'out' ? openTrip(trips, now) : null;
  const isOverdueBack = trip !== null && trip.promisedOn !== null && trip.promisedOn < on;
  const isPastDue = project.dueOn !== null && project.dueOn < on;
  const status = (situation: ProjectSituation): ProjectStatus => ({ situation, now, trip });
  if (now === null) return status('finished');
  if (isOverdueBack || isPastDue) return status('late');
  if (now.heldUpBy !== '') return status('waiting');
  if (now.state === 'out') return status('away');
  return status(now.state === 'in-hand' ? 'in-hand' : 'next');
}

/** What to say below a project's name, late things first. The current stage is named elsewhere. */
export function statusLines(
  project: StatusSource,
  status: ProjectStatus,
  on: CalendarDate,
  locale: string,
): readonly StatusLine[] {
  const due = dueLine(project, status, on, locale);
  const lines = [...stageLines(status, on, locale), ...(due === null ? [] : [due])];
  return lines.toSorted((first, second) => Number(second.isAlert) - Number(first.isAlert));
}

/** What to say of the current stage: who has the project and until when, and what it waits for. */
export function stageLines(
  { now, trip }: ProjectStatus,
  on: CalendarDate,
  locale: string,
): readonly StatusLine[] {
  const lines: StatusLine[] = [];
  if (trip !== null) lines.push(tripLine(trip, on, locale));
  else if (now?.state === 'out') lines.push({ text: 'Sent out, no trip recorded', isAlert: false });
  if (now !== null && now.heldUpBy !== '') lines.push({ text: `Waiting: ${now.heldUpBy}`, isAlert: false });
  return lines;
}

/** The current stage with its state: `Outer binding · in progress`; a finished project says so. */
export function nowWords({ now }: ProjectStatus, stages: readonly StageGlance[]): string {
  if (now === null) return stages.length === 0 ? 'No stages yet' : progressCount(stages);
  const state = now.state === 'planned' ? 'next' : STAGE_STATE_WORDS[now.state];
  return `${now.name} · ${state}`;
}

/** The day written at the gap in a drawing: when a project at the quilter was promised back. */
export function awayWords({ trip }: ProjectStatus, on: CalendarDate, locale: string): string | null {
  const promisedOn = trip?.promisedOn ?? null;
  return promisedOn === null ? null : dateWords(promisedOn, locale, on);
}

/** For sorting: the day that comes first, as text. Projects without a day come last. */
export function pressingDay({ project }: StatusSource, { trip }: ProjectStatus): string {
  const days = [project.dueOn, trip?.promisedOn ?? null].filter((day) => day !== null);
  return days.toSorted()[0] ?? '9999-12-31';
}

function openTrip(trips: readonly Trip[], stage: StageGlance): Trip | null {
  return trips.findLast((trip) => trip.stageId === stage.id && trip.backOn === null) ?? null;
}

function tripLine(trip: Trip, on: CalendarDate, locale: string): StatusLine {
  const who = `With ${trip.withWhom}`;
  if (trip.promisedOn === null) return { text: `${who}; no return date promised`, isAlert: false };
  const day = dateWords(trip.promisedOn, locale, on);
  const late = lateWords(trip.promisedOn, on);
  return late === ''
    ? { text: `${who}, back ${day} (${farWords(trip.promisedOn, on)})`, isAlert: false }
    : { text: `${who}, promised ${day}: ${late} late`, isAlert: true };
}

/** When a project is due; null without a due date. */
export function dueLine(
  { project }: Pick<StatusSource, 'project'>,
  { now }: ProjectStatus,
  on: CalendarDate,
  locale: string,
): StatusLine | null {
  const { dueOn } = project;
  if (dueOn === null) return null;
  const day = dateWords(dueOn, locale, on);
  if (now === null) return { text: `Due ${day}`, isAlert: false };
  const late = lateWords(dueOn, on);
  if (late !== '') return { text: `Was due ${day}: ${late} late`, isAlert: true };
  return { text: `Due ${day} (${farWords(dueOn, on)})`, isAlert: daysBetween(on, dueOn) <= DAYS_OF_NOTICE };
}
