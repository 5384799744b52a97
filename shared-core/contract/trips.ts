import { z } from 'zod';
import { calendarDate } from '#core/domain/dates';
import { stageId, tripEventId, tripId, type TripId } from '#core/domain/ids';
import { packingList, tripDetails, tripEventKind } from '#core/domain/trip';
import { writes } from './channel';
import type { Changed } from './projects';

export const tripChannels = {
  'trip:add': writes<Changed & { readonly tripId: TripId }>()(z.object({ stageId, details: tripDetails })),
  /**
   * Writes a trip down and moves its stage out; a closed gate refuses it as it refuses `stage:move`. Other stages go in the
   * same package, each on a trip of its own.
   */
  'trip:send': writes<Changed & { readonly tripId: TripId }>()(
    z.object({
      stageId,
      details: tripDetails,
      packing: packingList.optional(),
      alsoStageIds: z.array(stageId).max(40).readonly().optional(),
    }),
  ),
  /**
   * Ends a trip (or, without one on record, writes it down as it ended) and finishes its stage. Of the same package, those
   * named came back with it; the others are still away.
   */
  'trip:receive': writes<Changed>()(
    z.object({
      stageId,
      tripId: tripId.nullable(),
      details: tripDetails,
      alsoTripIds: z.array(tripId).max(40).readonly().optional(),
    }),
  ),
  'trip:change': writes<Changed>()(z.object({ tripId, details: tripDetails })),
  'trip:remove': writes<Changed>()(z.object({ tripId })),
  /** Writes down a word of a trip; of the whole package if so said. */
  'trip:tell': writes<Changed>()(
    z.object({
      tripId,
      kind: tripEventKind,
      on: calendarDate,
      note: z.string().trim().max(500),
      ofWholePackage: z.boolean(),
    }),
  ),
  'trip:untell': writes<Changed>()(z.object({ tripEventId })),
  'trip:pack': writes<Changed>()(z.object({ tripId, packing: packingList })),
};
