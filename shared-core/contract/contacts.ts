import { z } from 'zod';
import { type ContactDetails, contactDetailsSchema } from '#core/domain/contact';
import { contactIdSchema, type ContactId } from '#core/domain/ids';
import type { StageState } from '#core/domain/stage';
import { reads, writes } from './channel';
import type { Changed, Trip } from './projects';

/** A trip as the page of its contact shows it. */
export interface ContactTrip extends Trip {
  readonly projectName: string;
  readonly stageName: string;
  readonly stageState: StageState;
}

export interface Contact {
  readonly id: ContactId;
  readonly details: ContactDetails;
  /** Every trip to them, the latest first. */
  readonly trips: readonly ContactTrip[];
}

export const contactChannels = {
  /** By name. */
  'contact:list': reads<readonly Contact[]>()(z.object({})),
  /** Saves a contact: without an id a new one. Two contacts cannot share a name. */
  'contact:save': writes<Changed & { readonly contactId: ContactId }>()(
    z.object({ contactId: contactIdSchema.nullable(), details: contactDetailsSchema }),
  ),
  /** Refused while a trip refers to the contact. */
  'contact:delete': writes<Changed>()(z.object({ contactId: contactIdSchema })),
};
