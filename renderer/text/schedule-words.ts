import type { DateFixes, PlannedDates, TriedProject } from '#core/contract/dates';
import type { Stage } from '#core/domain/stage';
import type { ProjectChance, ProjectDates, StepDates } from '#core/planner/schedule';
import { type CalendarDate, daysBetween } from '#core/units/calendar-date';
import { formatMinutes } from '#core/units/minutes';
import { daysWords, weekdayWords } from './dates';
import { andList } from './field-problems';
import type { StatusLine } from './project-status';

/** The reader's language and today. */
interface When {
  readonly locale: string;
  readonly on: CalendarDate;
}

/** What the schedule says of one project: by when its next step must start, when it will be done, and whether that is late. */
export function scheduleLines(
  dates: ProjectDates,
  stages: readonly Pick<Stage, 'id' | 'state'>[],
  { locale, on }: When,
): readonly StatusLine[] {
  const isLate = (dates.lateDays ?? 0) > 0;
  const day = (date: CalendarDate) => weekdayWords(date, locale, on);
  const lines: StatusLine[] = [];
  const byWhen = isLate ? null : nextDeadline(dates.steps, stages);
  if (byWhen !== null) {
    const isNow = byWhen.by <= on;
    const when = isNow ? 'today' : `by ${day(byWhen.by)}`;
    const daysLeft = daysBetween(on, byWhen.by);
    const spare = daysLeft > 0 ? `${daysWords(daysLeft)} to spare` : 'no time to spare';
    lines.push({ text: `${byWhen.verb} ${when} (${spare})`, isAlert: isNow });
  }
  const finish =
    dates.finishOn === null ? 'No sewing time set, so no finish date' : `Will be done ${day(dates.finishOn)}`;
  const late = isLate ? `, ${daysWords(dates.lateDays ?? 0)} late` : '';
  lines.push({ text: `${finish}${late}`, isAlert: isLate });
  return lines;
}

interface Deadline {
  readonly verb: string;
  readonly by: CalendarDate;
}

/** The next deadline: to have the project back, to start it, or, once it is in progress, to send it out or keep going. */
function nextDeadline(
  steps: readonly StepDates[],
  stages: readonly Pick<Stage, 'id' | 'state'>[],
): Deadline | null {
  const isInHand = stages.some(({ state }) => state === 'in-hand');
  const [first] = steps;
  if (first?.kind === 'wait') {
    const back = steps[1]?.latestStartOn ?? null;
    return back === null ? null : { verb: 'Needed back', by: back };
  }
  if (first === undefined) return null;
  const sending = steps.find(({ kind }) => kind === 'wait')?.latestStartOn ?? null;
  if (isInHand && sending !== null) return { verb: 'Send out', by: sending };
  const verb = isInHand ? 'Keep going' : 'Start';
  return first.latestStartOn === null ? null : { verb, by: first.latestStartOn };
}

/** Whether one project gets done in time, in a sentence: by which day, and how long before or after it is due. */
export function inTimeWords({ finishOn, lateDays }: ProjectDates, { locale, on }: When): string {
  if (finishOn === null) return 'No sewing time is set on the Workshop page, so there is no finish date.';
  const done = `done by ${weekdayWords(finishOn, locale, on)}`;
  if (lateDays === null) return `It will be ${done}.`;
  if (lateDays > 0) return `Late: ${done}, ${daysWords(lateDays)} after it is due.`;
  return lateDays === 0
    ? `Just in time: ${done}, the day it is due.`
    : `In time: ${done}, ${daysWords(-lateDays)} before it is due.`;
}

/** Cases in ten from which on a date is called nearly sure, and below which nearly out of reach. */
const NEARLY = 9.5;

/**
 * How sure the date of one project is, in short sentences: in how many of ten cases it is in time, the day by which it is nearly sure, where
 * the doubt comes from and the last day to send it out. `stageName` is the name of its doubtful stage.
 */
export function chanceWords(
  chance: ProjectChance,
  stageName: string | undefined,
  { locale, on }: When,
): readonly string[] {
  const { inTime, nearlySureBy, sendBy, isLearned } = chance;
  const day = (date: CalendarDate) => weekdayWords(date, locale, on);
  const isSure = inTime !== null && 10 * inTime >= NEARLY;
  return [
    ...(inTime === null ? [] : [`How sure? ${casesWords(10 * inTime)}.`]),
    ...(isSure || nearlySureBy === null ? [] : [`By ${day(nearlySureBy)} it is done in 9 of 10 cases.`]),
    ...(isSure || stageName === undefined ? [] : [`Most of the doubt is in “${stageName}”.`]),
    ...(sendBy === null || sendBy < on || isSure
      ? []
      : [`Sent out by ${day(sendBy)}, it is in time in 9 of 10 cases.`]),
    ...(isLearned ? [] : ['This goes by usual delays until three of your own are known.']),
  ];
}

function casesWords(ofTen: number): string {
  if (ofTen >= NEARLY) return 'In time in nearly every case';
  if (ofTen <= 10 - NEARLY) return 'In time in hardly any case';
  return `In time in about ${String(Math.round(ofTen))} of 10 cases`;
}

/** What would help one project that is not started yet, one sentence each. */
export function triedFixWords(
  { dates, fixes }: Pick<TriedProject, 'dates' | 'fixes'>,
  { locale, on }: When,
): readonly string[] {
  if (fixes === null) return [];
  const { beyondHours, extraWeekMinutes } = fixes;
  const sentences: string[] = [];
  if (beyondHours.includes(dates.id)) {
    sentences.push('More sewing time won’t help: the quilter needs longer than the time that is left.');
  } else if (extraWeekMinutes !== null && extraWeekMinutes > 0) {
    sentences.push(`${formatMinutes(extraWeekMinutes)} more sewing time a week would be enough.`);
  }
  if (dates.finishOn !== null)
    sentences.push(`It can be promised for ${weekdayWords(dates.finishOn, locale, on)} or later.`);
  return sentences;
}

/** The open projects that a new one would make late, in one sentence; empty without any. */
export function madeLaterWords(madeLater: TriedProject['madeLater']): string {
  const [first, ...rest] = madeLater.toSorted((one, other) => other.lateDays - one.lateDays);
  if (first === undefined) return '';
  const most = `“${first.name}” would be ${daysWords(first.lateDays)} late with it`;
  if (rest.length === 0) return `${most}.`;
  const others = rest.length === 1 ? 'another project' : `${String(rest.length)} other projects`;
  return `${most}, and ${others} too.`;
}

/** One line for the whole workshop: whether everything gets done on time. Empty if no project has a due date. */
export function scheduleWords({ plan }: Pick<PlannedDates, 'plan'>, nameOf: (id: string) => string): string {
  const dated = plan.projects.filter(({ lateDays }) => lateDays !== null);
  const late = dated.filter(({ lateDays }) => (lateDays ?? 0) > 0);
  if (dated.length === 0) return '';
  const [only] = late;
  if (only === undefined) return 'By this schedule, everything gets done on time.';
  const most = daysWords(plan.largestLateDays ?? 0);
  if (late.length === 1)
    return `Not everything gets done on time: “${nameOf(only.id)}” will be ${most} late.`;
  return `Not everything gets done on time: ${String(late.length)} projects will be late, one by ${most}.`;
}

/** A longer list names the first ones and counts the others. */
const MOST_NAMED = 3;

function fewNames(names: readonly string[]): string {
  if (names.length <= MOST_NAMED) return andList(names);
  const named = names.slice(0, MOST_NAMED - 1);
  return andList([...named, `${String(names.length - named.length)} others`]);
}

/** What would get everything done on time, one sentence each. */
export function dateFixWords(
  { extraWeekMinutes, beyondHours, moved }: DateFixes,
  nameOf: (id: string) => string,
  { locale, on }: When,
): readonly string[] {
  const sentences: string[] = [];
  const others = beyondHours.length > 0 ? ' for the others' : '';
  if (extraWeekMinutes !== null && extraWeekMinutes > 0) {
    sentences.push(`${formatMinutes(extraWeekMinutes)} more sewing time a week would be enough${others}.`);
  }
  if (beyondHours.length > 0) {
    const names = fewNames(beyondHours.map((id) => `“${nameOf(id)}”`));
    sentences.push(
      `More sewing time won’t help ${names}: the quilter needs longer than the time that is left.`,
    );
  }
  const move = sentences.length > 0 && beyondHours.length === 0 ? 'Or move' : 'Move';
  const days = moved.map(({ id, dueOn }) => `“${nameOf(id)}” to ${weekdayWords(dueOn, locale, on)}`);
  if (days.length > MOST_NAMED) {
    sentences.push(`${move} the due dates of ${String(days.length)} projects to the days they will be done.`);
  } else if (days.length > 0) sentences.push(`${move} ${andList(days)}, and everything is on time.`);
  return sentences;
}
