import { describe, expect, it } from 'vitest';
import type { DayToRemember } from '#core/calendar-file/day-to-remember';
import { addDays, calendarDate } from '#core/units/calendar-date';
import type { StoreClient } from '#main/store/thread/store-client';
import { reminderFor, reminderOf } from '#main/reminder';
import { addProject, openWorkshop, type TestWorkshop, TODAY } from '#test/helpers/workshop';

const today = calendarDate('2027-12-31');
const day = (piece: string, on: string, kind: DayToRemember['kind'] = 'due'): DayToRemember => ({
  kind,
  of: piece,
  on: calendarDate(on),
  piece,
  who: '',
});

describe('a reminder on the desktop', () => {
  it('says what is near, today and tomorrow', () => {
    const days = [
      day('Past', '2027-12-30'),
      day('Frost round', '2027-12-31'),
      day('Kettle throw', '2028-01-01', 'send-by'),
      day('Lantern round', '2028-01-01', 'back'),
      day('Far', '2028-01-02'),
    ];
    expect(reminderOf(days, today)).toEqual({
      title: 'Today in the workshop',
      body: 'Due today: Frost round\nLast day to send out tomorrow: Kettle throw\nPromised back tomorrow: Lantern round',
    });
  });

  it('is none where nothing is near', () => {
    expect(reminderOf([day('Past', '2027-12-30'), day('Far', '2028-01-02')], today)).toBeNull();
  });

  it('counts what there is no room for', () => {
    const days = ['One', 'Two', 'Three', 'Four', 'Five'].map((piece) => day(piece, '2028-01-01'));
    expect(reminderOf(days, today)).toEqual({
      title: 'Tomorrow in the workshop',
      body: 'Due tomorrow: One\nDue tomorrow: Two\nDue tomorrow: Three\nAnd 2 more',
    });
  });
});

describe('whether to remind', () => {
  const clientOf = ({ ask }: TestWorkshop): Pick<StoreClient, 'call'> => ({
    call: (name, input) => Promise.resolve(ask(name, input)),
  });

  it('is said in the workshop, and not done unless it is', async () => {
    const workshop = openWorkshop();
    addProject(workshop, { name: 'Frost round', dueOn: addDays(TODAY, 1) });
    expect(await reminderFor(clientOf(workshop), TODAY)).toBeNull();
    const kept = workshop.get('workshop:opening', {}).workshop;
    const benchTime = { ...kept.benchTime, remindsOfDays: true };
    workshop.get('workshop:change', { workshop: { ...kept, benchTime } });
    expect(await reminderFor(clientOf(workshop), TODAY)).toEqual({
      title: 'Tomorrow in the workshop',
      body: 'Due tomorrow: Frost round',
    });
  });
});
