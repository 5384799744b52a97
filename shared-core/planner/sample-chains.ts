import { firstDayOf, stepChainsOf, type StepChains } from './chains';
import type { WorkCalendar } from './work-calendar';
import type { LoadStep, ProjectLoad, WorkshopLoad } from './workshop-load';

/** Chains whose minutes and waits are written over for each sampled future: building them anew takes five times as long. */
export interface SampledChains {
  readonly chains: StepChains;
  /** Gives the steps of a project their planned time times these factors. `alreadyOf` is as in `StepSpread`. */
  set(project: number, factors: Float64Array, alreadyOf: (step: number) => number): void;
}

export function sampleChains(load: WorkshopLoad, planned: StepChains, calendar: WorkCalendar): SampledChains {
  const chains: StepChains = {
    ...planned,
    minutes: planned.minutes.slice(),
    waitBefore: planned.waitBefore.slice(),
    waitAfter: planned.waitAfter.slice(),
    groupWait: planned.groupWait.slice(),
    readyDay: planned.readyDay.slice(),
  };
  const firstDays = load.projects.map((project) => firstDayOf(project, calendar));
  const setters = load.projects.map(({ steps }) =>
    steps.some(({ isBeside }) => isBeside === true) ? setBeside : setChain,
  );
  return {
    chains,
    set(project, factors, alreadyOf) {
      const own = load.projects[project]!;
      const timeOf = (step: number) => sampledTime(own.steps[step]!, factors[step]!, alreadyOf(step));
      setters[project]!({
        chains,
        project,
        load: own,
        firstDay: firstDays[project]!,
        calendar,
        timeOf,
        today: load,
      });
    },
  };
}

interface ToSet {
  readonly chains: StepChains;
  readonly project: number;
  readonly load: ProjectLoad;
  readonly firstDay: number;
  readonly calendar: WorkCalendar;
  readonly timeOf: (step: number) => number;
  readonly today: Pick<WorkshopLoad, 'today' | 'hands'>;
}

/** One step after the other: a wait belongs to the block before it, or to the day on which the first one may begin. */
function setChain({ chains, project, load, firstDay, timeOf }: ToSet): void {
  const { firstBlock, minutes, waitAfter, readyDay } = chains;
  let block = firstBlock[project]! - 1;
  readyDay[project] = firstDay;
  load.steps.forEach((step, place) => {
    const time = timeOf(place);
    if (step.kind === 'work') {
      if (step.minutes === 0) return;
      block += 1;
      minutes[block] = time;
      waitAfter[block] = 0;
    } else if (block < firstBlock[project]!) readyDay[project]! += time;
    else waitAfter[block]! += time;
  });
}

/** Stages side by side are rare, so their blocks are built anew. */
function setBeside({ chains, project, load, calendar, timeOf, today }: ToSet): void {
  const steps = load.steps.map((step, place): LoadStep =>
    step.kind === 'work' ? { ...step, minutes: timeOf(place) } : { ...step, days: timeOf(place) },
  );
  const own = stepChainsOf({ ...today, projects: [{ ...load, steps }] }, calendar);
  const first = chains.firstBlock[project]!;
  chains.minutes.set(own.minutes, first);
  chains.waitBefore.set(own.waitBefore, first);
  chains.waitAfter.set(own.waitAfter, first);
  chains.groupWait.set(own.groupWait, first);
  chains.readyDay[project] = own.readyDay[0]!;
}

/** Whole minutes, or whole days. A wait that has lasted longer than this factor gives ends tomorrow: it has not ended yet. */
function sampledTime(step: LoadStep, factor: number, already: number): number {
  if (step.kind === 'work') return step.minutes === 0 ? 0 : Math.max(1, Math.round(step.minutes * factor));
  if (step.days + already === 0) return 0;
  const days = Math.round((step.days + already) * factor) - already;
  return already > 0 ? Math.max(1, days) : Math.max(0, days);
}
