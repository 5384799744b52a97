import type { DayToRemember } from '#core/calendar-file/day-to-remember';
import type { ChannelInput } from '#core/contract/channels';
import { plannedDates } from './dates';
import type { ReadableStore } from '../base/handles';
import { type Open, openPieces } from '../projects/open-projects';

const NO_MOVES = { dues: [], promises: [] };

/** The days of all open pieces that are not finished, in their order: due, to be sent by, promised back. */
export function daysToRemember(
  store: ReadableStore,
  { on }: ChannelInput<'dates:remember'>,
): readonly DayToRemember[] {
  const { plan } = plannedDates(store, { on, moves: NO_MOVES });
  const pieces = new Map(openPieces(store).map((open) => [open.project.id as string, open]));
  return plan.projects
    .flatMap(({ id, steps }): readonly DayToRemember[] => {
      const open = pieces.get(id);
      if (open === undefined) return [];
      const { name: piece, dueOn, forWhom } = open.project;
      const sending = steps.find(({ kind }, place) => kind === 'wait' && place > 0);
      const sendBy = sending?.latestStartOn ?? null;
      return [
        ...(dueOn === null ? [] : [{ kind: 'due' as const, of: id, on: dueOn, piece, who: forWhom }]),
        ...(sending === undefined || sendBy === null
          ? []
          : [{ kind: 'send-by' as const, of: sending.id, on: sendBy, piece, who: '' }]),
        ...backDays(open),
      ];
    })
    .toSorted((one, other) => one.on.localeCompare(other.on));
}

function backDays({ project, stages, trips }: Open): readonly DayToRemember[] {
  const away = new Set(stages.filter(({ state }) => state === 'out').map(({ id }) => id));
  return trips
    .filter(({ stageId, backOn }) => backOn === null && away.has(stageId))
    .flatMap(({ id, promisedOn, withWhom }) =>
      promisedOn === null
        ? []
        : [{ kind: 'back' as const, of: id, on: promisedOn, piece: project.name, who: withWhom }],
    );
}
