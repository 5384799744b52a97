import type { ProjectGlance, StageGlance, Trip } from '#core/contract/projects';
import { currentStage } from '#core/domain/stage';
import { type CalendarDate, daysBetween } from '#core/units/calendar-date';
import { dateWords, farWords, lateWords } from './dates';
import { progressCount, STAGE_STATE_WORDS } from './stage-words';

/**
 * Where a piece stands today: late (overdue back, or past its day), in hand, next (not begun), away, held up, or finished with
 * every stage done.
 */
export type Situation = 'late' | 'in-hand' | 'next' | 'away' | 'held' | 'finished';

export interface Standing {
  readonly situation: Situation;
  readonly now: StageGlance | null;
  /** The journey the piece is on; null when it is at home. */
  readonly trip: Trip | null;
}

/** One thing to say of where a piece stands; an alert is something late. */
export interface StandingLine {
  readonly text: string;
  readonly isAlert: boolean;
}

type Standable = Pick<ProjectGlance, 'project' | 'stages' | 'trips'>;

export function standingOf({ project, stages, trips }: Standable, on: CalendarDate): Standing {
  const now = currentStage(stages);
  const trip = now?.state === 'out' ? openTrip(trips, now) : null;
  const isOverdueBack = trip !== null && trip.promisedOn !== null && trip.promisedOn < on;
  const isPastDue = project.dueOn !== null && project.dueOn < on;
  const standing = (situation: Situation): Standing => ({ situation, now, trip });
  if (now === null) return standing('finished');
  if (isOverdueBack || isPastDue) return standing('late');
  if (now.heldUpBy !== '') return standing('held');
  if (now.state === 'out') return standing('away');
  return standing(now.state === 'in-hand' ? 'in-hand' : 'next');
}

/** What to say below a piece's name, the late things first; its current stage is said elsewhere. */
export function standingLines(
  { project }: Standable,
  { now, trip }: Standing,
  on: CalendarDate,
  locale: string,
): readonly StandingLine[] {
  const lines: StandingLine[] = [];
  if (trip !== null) lines.push(tripLine(trip, on, locale));
  else if (now?.state === 'out') lines.push({ text: 'Away; no word of where or until when', isAlert: false });
  if (now !== null && now.heldUpBy !== '') lines.push({ text: `Held up: ${now.heldUpBy}`, isAlert: false });
  if (project.dueOn !== null) lines.push(dueLine(project.dueOn, now === null, on, locale));
  return lines.toSorted((first, second) => Number(second.isAlert) - Number(first.isAlert));
}

/** The stage a piece stands at with its state: `Outer binding · in hand`; finished pieces say so. */
export function nowWords(standing: Standing, stages: readonly StageGlance[]): string {
  const { now } = standing;
  if (now === null) return stages.length === 0 ? 'No stages yet' : progressCount(stages);
  const state = now.state === 'planned' ? 'next' : STAGE_STATE_WORDS[now.state];
  return `${now.name} · ${state}`;
}

/** The day written at the gap in a drawing: when a piece that is away was promised back. */
export function awayWords({ trip }: Standing, on: CalendarDate, locale: string): string | null {
  const promisedOn = trip?.promisedOn ?? null;
  return promisedOn === null ? null : dateWords(promisedOn, locale, on);
}

/** For sorting: the day that presses, as text; pieces without one come last. */
export function pressingDay({ project }: Standable, { trip }: Standing): string {
  const days = [project.dueOn, trip?.promisedOn ?? null].filter((day) => day !== null);
  return days.toSorted()[0] ?? '9999-12-31';
}

function openTrip(trips: readonly Trip[], stage: StageGlance): Trip | null {
  return trips.findLast((trip) => trip.stageId === stage.id && trip.backOn === null) ?? null;
}

function tripLine(trip: Trip, on: CalendarDate, locale: string): StandingLine {
  const with_ = `With ${trip.withWhom}`;
  if (trip.promisedOn === null) return { text: `${with_}; no day promised`, isAlert: false };
  const day = dateWords(trip.promisedOn, locale, on);
  const late = lateWords(trip.promisedOn, on);
  return late === ''
    ? { text: `${with_}, back ${day} (${farWords(trip.promisedOn, on)})`, isAlert: false }
    : { text: `${with_}, promised ${day}: ${late} late`, isAlert: true };
}

function dueLine(dueOn: CalendarDate, isFinished: boolean, on: CalendarDate, locale: string): StandingLine {
  const day = dateWords(dueOn, locale, on);
  if (isFinished) return { text: `Due ${day}`, isAlert: false };
  const late = lateWords(dueOn, on);
  if (late !== '') return { text: `Was due ${day}: ${late} late`, isAlert: true };
  return { text: `Due ${day} (${farWords(dueOn, on)})`, isAlert: daysBetween(on, dueOn) <= 3 };
}
