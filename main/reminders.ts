import { Notification } from 'electron';
import type { CalendarDate } from '#core/units/calendar-date';
import { reminderFor } from './reminder';
import type { Session } from './session';
import { systemSurroundings } from './store/base/clock-and-ids';

const HOUR = 60 * 60 * 1000;

/**
 * Looks once an hour, and when it is told to; says what is near once a day, if the maker wants to be reminded and it is her
 * own workshop. Answers with how to tell it to look.
 */
export function remindOfDays(session: Session): () => void {
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
  const lookNow = () => void look();
  lookNow();
  setInterval(lookNow, HOUR);
  return lookNow;
}
