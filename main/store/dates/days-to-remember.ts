import type { DayToRemember } from '#core/calendar-file/day-to-remember';
import type { ChannelInput } from '#core/contract/channels';
import { plannedDates } from './dates';
import type { ReadableStore } from '../base/handles';
import { type OpenProject, listOpenProjects } from '../projects/open-projects';

const NO_MOVES = { dues: [], promises: [] };

/** Due dates, last days to send out and promised return dates of all open projects, in order. */
export function daysToRemember(
  store: ReadableStore,
  { on }: ChannelInput<'dates:days-to-remember'>,
): readonly DayToRemember[] {
  const { plan } = plannedDates(store, { on, moves: NO_MOVES });
  const projects = new Map(listOpenProjects(store).map((open) => [open.project.id as string, open]));
  return plan.projects
    .flatMap(({ id, steps }): readonly DayToRemember[] => {
      const open = projects.get(id);
      if (open === undefined) return [];
      const { name: projectName, dueOn, forWhom } = open.project;
      const sending = steps.find(({ kind }, place) => kind === 'wait' && place > 0);
      const sendBy = sending?.latestStartOn ?? null;
      return [
        ...(dueOn === null
          ? []
          : [{ kind: 'due' as const, ownerId: id, on: dueOn, projectName, who: forWhom }]),
        ...(sending === undefined || sendBy === null
          ? []
          : [{ kind: 'send-by' as const, ownerId: sending.id, on: sendBy, projectName, who: '' }]),
        ...backDays(open),
      ];
    })
    .toSorted((one, other) => one.on.localeCompare(other.on));
}

function backDays({ project, stages, trips }: OpenProject): readonly DayToRemember[] {
  const away = new Set(stages.filter(({ state }) => state === 'out').map(({ id }) => id));
  return trips
    .filter(({ stageId, backOn }) => backOn === null && away.has(stageId))
    .flatMap(({ id, promisedOn, withWhom }) =>
      promisedOn === null
        ? []
        : [{ kind: 'back' as const, ownerId: id, on: promisedOn, projectName: project.name, who: withWhom }],
    );
}
