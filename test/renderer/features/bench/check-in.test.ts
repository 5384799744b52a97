import { expect, it } from 'vitest';
import { calendarDate } from '#core/units/calendar-date';
import { packagesToCheckOn } from '#renderer/features/bench/check-in';
import { glance, trip } from '#test/helpers/glances';

const ON = calendarDate('2027-09-12');

it('checks in only on projects at the quilter, one entry for each package with all its projects, the longest wait first', () => {
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
    trips: one.trips.map((made) => ({
      ...made,
      packageId: `00000000-0000-4000-9000-00000000000${end}` as never,
    })),
  });
  const packages = packagesToCheckOn(
    [late, apart(later, '1'), together, apart(home, '2'), apart(onTime, '3')],
    21,
    ON,
  );
  expect(packages.map(({ projects, reason }) => [projects, reason.days])).toEqual([
    [['Later'], 11],
    [['Late', 'Beside it'], 2],
  ]);
});
