import { z } from 'zod';
import { calendarDateSchema } from './dates';
import type { ProjectId } from './ids';
import { holeSchema, outlineSchema, savedOutlineSchema } from './outline';
import { settingChanges } from './workshop';

export const projectPurposeSchema = z.enum(['gift', 'commission', 'own']);
export type ProjectPurpose = z.infer<typeof projectPurposeSchema>;

/** What the maker enters about a project: everything except its stages and what the notebook records. */
export const projectDetailsSchema = detailsWith(outlineSchema);

/** The same as it is read from the file. */
export const savedDetailsSchema = detailsWith(savedOutlineSchema);

function detailsWith(outline: typeof savedOutlineSchema) {
  return z
    .object({
      name: z.string().trim().min(1).max(120),
      purpose: projectPurposeSchema,
      forWhom: z.string().trim().max(120),
      dueOn: calendarDateSchema.nullable(),
      outline,
      hole: holeSchema.nullable(),
      hasSlit: z.boolean(),
      settingChanges,
      notes: z.string().max(20_000),
    })
    .readonly()
    .refine((details) => !details.hasSlit || details.hole !== null, {
      path: ['hasSlit'],
      message: 'A slit runs from the edge to a hole',
    });
}

export type ProjectDetails = z.infer<typeof projectDetailsSchema>;

export interface Project extends ProjectDetails {
  readonly id: ProjectId;
  readonly isArchived: boolean;
  readonly createdAt: number;
  readonly changedAt: number;
}
