import { firstTables } from './0010-first-tables';
import { benchTimeOfWorkshop } from './0020-bench-time';
import { knowingBookings } from './0030-knowing-bookings';
import { kindsAndPlaces } from './0040-kinds-and-places';
import { shelfOfFabrics } from './0050-shelf';
import type { Migration } from './migration';

/** Every step of the file's format, oldest first. */
export const migrations: readonly Migration[] = [
  firstTables,
  benchTimeOfWorkshop,
  knowingBookings,
  kindsAndPlaces,
  shelfOfFabrics,
];

/** The format this program writes; a file beyond it is refused untouched. */
export const KNOWN_VERSION = Math.max(...migrations.map(({ version }) => version));
