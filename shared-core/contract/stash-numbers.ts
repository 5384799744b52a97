import { z } from 'zod';
import type { FabricId, ProjectId } from '#core/domain/ids';
import type { LeftoversOfSide, StashMonth } from '../domain/stash-numbers';
import type { KnownCost } from '#core/units/known-cost';
import type { PartialDate } from '#core/units/partial-date';
import { reads } from './channel';

/** A fabric that was last bought or cut on the day `since`. */
export interface UnmovedFabric {
  readonly fabricId: FabricId;
  readonly name: string;
  readonly since: PartialDate;
  /** In (1/320 mm)². */
  readonly areaThere: number;
  readonly value: KnownCost;
}

export interface UsedFabric {
  readonly projectId: ProjectId;
  readonly name: string;
  readonly area: number;
  readonly cost: KnownCost;
}

/** Sums over the whole stash. What was undone is not counted. */
export interface StashNumbers {
  readonly value: KnownCost;
  readonly areaThere: number;
  /** The last year by month, the oldest first; never empty. */
  readonly months: readonly StashMonth[];
  /** At most fifteen, those unmoved the longest first. */
  readonly longest: readonly UnmovedFabric[];
  /** Fabrics there that were bought on a day not known and never cut. */
  readonly unmovedForUnknown: number;
  /** At most fifteen, the costliest first; `projectCount` counts them all. */
  readonly projects: readonly UsedFabric[];
  readonly projectCount: number;
  /** Leftovers that are not used up, the narrowest first. */
  readonly leftovers: readonly LeftoversOfSide[];
}

export const stashNumbersChannels = {
  'stash:numbers': reads<StashNumbers>()(z.object({})),
};
