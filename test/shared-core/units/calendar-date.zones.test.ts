import { afterEach, expect, it } from 'vitest';
import { addDays, calendarDate, calendarDateParts, weekday } from '#core/units/calendar-date';

// The check is the platform's own calendar: Intl and local midnights in five time zones. A process can change its zone, a thread
// of it cannot, so these tests stand in a file that mutation testing, which runs in threads, leaves out.
const initialZone = process.env['TZ'];
afterEach(() => {
  if (initialZone === undefined) delete process.env['TZ'];
  else process.env['TZ'] = initialZone;
});

it.each(['Pacific/Auckland', 'America/New_York', 'Europe/Berlin', 'Asia/Kolkata', 'Pacific/Apia'])(
  'does not depend on where it runs: %s',
  (zone) => {
    process.env['TZ'] = zone;
    const named = new Intl.DateTimeFormat('en-CA', {
      timeZone: zone,
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
    });
    let date = calendarDate('2007-01-01');
    for (let day = 0; day < 25 * 365; day += 1) {
      const { year, month, day: dayOfMonth } = calendarDateParts(date);
      const noon = new Date(year, month - 1, dayOfMonth, 12);
      const isSkippedHere = noon.getDate() !== dayOfMonth;
      if (!isSkippedHere && named.format(noon) !== date)
        expect.fail(`${date} is ${named.format(noon)} in ${zone}`);
      if (!isSkippedHere && noon.getDay() !== weekday(date) % 7) expect.fail(date);
      date = addDays(date, 1);
    }
  },
);
