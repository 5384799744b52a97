import { z } from 'zod';

/** When a photo of a trip was taken: before the project left the house, or after it came back. */
export const photoMomentSchema = z.enum(['before', 'after']);
export type PhotoMoment = z.infer<typeof photoMomentSchema>;
