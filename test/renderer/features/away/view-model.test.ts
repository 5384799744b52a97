import { describe, expect, it } from 'vitest';
import type { Contact, ContactTrip } from '#core/contract/contacts';
import { nameAlone } from '#core/domain/contact';
import { contactId, packageId } from '#core/domain/ids';
import { calendarDate } from '#core/units/calendar-date';
import { awaySummary, packagesAway } from '#renderer/features/away/view-model';
import { glance, trip } from '#test/helpers/glances';

const ON = calendarDate('2027-09-12');
const uuid = (end: string) => `00000000-0000-4000-9000-${end.padStart(12, '0')}`;

function journey(sentPackage: string, days: Parameters<typeof trip>[0], sentOn = '2027-09-01'): ContactTrip {
  const [first] = glance({ stages: ['out'], trip: trip(days) }).trips;
  return {
    ...first!,
    sentOn: calendarDate(sentOn),
    packageId: packageId.parse(uuid(sentPackage)),
    projectName: `Piece of ${sentPackage}`,
    stageName: 'Quilting',
    stageState: 'out',
  };
}

const contact = (name: string, trips: readonly ContactTrip[]): Contact => ({
  id: contactId.parse(uuid(String(name.length))),
  details: nameAlone(name, 'longarm'),
  trips,
});

describe('what is out', () => {
  it('stands by packages, those to ask after first and then by the promised day; what is back is not among them', () => {
    const contacts = [
      contact('Tansy', [
        journey('1', { promisedOn: '2027-10-20' }),
        journey('2', { promisedOn: '2027-09-10' }),
        journey('2', { promisedOn: '2027-09-10' }),
      ]),
      contact('Corvin', [journey('3', { promisedOn: '2027-10-01' }), journey('4', { backOn: '2027-09-05' })]),
      contact('Silent one', [journey('5', {}, '2027-08-01')]),
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
    expect(awaySummary(packages)).toBe('5 pieces away with 3 contacts, 2 to ask after');
  });

  it('is said plainly when it is nothing', () => {
    expect(awaySummary(packagesAway([contact('Tansy', [])], ON, 21))).toBe(
      'Nothing is away: every piece is in the house.',
    );
  });
});
