import type { Problem } from '#core/contract/problem';
import type { Trip } from '#core/contract/projects';
import { isOver, type Stage } from '#core/domain/stage';
import { isPromisedBeforeSent, type TripDetails } from '#core/domain/trip';
import { failure, type Result, success } from '#core/result';
import type { ReadableStore } from '../base/handles';
import type { StageRef } from '../base/lookups';
import { stagesByProject } from '../projects/stage-rows';
import { tripsByProject } from '../projects/trip-rows';

/** A trip of a project that has not ended, and whether the project is away on it. */
interface OpenTrip {
  readonly trip: Trip;
  readonly isAway: boolean;
}

/** The trips of the stage's project that are booked or away. A trip whose stage is over has ended, even without a day. */
function openTrips(store: ReadableStore, { projectId }: Pick<StageRef, 'projectId'>): readonly OpenTrip[] {
  const stages = stagesByProject(store, [projectId]).get(projectId) ?? [];
  const trips = tripsByProject(store, [projectId]).get(projectId) ?? [];
  return trips.flatMap((trip) => {
    const stage = stages.find(({ id }) => id === trip.stageId);
    if (trip.backOn !== null || stage === undefined || isOver(stage)) return [];
    const isSent = trip.sentOn !== null && trip.sentOn <= store.clockAndIds.today();
    return [{ trip, isAway: stage.state === 'out' || isSent }];
  });
}

/** Refuses to send a stage while its project is away: on this stage already, or on another. */
export function checkCanBeSent(store: ReadableStore, stage: Stage): Result<null, Problem> {
  const away = openTrips(store, stage).find(
    ({ trip, isAway }) => isAway && (stage.state === 'out' || trip.stageId !== stage.id),
  );
  return away === undefined ? success(null) : failure(problemOf(away));
}

/** Refuses a second trip for a stage that has one. */
export function checkHasNoTrip(store: ReadableStore, stage: StageRef): Result<null, Problem> {
  const open = openTrips(store, stage).find(({ trip }) => trip.stageId === stage.id);
  return open === undefined ? success(null) : failure(problemOf(open));
}

export function checkDays(details: TripDetails): Result<null, Problem> {
  return isPromisedBeforeSent(details) ? failure({ code: 'promised-before-sent' }) : success(null);
}

function problemOf({ trip, isAway }: OpenTrip): Problem {
  return { code: 'trip-open', withWhom: trip.withWhom, isAway };
}
