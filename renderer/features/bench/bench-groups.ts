import type { ProjectGlance } from '#core/contract/projects';
import type { CalendarDate } from '#core/units/calendar-date';
import {
  pressingDay,
  type ProjectSituation,
  type ProjectStatus,
  projectStatus,
} from '#renderer/text/project-status';

export interface BenchProject {
  readonly glance: ProjectGlance;
  readonly status: ProjectStatus;
}

interface BenchGroup {
  readonly situation: ProjectSituation;
  readonly projects: readonly BenchProject[];
}

export interface Bench {
  /** The project to work on now; null for an empty bench. Its group does not show it again. */
  readonly first: BenchProject | null;
  readonly groups: readonly BenchGroup[];
  readonly counts: Readonly<Record<ProjectSituation, number>>;
}

/** The order of the groups: what is late, what is in progress, what could be started, and what waits. */
const ORDER: readonly ProjectSituation[] = ['late', 'in-hand', 'next', 'waiting', 'away', 'finished'];

/** Sorts the open projects into groups by how they are doing. Within a group, the earliest day comes first. */
export function benchOf(glances: readonly ProjectGlance[], on: CalendarDate): Bench {
  const projects = glances.map((glance) => ({ glance, status: projectStatus(glance, on) }));
  const sorted = ORDER.map((situation) => ({
    situation,
    projects: projects.filter(({ status }) => status.situation === situation).toSorted(byPressingDay),
  }));
  const first = sorted.flatMap((group) => group.projects)[0] ?? null;
  const groups = sorted
    .map((group) => ({ ...group, projects: group.projects.filter((one) => one !== first) }))
    .filter((group) => group.projects.length > 0);
  const count = (situation: ProjectSituation) =>
    projects.filter(({ status }) => status.situation === situation).length;
  return {
    first,
    groups,
    counts: {
      late: count('late'),
      'in-hand': count('in-hand'),
      next: count('next'),
      waiting: count('waiting'),
      away: count('away'),
      finished: count('finished'),
    },
  };
}

/** `2 late, 3 in progress, 2 at the quilter`; empty groups are left out. */
export function benchSummary(counts: Bench['counts']): string {
  const words = ORDER.filter((situation) => counts[situation] > 0).map(
    (situation) => `${String(counts[situation])} ${SUMMARY_WORDS[situation]}`,
  );
  return words.join(', ');
}

export const GROUP_WORDS: Readonly<Record<ProjectSituation, string>> = {
  late: 'Late',
  'in-hand': 'In progress',
  next: 'Ready to start',
  waiting: 'Waiting',
  away: 'At the quilter',
  finished: 'Finished',
};

const SUMMARY_WORDS: Readonly<Record<ProjectSituation, string>> = {
  late: 'late',
  'in-hand': 'in progress',
  next: 'ready to start',
  waiting: 'waiting',
  away: 'at the quilter',
  finished: 'finished',
};

function byPressingDay(first: BenchProject, second: BenchProject): number {
  return (
    pressingDay(first.glance, first.status).localeCompare(pressingDay(second.glance, second.status)) ||
    first.glance.project.name.localeCompare(second.glance.project.name)
  );
}
