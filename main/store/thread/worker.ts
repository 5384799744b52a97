import { type MessagePort, parentPort, workerData } from 'node:worker_threads';
import { openDemo } from './open-demo';
import { answerCall } from './answer-call';
import type { StoreContext } from './store-context';
import { answerMainProcessCall, isMainProcessCall } from './main-process-calls';
import type { ReadableStore } from '../base/handles';
import { openContext } from './open-context';
import { foldLog } from '../opening/open-store';
import { updateDigest } from '../stash/stash-digest';
import type { CallMessage, StartOptions, WorkerMessage } from './protocol';

/** How long the store must be idle before it does work ahead of time. */
const IDLE_MS = 300;

/** Serves one call after the other. Each is answered after its transaction is on the disk. */
function serve(port: MessagePort, context: StoreContext): void {
  let idleTimer: NodeJS.Timeout | undefined;
  port.on('message', ({ id, name, input }: CallMessage) => {
    const answer = isMainProcessCall(name)
      ? answerMainProcessCall(context, name, input)
      : answerCall(context, name, input);
    port.postMessage({ kind: 'answer', id, answer } satisfies WorkerMessage);
    clearTimeout(idleTimer);
    if (name === 'main:close') port.close();
    else idleTimer = setTimeout(() => workAhead(context.store), IDLE_MS).unref();
  });
}

/** Folds the write-ahead log into the file and adds up new bookings for the page of stash numbers. */
function workAhead(store: ReadableStore): void {
  if (!store.database.open) return;
  foldLog(store);
  updateDigest(store);
}

if (parentPort !== null) {
  const options = workerData as StartOptions;
  const opened = options.isDemo ? openDemo(options) : openContext(options);
  if (opened.ok) serve(parentPort, opened.value);
  const result = opened.ok ? ({ ok: true, value: null } as const) : opened;
  parentPort.postMessage({ kind: 'opened', result } satisfies WorkerMessage);
}
