import type { ProjectGlance } from '#core/contract/projects';
import type { CalendarDate } from '#core/units/calendar-date';
import { pressingDay, type ProjectSituation, type ProjectStatus, projectStatus } from '#renderer/text/project-status';

export interface BenchProject {
  readonly glance: ProjectGlance;
  readonly standing: ProjectStatus;
}

export interface BenchGroup {
  readonly situation: ProjectSituation;
  readonly pieces: readonly BenchProject[];
}

export interface Bench {
  /** The piece to turn to now; null for an empty bench. It is not repeated in its group. */
  readonly first: BenchProject | null;
  readonly groups: readonly BenchGroup[];
  readonly counts: Readonly<Record<ProjectSituation, number>>;
}

/** The order in which a maker has to know of them: what is late, what is under the needle, what could be, and what waits. */
const ORDER: readonly ProjectSituation[] = ['late', 'in-hand', 'next', 'held', 'away', 'finished'];

/** Sorts the open pieces into what is late, in hand, next, held up, away and finished; in each the most pressing day first. */
export function benchOf(glances: readonly ProjectGlance[], on: CalendarDate): Bench {
  const pieces = glances.map((glance) => ({ glance, standing: projectStatus(glance, on) }));
  const sorted = ORDER.map((situation) => ({
    situation,
    pieces: pieces.filter((piece) => piece.standing.situation === situation).toSorted(byPressingDay),
  }));
  const first = sorted.flatMap((group) => group.pieces)[0] ?? null;
  const groups = sorted
    .map((group) => ({ ...group, pieces: group.pieces.filter((piece) => piece !== first) }))
    .filter((group) => group.pieces.length > 0);
  const count = (situation: ProjectSituation) =>
    sorted.find((group) => group.situation === situation)?.pieces.length ?? 0;
  return {
    first,
    groups,
    counts: {
      late: count('late'),
      'in-hand': count('in-hand'),
      next: count('next'),
      held: count('held'),
      away: count('away'),
      finished: count('finished'),
    },
  };
}

/** `2 late, 3 in hand, 2 away`: only what there is. */
export function benchSummary(counts: Bench['counts']): string {
  const words = ORDER.filter((situation) => counts[situation] > 0).map(
    (situation) => `${String(counts[situation])} ${SUMMARY_WORDS[situation]}`,
  );
  return words.join(', ');
}

export const GROUP_WORDS: Readonly<Record<ProjectSituation, string>> = {
  late: 'Late',
  'in-hand': 'In hand',
  next: 'Ready to begin',
  held: 'Held up',
  away: 'Away',
  finished: 'Finished',
};

const SUMMARY_WORDS: Readonly<Record<ProjectSituation, string>> = {
  late: 'late',
  'in-hand': 'in hand',
  next: 'ready to begin',
  held: 'held up',
  away: 'away',
  finished: 'finished',
};

function byPressingDay(first: BenchProject, second: BenchProject): number {
  return (
    pressingDay(first.glance, first.standing).localeCompare(pressingDay(second.glance, second.standing)) ||
    first.glance.project.name.localeCompare(second.glance.project.name)
  );
}
