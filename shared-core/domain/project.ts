import { z } from 'zod';
import { calendarDate } from './dates';
import type { ProjectId } from './ids';
import { hole, outline } from './outline';
import { settingChanges } from './workshop';

export const projectPurpose = z.enum(['gift', 'commission', 'own']);
export type ProjectPurpose = z.infer<typeof projectPurpose>;

/** What the maker says of a project: everything but its stages and what the notebook itself records. */
export const projectDetails = z
  .object({
    name: z.string().trim().min(1).max(120),
    purpose: projectPurpose,
    forWhom: z.string().trim().max(120),
    dueOn: calendarDate.nullable(),
    outline,
    hole: hole.nullable(),
    hasSlit: z.boolean(),
    settingChanges,
    notes: z.string().max(20_000),
  })
  .readonly()
  .refine((details) => !details.hasSlit || details.hole !== null, {
    path: ['hasSlit'],
    message: 'A slit runs from the edge to a hole',
  });
export type ProjectDetails = z.infer<typeof projectDetails>;

export interface Project extends ProjectDetails {
  readonly id: ProjectId;
  readonly isArchived: boolean;
  readonly createdAt: number;
  readonly changedAt: number;
}
