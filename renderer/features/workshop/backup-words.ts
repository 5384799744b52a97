import type { Backup } from '#core/contract/workshop';

export const BACKUP_WHY: Readonly<Record<Backup['why'], string>> = {
  start: 'When Ringbound started',
  migration: 'Before an update changed the notebook',
  restore: 'Before an older backup was restored',
  'by-hand': 'Made by you',
};

/** The local date and time of a backup. */
export function backupTime(madeAt: number, locale: string): string {
  return new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' }).format(
    new Date(madeAt),
  );
}

/** A file's size in kB or MB, rounded up so that it is never 0. */
export function backupSize(bytes: number): string {
  return bytes < 1_000_000
    ? `${String(Math.ceil(bytes / 1_000))} kB`
    : `${String(Math.ceil(bytes / 100_000) / 10)} MB`;
}
