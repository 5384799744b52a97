import { planningLoop } from './planning-loop';
import type { PlanningNews, PlanningOrder } from './planning-protocol';

/** The planning loop. This file runs in its own thread, so that the window never waits for a plan. */
const receive = planningLoop({
  now: () => performance.now(),
  later: (next) => {
    setTimeout(next);
  },
  send: (news: PlanningNews) => {
    // In a worker `postMessage` takes no origin; the types in use here are those of a window.
    (postMessage as (message: PlanningNews) => void)(news);
  },
});

addEventListener('message', (event: MessageEvent<PlanningOrder>) => receive(event.data));
