import type { DateFixes, PlannedDates } from '#core/contract/dates';
import type { Stage } from '#core/domain/stage';
import type { ProjectDates, StepDates } from '#core/planner/schedule';
import { type CalendarDate, daysBetween } from '#core/units/calendar-date';
import { formatMinutes } from '#core/units/minutes';
import { daysWords, weekdayWords } from './dates';
import { andList } from './field-problems';
import type { StatusLine } from './project-status';

/** Where and when words are said. */
interface Saying {
  readonly locale: string;
  readonly on: CalendarDate;
}

/** What the plan says of one piece: by when its next step must be begun or sent, when it will be done, and how that fits its day. */
export function scheduleLines(
  dates: ProjectDates,
  stages: readonly Pick<Stage, 'id' | 'state'>[],
  { locale, on }: Saying,
): readonly StatusLine[] {
  const isLate = (dates.lateDays ?? 0) > 0;
  const day = (date: CalendarDate) => weekdayWords(date, locale, on);
  const lines: StatusLine[] = [];
  const byWhen = isLate ? null : nextDeadline(dates.steps, stages);
  if (byWhen !== null) {
    const isNow = byWhen.by <= on;
    const when = isNow ? 'today' : `by ${day(byWhen.by)}`;
    const slack = daysBetween(on, byWhen.by);
    const spare = slack > 0 ? `${daysWords(slack)} of slack` : 'no slack';
    lines.push({ text: `${byWhen.verb} ${when} (${spare})`, isAlert: isNow });
  }
  const finish =
    dates.finishOn === null ? 'No hours in which it could be done' : `Will be done ${day(dates.finishOn)}`;
  const late = isLate ? `, ${daysWords(dates.lateDays ?? 0)} late` : '';
  lines.push({ text: `${finish}${late}`, isAlert: isLate });
  return lines;
}

interface Deadline {
  readonly verb: string;
  readonly by: CalendarDate;
}

/** The next thing to keep to: back from where it is, begun, or, once it is in hand, sent out or gone on with. */
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
  const verb = isInHand ? 'Go on' : 'Start';
  return first.latestStartOn === null ? null : { verb, by: first.latestStartOn };
}

/** One line for the whole workshop: whether everything will be done in time. Empty where no piece has a day. */
export function scheduleWords({ plan }: Pick<PlannedDates, 'plan'>, nameOf: (id: string) => string): string {
  const dated = plan.projects.filter(({ lateDays }) => lateDays !== null);
  const late = dated.filter(({ lateDays }) => (lateDays ?? 0) > 0);
  if (dated.length === 0) return '';
  const [only] = late;
  if (only === undefined) return 'Everything will be done in time.';
  const most = daysWords(plan.largestLateDays ?? 0);
  if (late.length === 1)
    return `Not everything will be done in time: “${nameOf(only.id)}” will be ${most} late.`;
  return `Not everything will be done in time: ${String(late.length)} pieces will be late, the latest by ${most}.`;
}

/** More than these are counted. */
const MOST_NAMED = 3;

function fewNames(names: readonly string[]): string {
  if (names.length <= MOST_NAMED) return andList(names);
  const named = names.slice(0, MOST_NAMED - 1);
  return andList([...named, `${String(names.length - named.length)} others`]);
}

/** What would mend it, one sentence each; nothing where nothing would. */
export function dateFixWords(
  { extraWeekMinutes, beyondHours, moved }: DateFixes,
  nameOf: (id: string) => string,
  { locale, on }: Saying,
): readonly string[] {
  const sentences: string[] = [];
  const others = beyondHours.length > 0 ? ' for the others' : '';
  if (extraWeekMinutes !== null && extraWeekMinutes > 0) {
    sentences.push(`${formatMinutes(extraWeekMinutes)} more a week at the bench would do${others}.`);
  }
  if (beyondHours.length > 0) {
    const names = fewNames(beyondHours.map((id) => `“${nameOf(id)}”`));
    sentences.push(`No hours help ${names}: what is waited for takes longer than is left.`);
  }
  const move = sentences.length > 0 && beyondHours.length === 0 ? 'Or move' : 'Move';
  const days = moved.map(({ id, dueOn }) => `“${nameOf(id)}” to ${weekdayWords(dueOn, locale, on)}`);
  if (days.length > MOST_NAMED) {
    sentences.push(
      `${move} the due days of ${String(days.length)} pieces to the days on which they will be done.`,
    );
  } else if (days.length > 0) sentences.push(`${move} ${andList(days)}, and everything is in time.`);
  return sentences;
}
