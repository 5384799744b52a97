import type { PlanningNews, PlanningOrder } from './planning-protocol';
import workerAddress from './planning-worker?worker&url';

export interface PlanningWorker {
  readonly send: (order: PlanningOrder) => void;
  /** Ends the thread, even in the middle of a search. */
  readonly end: () => void;
}

/** The page may start scripts from trusted addresses only; this policy trusts the one address built into it. */
interface TrustedTypes {
  readonly createPolicy: (
    name: string,
    rules: { readonly createScriptURL: (address: string) => string },
  ) => { readonly createScriptURL: (address: string) => string };
}
const { trustedTypes } = window as { readonly trustedTypes?: TrustedTypes };
const policy = trustedTypes?.createPolicy('planning-worker', {
  createScriptURL: (address) => {
    if (address !== workerAddress) throw new TypeError('Not the planning worker');
    return address;
  },
});

/** Starts the planner in its own thread. */
export function startPlanningWorker(onNews: (news: PlanningNews) => void): PlanningWorker {
  const address = policy?.createScriptURL(workerAddress) ?? workerAddress;
  const worker = new Worker(address, { type: 'module', name: 'cutting planner' });
  worker.addEventListener('message', (event: MessageEvent<PlanningNews>) => onNews(event.data));
  return { send: (order) => worker.postMessage(order), end: () => worker.terminate() };
}
