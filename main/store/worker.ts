import { type MessagePort, parentPort, workerData } from 'node:worker_threads';
import { openDemo } from '../demo/open-demo';
import { answerCall } from './answer-call';
import type { StoreContext } from './store-context';
import { answerInnerCall, isInnerName } from './inner-calls';
import { openContext } from './open-context';
import { foldLog } from './open-store';
import type { CallMessage, StartOptions, WorkerMessage } from './protocol';

/** Without a call for so long, the write-ahead log is folded into the file: then no change has to wait for that. */
const REST_MS = 300;

/** The store's thread: one call after the other, each answered after its transaction is on the disk. */
function serve(port: MessagePort, context: StoreContext): void {
  let rest: NodeJS.Timeout | undefined;
  port.on('message', ({ id, name, input }: CallMessage) => {
    const answer = isInnerName(name)
      ? answerInnerCall(context, name, input)
      : answerCall(context, name, input);
    port.postMessage({ kind: 'answer', id, answer } satisfies WorkerMessage);
    clearTimeout(rest);
    if (name === 'inner:close') port.close();
    else rest = setTimeout(() => foldLog(context.store), REST_MS).unref();
  });
}

if (parentPort !== null) {
  const options = workerData as StartOptions;
  const opened = options.isDemo ? openDemo(options) : openContext(options);
  if (opened.ok) serve(parentPort, opened.value);
  const result = opened.ok ? ({ ok: true, value: null } as const) : opened;
  parentPort.postMessage({ kind: 'opened', result } satisfies WorkerMessage);
}
