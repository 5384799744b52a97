import { z } from 'zod';
import { calendarDateSchema } from '#core/domain/dates';
import { stageIdSchema, tripEventIdSchema, tripIdSchema, type TripId } from '#core/domain/ids';
import { packingListSchema, tripDetailsSchema, tripEventKindSchema } from '#core/domain/trip';
import { writes } from './channel';
import type { Changed } from './projects';

export const tripChannels = {
  'trip:add': writes<Changed & { readonly tripId: TripId }>()(
    z.object({ stageId: stageIdSchema, details: tripDetailsSchema }),
  ),
  /**
   * Records a trip and moves its stage to the quilter; a closed gate refuses this as it refuses `stage:move`. Other stages go in the same
   * package, each on a trip of its own.
   */
  'trip:send': writes<Changed & { readonly tripId: TripId }>()(
    z.object({
      stageId: stageIdSchema,
      details: tripDetailsSchema,
      packing: packingListSchema.optional(),
      alsoStageIds: z.array(stageIdSchema).max(40).readonly().optional(),
    }),
  ),
  /**
   * Ends a trip and finishes its stage. If no trip was recorded, this records one that has ended. The trips of the same package that are
   * named came back with it; the others are still away.
   */
  'trip:receive': writes<Changed>()(
    z.object({
      stageId: stageIdSchema,
      tripId: tripIdSchema.nullable(),
      details: tripDetailsSchema,
      alsoTripIds: z.array(tripIdSchema).max(40).readonly().optional(),
    }),
  ),
  'trip:change': writes<Changed>()(z.object({ tripId: tripIdSchema, details: tripDetailsSchema })),
  'trip:delete': writes<Changed>()(z.object({ tripId: tripIdSchema })),
  /** Adds an update to a trip, or to all trips of its package. */
  'trip:add-event': writes<Changed>()(
    z.object({
      tripId: tripIdSchema,
      kind: tripEventKindSchema,
      on: calendarDateSchema,
      note: z.string().trim().max(500),
      ofWholePackage: z.boolean(),
    }),
  ),
  'trip:delete-event': writes<Changed>()(z.object({ tripEventId: tripEventIdSchema })),
  'trip:pack': writes<Changed>()(z.object({ tripId: tripIdSchema, packing: packingListSchema })),
};
