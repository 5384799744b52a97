import { firstDayOf, type StepChains } from './chains';
import { FARTHEST_DAY, type StepDates, type WorkSession } from './schedule';
import type { Run } from './list-schedule';
import { groupsOf } from './side-by-side';
import type { WorkCalendar } from './work-calendar';
import type { ProjectLoad, WorkshopLoad } from './workshop-load';

/** The first and the last work minute of a block. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** The span of each block over all its runs, which must be in order of time. */
export function spansOf(runs: readonly Run[]): ReadonlyMap<number, Span> {
  const spans = new Map<number, Span>();
  for (const { block, from, to } of runs) spans.set(block, { from: spans.get(block)?.from ?? from, to });
  return spans;
}

export interface Timing {
  readonly chains: StepChains;
  readonly calendar: WorkCalendar;
  readonly planned: ReadonlyMap<number, Span>;
  /** Without the blocks of projects that have no due day. */
  readonly latest: ReadonlyMap<number, Span>;
}

/** The days of a project's steps. `lastDay` is the last day on which it may be finished; null for none. */
export function stepDatesOf(
  { chains, calendar, planned, latest }: Timing,
  project: ProjectLoad,
  index: number,
  lastDay: number | null,
): readonly StepDates[] {
  const date = (day: number | null) => (day === null || day > FARTHEST_DAY ? null : calendar.dateOf(day));
  const spanIn = (spans: ReadonlyMap<number, Span>) => stepSpans(chains, index, spans);
  const days = plannedDays(project, calendar, spanIn(planned));
  const starts = lastDay === null ? [] : latestStarts(project, calendar, spanIn(latest), lastDay);
  return project.steps.map((step, place) => ({
    id: step.id,
    kind: step.kind,
    startOn: date(days[place]?.start ?? null),
    endOn: date(days[place]?.end ?? null),
    latestStartOn: date(starts[place] ?? null),
  }));
}

type SpanOfStep = ReadonlyMap<number, Span>;

function stepSpans(chains: StepChains, project: number, spans: ReadonlyMap<number, Span>): SpanOfStep {
  const own = new Map<number, Span>();
  for (let block = chains.firstBlock[project]!; block < chains.firstBlock[project + 1]!; block += 1) {
    const span = spans.get(block);
    if (span !== undefined) own.set(chains.stepOf[block]!, span);
  }
  return own;
}

/** A wait begins on the day on which the step before it ends, and a step of 0 minutes is done on that day. */
function plannedDays(
  project: ProjectLoad,
  calendar: WorkCalendar,
  spans: SpanOfStep,
): readonly { readonly start: number; readonly end: number }[] {
  const days = project.steps.map(() => ({ start: 0, end: 0 }));
  let over = firstDayOf(project, calendar);
  for (const group of groupsOf(project.steps)) {
    const ends = group.map((member) => {
      let at = over;
      for (const place of member) {
        const [step, span] = [project.steps[place], spans.get(place)];
        const start = span === undefined ? at : calendar.dayWhenBegun(span.from);
        if (step?.kind === 'wait') at += step.days;
        else if (span !== undefined) at = calendar.dayWhenDone(span.to);
        days[place] = { start, end: at };
      }
      return at;
    });
    over = Math.max(...ends);
  }
  return days;
}

/**
 * Counts back from the last day: a wait begins its number of days before the next step, and a step of 0 minutes is done on
 * the day of the next step.
 */
function latestStarts(
  project: ProjectLoad,
  calendar: WorkCalendar,
  spans: SpanOfStep,
  lastDay: number,
): readonly number[] {
  const starts = project.steps.map(() => 0);
  let over = lastDay;
  for (const group of groupsOf(project.steps).toReversed()) {
    const begins = group.map((member) => {
      let at = over;
      for (const place of member.toReversed()) {
        const [step, span] = [project.steps[place], spans.get(place)];
        if (step?.kind === 'wait') at -= step.days;
        else if (span !== undefined) at = calendar.dayWhenBegun(span.from);
        starts[place] = at;
      }
      return at;
    });
    over = Math.min(...begins);
  }
  return starts;
}

/** The work of every day, in order. */
export function sessionsOf(
  { chains, calendar }: Timing,
  load: WorkshopLoad,
  runs: readonly Run[],
): readonly WorkSession[] {
  const sessions: WorkSession[] = [];
  for (const { block, from, to } of runs) {
    for (let minute = from; minute < to;) {
      const day = calendar.dayWhenBegun(minute);
      if (day > FARTHEST_DAY) break;
      const until = Math.min(to, calendar.minutesBefore(day + 1));
      const { id: projectId } = load.projects[chains.projectOf[block]!]!;
      const step = chains.stepOf[block]!;
      sessions.push({ on: calendar.dateOf(day), projectId, step, minutes: until - minute });
      minute = until;
    }
  }
  return sessions;
}
