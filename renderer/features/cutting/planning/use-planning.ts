import { startTransition, useCallback, useEffect, useRef, useState } from 'react';
import type { CuttingJob } from '#core/cutting/tree/cutting-job';
import type { JobAnswer } from '#core/cutting/search/plan-cutting';
import type { PlanningNews } from './planning-protocol';
import { type PlanningWorker, startPlanningWorker } from './start-worker';

/** How long the planner searches unless the maker stops it or asks for more. */
const USUAL_MILLISECONDS = 2_000;
export const LONGER_MILLISECONDS = 10_000;

export interface Planning {
  /** The best plans so far for the current job; null until there are any. */
  readonly answer: JobAnswer | null;
  readonly state: PlanningNews['state'];
  readonly milliseconds: number;
  readonly stop: () => void;
  readonly searchOn: () => void;
}

/** Plans a job in the background. A changed job replaces the last one at once; null stops the search. */
export function usePlanning(job: CuttingJob | null): Planning {
  const [news, setNews] = useState<{ readonly of: string; readonly news: PlanningNews } | null>(null);
  const worker = useRef<PlanningWorker | null>(null);
  const asked = useRef({ search: 0, key: '' });
  const key = job === null ? '' : JSON.stringify(job);
  useEffect(
    () => () => {
      worker.current?.end();
      worker.current = null;
      asked.current = { search: 0, key: '' };
    },
    [],
  );
  useEffect(() => {
    if (asked.current.key === key) return;
    const search = asked.current.search + 1;
    asked.current = { search, key };
    if (key === '') {
      worker.current?.send({ order: 'stop' });
      return;
    }
    worker.current ??= startPlanningWorker((latest) => {
      if (latest.search !== asked.current.search) return;
      const of = asked.current.key;
      // A thousand patches take a while to draw; in a transition the maker’s next action comes first.
      startTransition(() => setNews({ of, news: latest }));
    });
    const asking = JSON.parse(key) as CuttingJob;
    worker.current.send({ order: 'plan', search, job: asking, milliseconds: USUAL_MILLISECONDS });
  }, [key]);
  const stop = useCallback(() => worker.current?.send({ order: 'stop' }), []);
  const searchOn = useCallback(
    () => worker.current?.send({ order: 'search-on', milliseconds: LONGER_MILLISECONDS }),
    [],
  );
  const current = news?.of === key ? news.news : null;
  return {
    answer: current?.answer ?? null,
    state: current?.state ?? 'searching',
    milliseconds: current?.milliseconds ?? 0,
    stop,
    searchOn,
  };
}
