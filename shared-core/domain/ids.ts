import { z } from 'zod';

/** Each kind of record has its own brand of id, so a stage's id cannot be passed where a project's is expected. */
export const projectIdSchema = z.uuid().brand('ProjectId');
export type ProjectId = z.infer<typeof projectIdSchema>;

export const stageIdSchema = z.uuid().brand('StageId');
export type StageId = z.infer<typeof stageIdSchema>;

export const checklistItemIdSchema = z.uuid().brand('ChecklistItemId');
export type ChecklistItemId = z.infer<typeof checklistItemIdSchema>;

export const stagePlanIdSchema = z.uuid().brand('StagePlanId');

export const calculationIdSchema = z.uuid().brand('CalculationId');
export type CalculationId = z.infer<typeof calculationIdSchema>;

export const photoIdSchema = z.uuid().brand('PhotoId');
export type PhotoId = z.infer<typeof photoIdSchema>;

export const tripIdSchema = z.uuid().brand('TripId');
export type TripId = z.infer<typeof tripIdSchema>;

export const fabricIdSchema = z.uuid().brand('FabricId');
export type FabricId = z.infer<typeof fabricIdSchema>;

export const fabricPieceIdSchema = z.uuid().brand('FabricPieceId');
export type FabricPieceId = z.infer<typeof fabricPieceIdSchema>;

/** Never sent by the page, so there is nothing to check. */
export type LedgerEntryId = string & z.$brand<'LedgerEntryId'>;

export const changeIdSchema = z.uuid().brand('ChangeId');
export type ChangeId = z.infer<typeof changeIdSchema>;

export const bookingIdSchema = z.uuid().brand('BookingId');
export type BookingId = z.infer<typeof bookingIdSchema>;

export const contactIdSchema = z.uuid().brand('ContactId');
export type ContactId = z.infer<typeof contactIdSchema>;

export const tripEventIdSchema = z.uuid().brand('TripEventId');
export type TripEventId = z.infer<typeof tripEventIdSchema>;

/** Trips in one package share it. */
export const packageIdSchema = z.uuid().brand('PackageId');
export type PackageId = z.infer<typeof packageIdSchema>;

export const workIdSchema = z.uuid().brand('WorkId');
export type WorkId = z.infer<typeof workIdSchema>;

export const placeIdSchema = z.uuid().brand('PlaceId');
export type PlaceId = z.infer<typeof placeIdSchema>;

export const stashKindIdSchema = z.uuid().brand('StashKindId');
export type StashKindId = z.infer<typeof stashKindIdSchema>;

export const stashSearchIdSchema = z.uuid().brand('StashSearchId');
export type StashSearchId = z.infer<typeof stashSearchIdSchema>;

export const shoppingLineIdSchema = z.uuid().brand('ShoppingLineId');
export type ShoppingLineId = z.infer<typeof shoppingLineIdSchema>;
