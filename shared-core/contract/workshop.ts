import { z } from 'zod';
import { calendarDate } from '#core/domain/dates';
import { changeId, type ChangeId } from '#core/domain/ids';
import { type Settings, type Workshop, workshop } from '#core/domain/workshop';
import { reads, writes } from './channel';
import type { Changed } from './projects';

/** What the notebook knows when it opens. */
export interface Opening {
  readonly workshop: Workshop;
  /** Its settings with what was learned in place of a default. */
  readonly settingsInUse: Settings;
  /** Nothing has ever been entered: the demo is offered. */
  readonly isEmpty: boolean;
  readonly isDemo: boolean;
  readonly programVersion: string;
  readonly file: string;
}

/** The newest change that can be undone and the one that can be redone, in words; null where there is none. */
export interface UndoState {
  readonly undo: string | null;
  readonly redo: string | null;
}

/** One change in the maker's words. */
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
  'workshop:change': writes<Changed>()(z.object({ workshop })),
  /** The changes that can be undone, the newest first, and those that can be done again, the next one first. */
  'change:list': reads<ChangeList>()(z.object({})),
  /** Takes back the named change and everything since; or does again everything up to and with it. Answers with how many. */
  'change:go-to': writes<{ readonly steps: number }>()(z.object({ changeId })),
  'change:state': reads<UndoState>()(z.object({})),
  /** Takes back the newest change, or the named one if it is still the newest; answers with its words. */
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
  /** Puts a backup in place of the workshop; what was there is backed up first. */
  'backup:restore': writes<{ readonly restored: string }>()(z.object({ name: z.string().max(200) })),
};

/** Calls that the window's own process answers, not the store. */
export const shellChannels = {
  /** Leaves this workshop and opens the demo one, or goes back from it. The demo is a file of its own. */
  'shell:enter-demo': writes<{ readonly file: string }>()(z.object({})),
  'shell:leave-demo': writes<{ readonly file: string }>()(z.object({})),
  /** Asks which file to bring in; the page gets a token for it, never its path. Null when the maker thinks better of it. */
  'shell:choose-table': reads<{ readonly token: string; readonly name: string } | null>()(z.object({})),
  /** Asks where to keep the whole stash as a file; null when the maker thinks better of it. */
  'shell:export-stash': reads<{ readonly file: string } | null>()(z.object({ as: z.enum(['csv', 'json']) })),
  'shell:show-folder': reads<null>()(z.object({ which: z.enum(['workshop', 'backups']) })),
  /** Writes the days to remember as a calendar file and asks where to keep it; null when the maker thinks better of it. */
  'shell:save-calendar': reads<{ readonly file: string } | null>()(z.object({ on: calendarDate })),
  /** Makes a PDF of one of the page's sheets and asks where to keep it; null when the maker thinks better of it. */
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
