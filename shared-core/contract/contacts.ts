import { z } from 'zod';
import { type ContactDetails, contactDetails } from '#core/domain/contact';
import { contactId, type ContactId } from '#core/domain/ids';
import type { StageState } from '#core/domain/stage';
import { reads, writes } from './channel';
import type { Changed, Trip } from './projects';

/** A trip as it stands with a contact: which piece it was, and for which stage. */
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
  /** Keeps a new contact where no id is given, else changes the one with that id; two may not share a name. */
  'contact:keep': writes<Changed & { readonly contactId: ContactId }>()(
    z.object({ contactId: contactId.nullable(), details: contactDetails }),
  ),
  /** Refused while a trip names them. */
  'contact:remove': writes<Changed>()(z.object({ contactId })),
};
