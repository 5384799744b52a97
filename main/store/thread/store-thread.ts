import { Worker } from 'node:worker_threads';
import type { Problem } from '#core/contract/problem';
import { messageOf } from '#core/message-of';
import { failure, type Result } from '#core/result';
import type { CallMessage, StartOptions, WorkerMessage } from './protocol';

export interface StoreThread {
  readonly ask: (name: CallMessage['name'], input: unknown) => Promise<Result<unknown, Problem>>;
  /** Resolves when the thread has ended, for any reason. */
  readonly ended: Promise<void>;
  readonly stop: () => Promise<void>;
}

/** Starts a thread on the workshop. The promise settles once the workshop is open or has failed to open. */
export function startThread(options: StartOptions): Promise<Result<StoreThread, Problem>> {
  const worker = newWorker(options);
  const waiting = new Map<number, (answer: Result<unknown, Problem>) => void>();
  let lastId = 0;
  let fault = 'The store has stopped.';
  let hasEnded = false;
  worker.on('error', (error) => (fault = messageOf(error)));
  const ended = new Promise<void>((resolve) => {
    worker.on('exit', () => {
      hasEnded = true;
      for (const settle of waiting.values()) settle(failure<Problem>({ code: 'unexpected', detail: fault }));
      waiting.clear();
      resolve();
    });
  });

  const thread: StoreThread = {
    ended,
    ask: (name, input) =>
      new Promise((resolve) => {
        if (hasEnded) {
          resolve(failure<Problem>({ code: 'unexpected', detail: fault }));
          return;
        }
        lastId += 1;
        waiting.set(lastId, resolve);
        worker.postMessage({ id: lastId, name, input } satisfies CallMessage);
      }),
    stop: async () => {
      await worker.terminate();
    },
  };

  return new Promise((resolve) => {
    void ended.then(() => resolve(failure<Problem>({ code: 'unexpected', detail: fault })));
    worker.on('message', (message: WorkerMessage) => {
      if (message.kind === 'opened') {
        resolve(message.result.ok ? { ok: true, value: thread } : message.result);
        return;
      }
      waiting.get(message.id)?.(message.answer);
      waiting.delete(message.id);
    });
  });
}

/** The built worker is beside the built main file. Tests and benches run from source, where tsx loads the TypeScript. */
function newWorker(workerData: StartOptions): Worker {
  if (!import.meta.url.endsWith('.ts'))
    return new Worker(new URL('./worker.js', import.meta.url), { workerData });
  const source = JSON.stringify(new URL('./worker.ts', import.meta.url).href);
  const code = `import('tsx/esm/api').then(({ register }) => { register(); return import(${source}); })`;
  return new Worker(code, { workerData, eval: true, execArgv: [] });
}
