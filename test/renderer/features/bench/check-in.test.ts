import { expect, it } from 'vitest';
import { calendarDate } from '#core/units/calendar-date';
import { packagesToCheckOn } from '#renderer/features/bench/check-in';
import { glance, trip } from '#test/helpers/glances';

const ON = calendarDate('2027-09-12');

it('only pieces that are out are asked after, one entry a package with all its pieces, the longest wait first', () => {
  const late = glance({ name: 'Late', stages: ['out'], trip: trip({ promisedOn: '2027-09-10' }) });
  const later = glance({ name: 'Later', stages: ['out'], trip: trip({ promisedOn: '2027-09-01' }) });
  const beside = {
    ...glance({ name: 'Beside it', stages: ['out'], trip: trip({ promisedOn: '2027-09-10' }) }),
  };
  const together = {
    ...beside,
    trips: beside.trips.map((one) => ({ ...one, packageId: late.trips[0]!.packageId })),
  };
  const home = glance({ name: 'At home', stages: ['in-hand'], trip: trip({ promisedOn: '2027-09-01' }) });
  const onTime = glance({ name: 'On time', stages: ['out'], trip: trip({ promisedOn: '2027-10-01' }) });
  const apart = (one: typeof late, end: string) => ({
    ...one,
    trips: one.trips.map((journey) => ({
      ...journey,
      packageId: `00000000-0000-4000-9000-00000000000${end}` as never,
    })),
  });
  const asked = packagesToCheckOn(
    [late, apart(later, '1'), together, apart(home, '2'), apart(onTime, '3')],
    21,
    ON,
  );
  expect(asked.map(({ pieces, reason }) => [pieces, reason.days])).toEqual([
    [['Later'], 11],
    [['Late', 'Beside it'], 2],
  ]);
});
