import { type ContactDetails, nameAlone } from '#core/domain/contact';

/** The two hired longarm quilters of the demo. */
export const TALLOWMERE = 'Pell Tallowmere, longarm';
export const LATHE = 'Corvin Lathe, longarm';

/** The contacts of the demo workshop. Everybody is invented; money is in cents. */
export const DEMO_CONTACTS: readonly ContactDetails[] = [
  {
    ...nameAlone(TALLOWMERE, 'longarm'),
    reach: 'Behind the lime kiln; packages only on Tuesdays',
    rateMinor: 2.6,
    minimumMinor: 7_500,
    lines: [
      { by: 'flat', name: 'Thread', amount: 600 },
      { by: 'flat', name: 'Shipping', amount: 900 },
    ],
    promisedDays: 30,
    notes: 'Knows ring-shaped tops. Needs the top edge marked on the backing too.',
  },
  {
    ...nameAlone(LATHE, 'longarm'),
    reach: 'Upstairs at the old creamery',
    rateMinor: 2.1,
    minimumMinor: 6_000,
    lines: [{ by: 'percent', name: 'Rush', percent: 0, of: 'quilting' }],
    promisedDays: 21,
  },
  { ...nameAlone('Wenna Strand, frames', 'other'), reach: 'Market row', promisedDays: 14 },
];
