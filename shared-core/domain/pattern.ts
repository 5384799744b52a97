import { z } from 'zod';

/** Which fabric a fabric of the list is cut from: the name of one of the stash, or of one to be bought. */
const patternFabricSchema = z
  .object({ role: z.string().trim().min(1).max(120), fabric: z.string().trim().max(120) })
  .readonly();

/** What the maker enters about the pattern that a project follows. Its list is kept as it was typed or pasted. */
export const patternDetailsSchema = z
  .object({
    patternName: z.string().trim().max(200),
    page: z.string().trim().max(60),
    /** Where the pattern itself is: a shelf, a folder. */
    place: z.string().trim().max(200),
    listText: z.string().max(20_000),
    /** The unit of a size without one. */
    bareUnit: z.enum(['in', 'cm', 'mm']),
    fabrics: z.array(patternFabricSchema).max(200).readonly(),
  })
  .readonly();
export type PatternDetails = z.infer<typeof patternDetailsSchema>;

/** A PDF or picture of the pattern, for the maker alone. */
export interface PatternFile {
  readonly name: string;
  readonly bytes: number;
}

export interface SavedPattern extends PatternDetails {
  readonly file: PatternFile | null;
}

export const NO_PATTERN: PatternDetails = {
  patternName: '',
  page: '',
  place: '',
  listText: '',
  bareUnit: 'in',
  fabrics: [],
};
