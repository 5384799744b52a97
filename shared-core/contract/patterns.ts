import { z } from 'zod';
import { projectIdSchema, stageIdSchema } from '#core/domain/ids';
import { patternDetailsSchema, type SavedPattern } from '#core/domain/pattern';
import { reads, writes } from './channel';
import type { Changed } from './projects';

export const patternChannels = {
  'pattern:open': reads<SavedPattern | null>()(z.object({ projectId: projectIdSchema })),
  /**
   * Saves the pattern of a project and, with a stage, the patches read from its list as the answer of a calculator of that stage: one
   * change. The store works the answer out itself. Without an input, the list has no patches any more, and the answer goes.
   */
  'pattern:save': writes<Changed>()(
    z.object({
      projectId: projectIdSchema,
      details: patternDetailsSchema,
      answer: z
        .object({ stageId: stageIdSchema, calculator: z.string().max(80), ownInput: z.unknown() })
        .nullable(),
    }),
  ),
  /** Keeps a PDF or picture (at most 40 MB) of the pattern beside the workshop file; null takes it off. */
  'pattern:set-file': writes<Changed>()(
    z.object({
      projectId: projectIdSchema,
      file: z.object({ name: z.string().trim().max(200), bytes: z.instanceof(Uint8Array) }).nullable(),
    }),
  ),
};
