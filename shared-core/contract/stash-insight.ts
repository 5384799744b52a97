import { z } from 'zod';
import type { FabricId, ProjectId } from '#core/domain/ids';
import type { LeftoversOfSide, StashMonth } from '#core/domain/stash-insight';
import type { CalendarDate } from '#core/units/calendar-date';
import { reads } from './channel';

/** A fabric that nothing was bought of or cut from since `since`. */
export interface LainLong {
  readonly fabricId: FabricId;
  readonly name: string;
  readonly since: CalendarDate;
  /** (1/320 mm)² there. */
  readonly areaThere: number;
  readonly valueMinor: number;
}

export interface UsedFabric {
  readonly projectId: ProjectId;
  readonly name: string;
  readonly area: number;
  readonly costMinor: number;
}

/** The stash as a whole, as the ledger adds up. What was taken back counts as if it had never been. */
export interface StashInsight {
  readonly valueMinor: number;
  readonly areaThere: number;
  /** The last year month by month, the oldest first; never empty. */
  readonly months: readonly StashMonth[];
  /** At most fifteen, the longest first. */
  readonly longest: readonly LainLong[];
  /** At most fifteen, the costliest first, and how many there are in all. */
  readonly projects: readonly UsedFabric[];
  readonly projectCount: number;
  /** Leftovers that are there, the narrowest first. */
  readonly leftovers: readonly LeftoversOfSide[];
}

export const stashInsightChannels = {
  'stash:insight': reads<StashInsight>()(z.object({})),
};
