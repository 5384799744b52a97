import { z } from 'zod';
import { calendarDateSchema } from '#core/domain/dates';
import { changeIdSchema, type ChangeId, projectIdSchema } from '#core/domain/ids';
import { type Settings, type Workshop, workshopSchema } from '#core/domain/workshop';
import { reads, writes } from './channel';
import type { Changed } from './projects';

/** What the page reads first. */
export interface Opening {
  readonly workshop: Workshop;
  /** Its settings, with learned values in place of defaults. */
  readonly settingsInUse: Settings;
  /** Nothing was ever entered, so the demo is offered. */
  readonly isEmpty: boolean;
  readonly isDemo: boolean;
  readonly programVersion: string;
  readonly file: string;
  /** Another one for each workshop file, and for a workshop that was restored from a backup. */
  readonly fileId: string;
}

/** What was measured of the seams on one stage of a project. */
export interface SavedSeamCheck {
  readonly projectId: string;
  /** As stored: anything. */
  readonly input: unknown;
}

/** The change that Undo would undo and the one that Redo would redo, in words; null if there is none. */
export interface UndoState {
  readonly undo: string | null;
  readonly redo: string | null;
}

/** One change of the history; `says` is its words. */
export interface PastChange {
  readonly id: ChangeId;
  readonly says: string;
  readonly madeAt: number;
}

export interface ChangeList {
  readonly done: readonly PastChange[];
  readonly undone: readonly PastChange[];
}

export interface Backup {
  readonly name: string;
  readonly madeAt: number;
  readonly bytes: number;
  readonly why: 'start' | 'migration' | 'restore' | 'by-hand';
}

export const workshopChannels = {
  'workshop:opening': reads<Opening>()(z.object({})),
  /** What was measured of the seams in all projects, the earliest saved first. */
  'workshop:seam-checks': reads<readonly SavedSeamCheck[]>()(z.object({})),
  'workshop:change': writes<Changed>()(z.object({ workshop: workshopSchema })),
  /** The changes that can be undone, the newest first, and those that can be redone, the next one first. */
  'change:list': reads<ChangeList>()(z.object({})),
  /** Undoes the named change and everything after it, or redoes everything up to it. Returns the number of changes. */
  'change:go-to': writes<{ readonly steps: number }>()(z.object({ changeId: changeIdSchema })),
  'change:state': reads<UndoState>()(z.object({})),
  /** Undoes the newest change, or the named one if it is still the newest. Returns its words. */
  'change:undo': writes<{ readonly says: string }>()(
    z.object({
      changeId: z
        .uuid()
        .transform((id) => id as ChangeId)
        .optional(),
    }),
  ),
  'change:redo': writes<{ readonly says: string }>()(z.object({})),
  'backup:list': reads<readonly Backup[]>()(z.object({})),
  'backup:make': writes<Backup>()(z.object({})),
  /** Replaces the workshop with a backup; the present workshop is backed up first. */
  'backup:restore': writes<{ readonly restored: string }>()(z.object({ name: z.string().max(200) })),
};

/** Calls that the main process answers itself, without the store. */
export const shellChannels = {
  /** Opens the demo workshop, which is a file of its own, or goes back from it. */
  'shell:enter-demo': writes<{ readonly file: string }>()(z.object({})),
  'shell:leave-demo': writes<{ readonly file: string }>()(z.object({})),
  /** Asks which file to import. The page gets a token for it, never its path; null if the dialog is canceled. */
  'shell:choose-table': reads<{ readonly token: string; readonly name: string } | null>()(z.object({})),
  /** Asks where to save the whole stash as a file; null if the dialog is canceled. */
  'shell:export-stash': reads<{ readonly file: string } | null>()(z.object({ as: z.enum(['csv', 'json']) })),
  /** Opens the file of a project's pattern with the program that the system has for it. */
  'shell:open-pattern': reads<null>()(z.object({ projectId: projectIdSchema })),
  'shell:show-folder': reads<null>()(z.object({ which: z.enum(['workshop', 'backups']) })),
  /** Asks where to save a calendar file of the days to remember; null if the dialog is canceled. */
  'shell:save-calendar': reads<{ readonly file: string } | null>()(z.object({ on: calendarDateSchema })),
  /** Asks where to save a PDF of a sheet; null if the dialog is canceled. */
  'shell:print-sheet': reads<{ readonly file: string } | null>()(
    z.object({
      path: z
        .string()
        .regex(/^\/sheets\/[a-z0-9/-]*(\?[\w=&%+*.-]*)?$/)
        .max(8_000),
      name: z.string().max(200),
    }),
  ),
};
