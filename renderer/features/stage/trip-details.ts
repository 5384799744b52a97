import type { Trip } from '#core/contract/projects';
import type { TripDetails } from '#core/domain/trip';

/** What the maker said of a trip, without what the notebook knows of it. */
export function tripDetailsOf({
  id: _id,
  stageId: _stage,
  projectId: _project,
  ...details
}: Trip): TripDetails {
  return details;
}
