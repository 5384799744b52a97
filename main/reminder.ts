import type { DayKind, DayToRemember } from '#core/calendar-file/day-to-remember';
import { addDays, type CalendarDate } from '#core/units/calendar-date';
import type { StoreClient } from './store/thread/store-client';

export interface Reminder {
  readonly title: string;
  readonly body: string;
}

const MOST_LINES = 4;

const WORDS: Readonly<Record<DayKind, string>> = {
  due: 'Due',
  'send-by': 'Last day to send out',
  back: 'Promised back',
};

/** The reminder for today's and tomorrow's days; null if there are none. */
export function reminderOf(days: readonly DayToRemember[], today: CalendarDate): Reminder | null {
  const tomorrow = addDays(today, 1);
  const near = days.filter(({ on }) => on === today || on === tomorrow);
  if (near.length === 0) return null;
  const lines = near.map(({ kind, on, projectName }) => {
    const when = on === today ? 'today' : 'tomorrow';
    return `${WORDS[kind]} ${when}: ${projectName}`;
  });
  const shown = lines.length > MOST_LINES ? lines.slice(0, MOST_LINES - 1) : lines;
  const more = lines.length - shown.length;
  return {
    title: near.some(({ on }) => on === today) ? 'Today in the workshop' : 'Tomorrow in the workshop',
    body: [...shown, ...(more > 0 ? [`And ${String(more)} more`] : [])].join('\n'),
  };
}

/** Today's reminder; null if there is none, or if reminders are off. */
export async function reminderFor(
  store: Pick<StoreClient, 'call'>,
  on: CalendarDate,
): Promise<Reminder | null> {
  const opening = await store.call('workshop:opening', {});
  if (!opening.ok || opening.value.isDemo || !opening.value.workshop.benchTime.remindsOfDays) return null;
  const days = await store.call('dates:days-to-remember', { on });
  return days.ok ? reminderOf(days.value, on) : null;
}
