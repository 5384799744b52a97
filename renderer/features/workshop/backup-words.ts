import type { Backup } from '#core/contract/workshop';

export const BACKUP_WHY: Readonly<Record<Backup['why'], string>> = {
  start: 'At a start',
  migration: 'Before a new version of the notebook took it over',
  restore: 'Before going back to an older one',
  'by-hand': 'Made by hand',
};

/** The day and minute of a backup as the maker's clock showed it. */
export function backupTime(madeAt: number, locale: string): string {
  return new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' }).format(
    new Date(madeAt),
  );
}

/** A file's size in kB or MB, rounded up so that a small one is not nothing. */
export function backupSize(bytes: number): string {
  return bytes < 1_000_000
    ? `${String(Math.ceil(bytes / 1_000))} kB`
    : `${String(Math.ceil(bytes / 100_000) / 10)} MB`;
}
