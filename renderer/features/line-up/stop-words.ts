import type { CalendarDate } from '#core/units/calendar-date';
import { dateWords } from '#renderer/text/dates';
import type { ProjectStatus } from '#renderer/text/project-status';
import { STAGE_STATE_WORDS } from '#renderer/text/stage-words';
import type { Stop } from './stage-line';

interface When {
  readonly locale: string;
  readonly on: CalendarDate;
}

/** The name of a stop: its stage, or "Finished". */
export function stopName(stop: Stop | undefined): string {
  return stop?.name ?? 'Finished';
}

/** Where the needle is, for a screen reader: `Stage 3 of 6, Quilting, at Pell since Oct 3`. */
export function needleWords(
  stops: readonly Stop[],
  index: number,
  status: ProjectStatus,
  when: When,
): string {
  const stage = stops[index] ?? null;
  const stageCount = stops.length - 1;
  if (stage === null)
    return stageCount === 0 ? 'No stages' : `Finished, ${String(stageCount)} of ${String(stageCount)} stages`;
  const place = `Stage ${String(index + 1)} of ${String(stageCount)}, ${stage.name}`;
  const isHere = stage.id === status.now?.id;
  return isHere ? `${place}, ${hereWords(status, when)}` : place;
}

function hereWords({ now, trip }: ProjectStatus, { locale, on }: When): string {
  if (now === null) return '';
  if (trip !== null) {
    const since = trip.sentOn === null ? '' : ` since ${dateWords(trip.sentOn, locale, on)}`;
    return `at ${trip.withWhom}${since}`;
  }
  return now.heldUpBy === '' ? STAGE_STATE_WORDS[now.state] : `waiting: ${now.heldUpBy}`;
}
