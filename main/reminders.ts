import { Notification } from 'electron';
import type { CalendarDate } from '#core/units/calendar-date';
import { reminderFor } from './reminder';
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
    const reminder = await reminderFor(session.store(), on);
    if (reminder === null || !Notification.isSupported()) return;
    told = on;
    new Notification(reminder).show();
  };
  void look();
  setInterval(() => void look(), HOUR);
}
