import { startTransition, useCallback, useEffect, useRef, useState } from 'react';
import type { CuttingJob } from '#core/cutting/tree/cutting-job';
import type { JobAnswer } from '#core/cutting/search/plan-cutting';
import type { PlanningNews } from './planning-protocol';
import { type PlanningWorker, startPlanningWorker } from './start-worker';

/** How long the planner searches unless it is stopped or told to search on. */
export const USUAL_MILLISECONDS = 2_000;
export const LONGER_MILLISECONDS = 10_000;

export interface Planning {
  /** The best plans so far for exactly the job asked about; null for the first moments. */
  readonly answer: JobAnswer | null;
  readonly state: PlanningNews['state'];
  readonly milliseconds: number;
  readonly stop: () => void;
  readonly searchOn: () => void;
}

/** Plans a job in the background; a job that differs takes the place of the last at once. Null asks for nothing. */
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
      worker.current?.ask({ order: 'stop' });
      return;
    }
    worker.current ??= startPlanningWorker((heard) => {
      if (heard.search !== asked.current.search) return;
      const of = asked.current.key;
      // A thousand patches take a while to draw: whatever the maker does meanwhile comes first.
      startTransition(() => setNews({ of, news: heard }));
    });
    const asking = JSON.parse(key) as CuttingJob;
    worker.current.ask({ order: 'plan', search, job: asking, milliseconds: USUAL_MILLISECONDS });
  }, [key]);
  const stop = useCallback(() => worker.current?.ask({ order: 'stop' }), []);
  const searchOn = useCallback(
    () => worker.current?.ask({ order: 'search-on', milliseconds: LONGER_MILLISECONDS }),
    [],
  );
  const current = news !== null && news.of === key ? news.news : null;
  return {
    answer: current?.answer ?? null,
    state: current?.state ?? 'searching',
    milliseconds: current?.milliseconds ?? 0,
    stop,
    searchOn,
  };
}
