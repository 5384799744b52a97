import { type Chains, NEVER_DUE } from './chains';
import { earliestReadyDays } from './latest-done';
import { listSchedule, type Run, type RunsInOrder } from './list-schedule';
import type { WorkCalendar } from './work-calendar';

/**
 * The work of all projects with a due day, as late as possible while every project is still finished by its due day, or by its
 * day in the plan where that is later. This is the same scheduling with time running backward: from the due day toward
 * today, with the last block first.
 *
 * Backward, the block with the latest earliest start comes first. If that makes some block begin earlier than in the plan, the
 * order of the plan is used instead, which never does.
 */
export function latestRuns(
  chains: Chains,
  calendar: WorkCalendar,
  schedule: RunsInOrder,
  startAt: Float64Array,
): readonly Run[] {
  const mirror = mirrorOf(chains, calendar, schedule);
  const ready = earliestReadyDays(chains, calendar);
  const byLatest = runsInMirror(mirror, (block) => -calendar.minutesBefore(ready[block]!));
  if (byLatest.every(({ block, from }) => from >= startAt[block]!)) return byLatest;
  return runsInMirror(mirror, (block) => -startAt[block]!);
}

interface Mirror {
  readonly chains: Chains;
  readonly calendar: WorkCalendar;
  /** The true block of each mirrored block. */
  readonly blocks: readonly number[];
  /** The work minute from which time is counted backward. */
  readonly end: number;
}

function mirrorOf(chains: Chains, calendar: WorkCalendar, { finishDay }: RunsInOrder): Mirror {
  const projects = Array.from({ length: chains.count }, (_, project) => project).filter(
    (project) => chains.dueDay[project] !== NEVER_DUE && blocksOf(chains, project).length > 0,
  );
  const lastDay = (project: number) => Math.max(chains.dueDay[project]!, finishDay[project]!);
  const backwards = projects.map((project) => blocksOf(chains, project).toReversed());
  const blocks = backwards.flat();
  const firstBlock = new Int32Array(projects.length + 1);
  backwards.forEach((own, place) => {
    firstBlock[place + 1] = firstBlock[place]! + own.length;
  });
  const end = Math.max(0, ...projects.map((project) => calendar.minutesBefore(lastDay(project) + 1)));
  return {
    chains: {
      count: projects.length,
      firstBlock,
      groupEnd: mirroredGroups(chains, blocks),
      minutes: Float64Array.from(blocks, (block) => chains.minutes[block]!),
      // Backward, the wait before a block comes after it, and the wait after it comes before.
      waitBefore: Int32Array.from(blocks, (block) => chains.waitAfter[block]!),
      waitAfter: Int32Array.from(blocks, (block) => chains.waitBefore[block]!),
      groupWait: Int32Array.from(blocks, (block) => chains.groupWait[block]!),
      projectOf: Int32Array.from(backwards.flatMap((own, place) => own.map(() => place))),
      readyDay: Int32Array.from(projects, (project) => -lastDay(project)),
      dueDay: new Int32Array(projects.length),
    },
    calendar: mirroredCalendar(calendar, end),
    blocks,
    end,
  };
}

function mirroredGroups({ groupEnd }: Chains, blocks: readonly number[]): Int32Array {
  const ends = new Int32Array(blocks.length);
  for (let place = blocks.length - 1; place >= 0; place -= 1) {
    const next = blocks[place + 1];
    const isSameGroup = next !== undefined && groupEnd[next] === groupEnd[blocks[place]!];
    ends[place] = isSameGroup ? ends[place + 1]! : place + 1;
  }
  return ends;
}

function mirroredCalendar(calendar: WorkCalendar, end: number): WorkCalendar {
  return {
    ...calendar,
    minutesBefore: (day) => end - calendar.minutesBefore(1 - day),
    dayWhenDone: (minute) => -calendar.dayWhenBegun(end - minute),
    dayWhenBegun: (minute) => -calendar.dayWhenDone(end - minute),
  };
}

function runsInMirror(mirror: Mirror, keyOf: (block: number) => number): readonly Run[] {
  const runs: Run[] = [];
  const keys = Float64Array.from(mirror.blocks, keyOf);
  listSchedule(mirror.chains, mirror.calendar, keys, ({ block, from, to }) => {
    runs.push({ block: mirror.blocks[block]!, from: mirror.end - to, to: mirror.end - from });
  });
  return runs.toReversed();
}

function blocksOf(chains: Chains, project: number): readonly number[] {
  const first = chains.firstBlock[project]!;
  return Array.from({ length: chains.firstBlock[project + 1]! - first }, (_, place) => first + place);
}
