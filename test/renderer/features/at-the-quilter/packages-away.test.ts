import { describe, expect, it } from 'vitest';
import type { Contact, ContactTrip } from '#core/contract/contacts';
import { nameAlone } from '#core/domain/contact';
import { contactIdSchema, packageIdSchema } from '#core/domain/ids';
import { calendarDate } from '#core/units/calendar-date';
import { awaySummary, packagesAway } from '#renderer/features/at-the-quilter/packages-away';
import { glance, trip } from '#test/helpers/glances';

const ON = calendarDate('2027-09-12');
const uuid = (end: string) => `00000000-0000-4000-9000-${end.padStart(12, '0')}`;

function tripOf(sentPackage: string, days: Parameters<typeof trip>[0], sentOn = '2027-09-01'): ContactTrip {
  const [first] = glance({ stages: ['out'], trip: trip(days) }).trips;
  return {
    ...first!,
    sentOn: calendarDate(sentOn),
    packageId: packageIdSchema.parse(uuid(sentPackage)),
    projectName: `Project of ${sentPackage}`,
    stageName: 'Quilting',
    stageState: 'out',
  };
}

const contact = (name: string, trips: readonly ContactTrip[]): Contact => ({
  id: contactIdSchema.parse(uuid(String(name.length))),
  details: nameAlone(name, 'longarm'),
  trips,
});

describe('packages at a quilter', () => {
  it('are listed with those to check on first, then by promised day, without what is back', () => {
    const contacts = [
      contact('Tansy', [
        tripOf('1', { promisedOn: '2027-10-20' }),
        tripOf('2', { promisedOn: '2027-09-10' }),
        tripOf('2', { promisedOn: '2027-09-10' }),
      ]),
      contact('Corvin', [tripOf('3', { promisedOn: '2027-10-01' }), tripOf('4', { backOn: '2027-09-05' })]),
      contact('Silent one', [tripOf('5', {}, '2027-08-01')]),
    ];
    const packages = packagesAway(contacts, ON, 21);
    expect(packages.map(({ contact: { details }, trips, ask }) => [details.name, trips.length, ask])).toEqual(
      [
        ['Silent one', 1, { why: 'silent', days: 42 }],
        ['Tansy', 2, { why: 'overdue', days: 2 }],
        ['Corvin', 1, null],
        ['Tansy', 1, null],
      ],
    );
    expect(awaySummary(packages)).toBe('5 projects at 3 contacts, 2 to check on');
  });

  it('have a plain sentence for none', () => {
    expect(awaySummary(packagesAway([contact('Tansy', [])], ON, 21))).toBe(
      'Nothing is sent out: every project is at home.',
    );
  });
});
