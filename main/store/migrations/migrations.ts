import { firstTables } from './0010-first-tables';
import { benchTimeOfWorkshop } from './0020-bench-time';
import { knowingBookings } from './0030-knowing-bookings';
import { cuttingPlans } from './0040-cutting-plans';
import { contacts } from './0050-contacts';
import { workOfStages } from './0060-work';
import { stageSetUp } from './0070-stage-set-up';
import { kindsAndPlaces } from './0080-kinds-and-places';
import { shelfOfFabrics } from './0090-shelf';
import { printAcross } from './0100-print-across';
import { firstIn } from './0110-first-in';
import { savedSearches } from './0120-saved-searches';
import { shoppingList } from './0130-shopping';
import { ownEstimates } from './0140-own-estimates';
import { countedWork } from './0150-counted-work';
import { shelfPrices } from './0160-shelf-prices';
import { labelSheetOfWorkshop } from './0170-label-sheet';
import { plainNames } from './0180-plain-names';
import { centerAnswers } from './0190-center-answers';
import { planHolds } from './0200-plan-holds';
import { unknownCost } from './0210-unknown-cost';
import { fileId } from './0220-file-id';
import { patterns } from './0230-patterns';
import type { Migration } from './migration';

/** Every migration, oldest first. */
export const migrations: readonly Migration[] = [
  firstTables,
  benchTimeOfWorkshop,
  knowingBookings,
  cuttingPlans,
  contacts,
  workOfStages,
  stageSetUp,
  kindsAndPlaces,
  shelfOfFabrics,
  printAcross,
  firstIn,
  savedSearches,
  shoppingList,
  ownEstimates,
  countedWork,
  shelfPrices,
  labelSheetOfWorkshop,
  plainNames,
  centerAnswers,
  planHolds,
  unknownCost,
  fileId,
  patterns,
];

/** The format this program writes. A newer file is refused and left untouched. */
export const NEWEST_VERSION = Math.max(...migrations.map(({ version }) => version));
