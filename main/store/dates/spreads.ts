import type { StageId } from '#core/domain/ids';
import type { DaysAway } from '#core/learned/days-away';
import type { StageEstimate } from '#core/learned/stage-estimate';
import { hoursSpread, tripSpread } from '#core/learned/usual-spread';
import type { SpreadOf, StepSpread } from '#core/planner/futures';
import type { OpenProject } from '#core/planner/load-of-projects';
import type { WorkshopLoad } from '#core/planner/workshop-load';
import { daysBetween } from '#core/units/calendar-date';

interface Grounds {
  readonly away: readonly DaysAway[];
  readonly estimates: ReadonlyMap<StageId, StageEstimate>;
}

/** How far each step of the load may be from its plan. A trip under way is known to take longer than it has lasted. */
export function spreadsOf(
  load: WorkshopLoad,
  projects: readonly OpenProject[],
  { away, estimates }: Grounds,
): SpreadOf {
  const sent = new Map(
    projects.flatMap(({ stages, trips }) =>
      stages
        .filter(({ state }) => state === 'out')
        .map(
          ({ id }) => [id as string, trips.findLast((trip) => trip.stageId === id)?.sentOn ?? null] as const,
        ),
    ),
  );
  const waits = new Map(
    away.map((one): readonly [string, StepSpread] => {
      const sentOn = sent.get(one.stageId) ?? null;
      const already = sentOn === null ? 0 : Math.max(0, daysBetween(sentOn, load.today));
      return [one.stageId, { ...tripSpread(one), already }];
    }),
  );
  const work = new Map(
    [...estimates].map(([id, estimate]): readonly [string, StepSpread] => [
      id,
      { ...hoursSpread(estimate), already: 0 },
    ]),
  );
  return (project, place) => {
    const step = load.projects[project]?.steps[place];
    return step === undefined ? undefined : (step.kind === 'wait' ? waits : work).get(step.id);
  };
}
