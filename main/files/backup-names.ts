import type { Backup } from '#core/contract/workshop';

export type BackupWhy = Backup['why'];

const NAME = /^(\d{4}-\d\d-\d\d)T(\d\d)-(\d\d)-(\d\d)-(\d{3})Z_(start|migration|restore|by-hand)\.sqlite$/;

/** UTC time and reason, such as `2027-02-28T09-30-00-000Z_start.sqlite`. It sorts by time and is valid on every system. */
export function backupName(madeAt: number, why: BackupWhy): string {
  return `${new Date(madeAt).toISOString().replaceAll(/[:.]/g, '-')}_${why}.sqlite`;
}

/** Null if the name is not that of a backup. */
export function readBackupName(name: string): Pick<Backup, 'name' | 'madeAt' | 'why'> | null {
  const [, day, hours, minutes, seconds, millis, why] = NAME.exec(name) ?? [];
  if (day === undefined) return null;
  const madeAt = Date.parse(`${day}T${hours}:${minutes}:${seconds}.${millis}Z`);
  return Number.isNaN(madeAt) ? null : { name, madeAt, why: why as BackupWhy };
}

const LAST_KEPT = 10;
const DAYS_KEPT = 30;
const DAY_MS = 86_400_000;

/**
 * The backups to delete. The last ten stay, and of older ones the latest of each UTC day for thirty days. Other file names are
 * never returned.
 */
export function backupsToDelete(names: readonly string[], now: number): readonly string[] {
  const backups = names
    .map(readBackupName)
    .filter((backup) => backup !== null)
    .sort((first, second) => second.madeAt - first.madeAt || (first.name < second.name ? 1 : -1));
  const daysSeen = new Set(backups.slice(0, LAST_KEPT).map(({ madeAt }) => dayOf(madeAt)));
  return backups
    .slice(LAST_KEPT)
    .filter(({ madeAt }) => {
      const isKept = !daysSeen.has(dayOf(madeAt)) && dayOf(now) - dayOf(madeAt) < DAYS_KEPT;
      daysSeen.add(dayOf(madeAt));
      return !isKept;
    })
    .map(({ name }) => name);
}

function dayOf(instant: number): number {
  return Math.floor(instant / DAY_MS);
}
