import { z } from 'zod';

/** Every record has an identifier of its own brand, so that a stage can never be passed where a project is asked for. */
export const projectId = z.uuid().brand('ProjectId');
export type ProjectId = z.infer<typeof projectId>;

export const stageId = z.uuid().brand('StageId');
export type StageId = z.infer<typeof stageId>;

export const checklistItemId = z.uuid().brand('ChecklistItemId');
export type ChecklistItemId = z.infer<typeof checklistItemId>;

export const stagePlanId = z.uuid().brand('StagePlanId');
export type StagePlanId = z.infer<typeof stagePlanId>;

export const calculationId = z.uuid().brand('CalculationId');
export type CalculationId = z.infer<typeof calculationId>;

export const photoId = z.uuid().brand('PhotoId');
export type PhotoId = z.infer<typeof photoId>;

export const tripId = z.uuid().brand('TripId');
export type TripId = z.infer<typeof tripId>;

export const fabricId = z.uuid().brand('FabricId');
export type FabricId = z.infer<typeof fabricId>;

export const fabricPieceId = z.uuid().brand('FabricPieceId');
export type FabricPieceId = z.infer<typeof fabricPieceId>;

export const ledgerEntryId = z.uuid().brand('LedgerEntryId');
export type LedgerEntryId = z.infer<typeof ledgerEntryId>;

export const changeId = z.uuid().brand('ChangeId');
export type ChangeId = z.infer<typeof changeId>;

export const bookingId = z.uuid().brand('BookingId');
export type BookingId = z.infer<typeof bookingId>;

export const contactId = z.uuid().brand('ContactId');
export type ContactId = z.infer<typeof contactId>;

export const tripEventId = z.uuid().brand('TripEventId');
export type TripEventId = z.infer<typeof tripEventId>;

/** Trips that went in one package share it. */
export const packageId = z.uuid().brand('PackageId');
export type PackageId = z.infer<typeof packageId>;

export const workId = z.uuid().brand('WorkId');
export type WorkId = z.infer<typeof workId>;

export const placeId = z.uuid().brand('PlaceId');
export type PlaceId = z.infer<typeof placeId>;

export const stashKindId = z.uuid().brand('StashKindId');
export type StashKindId = z.infer<typeof stashKindId>;

export const stashSearchId = z.uuid().brand('StashSearchId');
export type StashSearchId = z.infer<typeof stashSearchId>;

export const shoppingLineId = z.uuid().brand('ShoppingLineId');
export type ShoppingLineId = z.infer<typeof shoppingLineId>;
