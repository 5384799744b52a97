import { Notification } from 'electron';
import type { CalendarDate } from '#core/units/calendar-date';
import { type Reminder, reminderOf } from './reminder-words';
import type { Session } from './session';
import { systemSurroundings } from './store/surroundings';

const HOUR = 60 * 60 * 1000;

/** Looks once an hour; says what is near once a day, if the maker wants to be reminded and it is her own workshop. */
export function remindOfDays(session: Session): void {
  const { today } = systemSurroundings();
  let told: CalendarDate | null = null;
  const look = async (): Promise<void> => {
    const on = today();
    if (told === on) return;
    const reminder = await reminderFor(session, on);
    if (reminder === null || !Notification.isSupported()) return;
    told = on;
    new Notification(reminder).show();
  };
  void look();
  setInterval(() => void look(), HOUR);
}

/** What is to be said today; null where nothing is, or where nobody wants to hear it. */
export async function reminderFor(
  session: Pick<Session, 'store'>,
  on: CalendarDate,
): Promise<Reminder | null> {
  const store = session.store();
  const opening = await store.call('workshop:opening', {});
  if (!opening.ok || opening.value.isDemo || !opening.value.workshop.benchTime.remindsOfDays) return null;
  const days = await store.call('dates:remember', { on });
  return days.ok ? reminderOf(days.value, on) : null;
}
