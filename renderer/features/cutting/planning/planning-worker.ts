import { planningLoop } from './planning-loop';
import type { PlanningNews, PlanningOrder } from './planning-protocol';

/** This file runs in a thread of its own, so that the window never waits for a plan. */
const hear = planningLoop({
  now: () => performance.now(),
  later: (next) => {
    setTimeout(next);
  },
  tell: (news: PlanningNews) => {
    // In a worker the messages go to whoever made it; the page's own `postMessage` would ask for an origin.
    (postMessage as (message: PlanningNews) => void)(news);
  },
});

addEventListener('message', (event: MessageEvent<PlanningOrder>) => hear(event.data));
