import { describe, expect, it } from 'vitest';
import type { DayToRemember } from '#core/calendar-file/day-to-remember';
import { addDays, calendarDate } from '#core/units/calendar-date';
import type { StoreClient } from '#main/store/thread/store-client';
import { reminderFor, reminderOf } from '#main/reminder';
import { addProject, openWorkshop, type TestWorkshop, TODAY } from '#test/helpers/workshop';

const today = calendarDate('2027-12-31');
const day = (projectName: string, on: string, kind: DayToRemember['kind'] = 'due'): DayToRemember => ({
  kind,
  ownerId: projectName,
  on: calendarDate(on),
  projectName,
  who: '',
});

describe('a reminder on the desktop', () => {
  it('names what is due or expected today and tomorrow', () => {
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

  it('is not shown when nothing is near', () => {
    expect(reminderOf([day('Past', '2027-12-30'), day('Far', '2028-01-02')], today)).toBeNull();
  });

  it('counts the lines that do not fit', () => {
    const days = ['One', 'Two', 'Three', 'Four', 'Five'].map((projectName) => day(projectName, '2028-01-01'));
    expect(reminderOf(days, today)).toEqual({
      title: 'Tomorrow in the workshop',
      body: 'Due tomorrow: One\nDue tomorrow: Two\nDue tomorrow: Three\nAnd 2 more',
    });
  });
});

describe('reminders', () => {
  const clientOf = ({ ask }: TestWorkshop): Pick<StoreClient, 'call'> => ({
    call: (name, input) => Promise.resolve(ask(name, input)),
  });

  it('are shown only when they are turned on for the workshop', async () => {
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
