import { describe, expect, it } from 'vitest';
import { tripEventIdSchema } from '#core/domain/ids';
import { reasonToCheckIn, lastUpdateOn, type TripEvent, tripWith } from '#core/domain/trip';
import { calendarDate } from '#core/units/calendar-date';

const day = calendarDate;
const word = (on: string): TripEvent => ({
  id: tripEventIdSchema.parse('00000000-0000-4000-8000-000000000001'),
  kind: 'heard',
  on: day(on),
  note: '',
});
const away = { ...tripWith('Tansy Quill'), sentOn: day('2027-03-01'), events: [] };

describe('a piece that is away', () => {
  it('was last heard of when it was sent, or on the latest day of a word, in whatever order they were written', () => {
    expect(lastUpdateOn(away)).toBe('2027-03-01');
    expect(lastUpdateOn({ ...away, events: [word('2027-03-20'), word('2027-03-04')] })).toBe('2027-03-20');
    expect(lastUpdateOn({ ...away, sentOn: null })).toBeNull();
  });

  it('is asked after from the day after the one promised', () => {
    const promised = { ...away, promisedOn: day('2027-03-10') };
    expect(reasonToCheckIn(promised, day('2027-03-10'), 21)).toBeNull();
    expect(reasonToCheckIn(promised, day('2027-03-11'), 21)).toEqual({ why: 'overdue', days: 1 });
    expect(reasonToCheckIn({ ...promised, backOn: day('2027-03-12') }, day('2027-03-20'), 21)).toBeNull();
  });

  it('is asked after when it was silent for longer than the setting allows, and not once something was heard', () => {
    expect(reasonToCheckIn(away, day('2027-03-22'), 21)).toBeNull();
    expect(reasonToCheckIn(away, day('2027-03-23'), 21)).toEqual({ why: 'silent', days: 22 });
    expect(reasonToCheckIn({ ...away, events: [word('2027-03-20')] }, day('2027-03-23'), 21)).toBeNull();
    expect(reasonToCheckIn({ ...away, sentOn: null }, day('2027-12-31'), 21)).toBeNull();
  });
});
