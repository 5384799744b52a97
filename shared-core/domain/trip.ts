import { z } from 'zod';
import { type CalendarDate, daysBetween } from '#core/units/calendar-date';
import { contactNameSchema } from './contact';
import { calendarDateSchema } from './dates';
import type { TripEventId } from './ids';
import type { StageState } from './stage';

const few = z.string().trim().max(120);
const price = z.int().min(0).max(100_000_000).nullable();

/**
 * One trip of a project out of the house and back, as the maker enters it. `withWhom` is the name of a contact; a new name
 * becomes a new contact.
 */
export const tripDetailsSchema = z
  .object({
    withWhom: contactNameSchema,
    sentOn: calendarDateSchema.nullable(),
    promisedOn: calendarDateSchema.nullable(),
    backOn: calendarDateSchema.nullable(),
    trackingNumber: few,
    backing: few,
    batting: few,
    thread: few,
    patternName: few,
    /** What else was in the package. */
    sentAlong: z.string().trim().max(500),
    askedFor: z.string().trim().max(1_000),
    priceAskedMinor: price,
    /** The price paid. */
    priceMinor: price,
  })
  .readonly()
  .refine((trip) => trip.backOn === null || trip.sentOn === null || trip.backOn >= trip.sentOn, {
    path: ['backOn'],
    message: 'Back before it was sent',
  });
export type TripDetails = z.infer<typeof tripDetailsSchema>;

/** A trip with nothing but the contact filled in. */
export function tripWith(withWhom: string): TripDetails {
  return {
    withWhom,
    sentOn: null,
    promisedOn: null,
    backOn: null,
    trackingNumber: '',
    backing: '',
    batting: '',
    thread: '',
    patternName: '',
    sentAlong: '',
    askedFor: '',
    priceAskedMinor: null,
    priceMinor: null,
  };
}

/** What happens between sending and receiving. `heard` is any other update. */
export const tripEventKindSchema = z.enum([
  'packed',
  'arrived',
  'on-the-frame',
  'ready',
  'sent-back',
  'heard',
]);
export type TripEventKind = z.infer<typeof tripEventKindSchema>;

export interface TripEvent {
  readonly id: TripEventId;
  readonly kind: TripEventKind;
  readonly on: CalendarDate;
  readonly note: string;
}

/** A line of the packing list. */
const packingLineSchema = z
  .object({ text: z.string().trim().min(1).max(200), isPacked: z.boolean() })
  .readonly();
export type PackingLine = z.infer<typeof packingLineSchema>;

export const packingListSchema = z.array(packingLineSchema).max(40).readonly();

/** What goes into a package to a longarm quilter (common practice). */
export const STARTING_PACKING: readonly PackingLine[] = [
  'Top, pressed, not washed, threads clipped, its upper edge marked with a safety pin or note',
  'No buttons, beads or thick embroidery on the top yet',
  'Backing, squared and pressed, seams open or as agreed',
  'Batting, or a word that the quilter has it',
  'Pattern and thread written on paper',
  'Straight pins and needles taken out and counted; layers folded each by itself',
  'All of it free of pet hair and smoke',
  'Name, address and phone inside the package',
].map((text) => ({ text, isPacked: false }));

/** Booked with a contact, but the project has not been sent yet. */
export function isBookedAhead(
  { sentOn, backOn }: Pick<TripDetails, 'sentOn' | 'backOn'>,
  stage: StageState,
): boolean {
  return sentOn === null && backOn === null && (stage === 'planned' || stage === 'in-hand');
}

/** Whether the days of a trip contradict each other. */
export function isPromisedBeforeSent({
  sentOn,
  promisedOn,
}: Pick<TripDetails, 'sentOn' | 'promisedOn'>): boolean {
  return sentOn !== null && promisedOn !== null && promisedOn < sentOn;
}

type Away = Pick<TripDetails, 'sentOn' | 'promisedOn' | 'backOn'> & { readonly events: readonly TripEvent[] };

/** The day of the last update on a project that is away, its sending included; null when no day is known. */
export function lastUpdateOn({ sentOn, events }: Away): CalendarDate | null {
  const days = [sentOn, ...events.map(({ on }) => on)].filter((day) => day !== null);
  return days.toSorted().at(-1) ?? null;
}

/** overdue: the promised day is past; silent: no update for longer than `silentDays`. */
export type CheckInReason =
  { readonly why: 'overdue'; readonly days: number } | { readonly why: 'silent'; readonly days: number };

/** Why to check on a project that is away; null when there is no reason to. */
export function reasonToCheckIn(trip: Away, on: CalendarDate, silentDays: number): CheckInReason | null {
  if (trip.backOn !== null) return null;
  if (trip.promisedOn !== null && trip.promisedOn < on) {
    return { why: 'overdue', days: daysBetween(trip.promisedOn, on) };
  }
  const last = lastUpdateOn(trip);
  const quiet = last === null ? 0 : daysBetween(last, on);
  return quiet > silentDays ? { why: 'silent', days: quiet } : null;
}
