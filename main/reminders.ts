import { Notification } from 'electron';
import type { CalendarDate } from '#core/units/calendar-date';
import { reminderFor } from './reminder';
import type { Session } from './session';
import { systemClockAndIds } from './store/base/clock-and-ids';

const HOUR = 60 * 60 * 1000;

/**
 * Checks once an hour for days that are near, and shows one reminder a day if the maker turned reminders on. The demo has none.
 * Returns a function that checks at once.
 */
export function startReminders(session: Session): () => void {
  const { today } = systemClockAndIds();
  let shownOn: CalendarDate | null = null;
  const check = async (): Promise<void> => {
    const on = today();
    if (shownOn === on) return;
    const reminder = await reminderFor(session.store(), on);
    if (reminder === null || !Notification.isSupported()) return;
    shownOn = on;
    new Notification(reminder).show();
  };
  const checkNow = () => void check();
  checkNow();
  setInterval(checkNow, HOUR);
  return checkNow;
}
