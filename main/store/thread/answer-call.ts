import { type ChannelInput, storeChannels, type StoreChannelName } from '#core/contract/channels';
import { checkInput } from '#core/contract/check-input';
import type { Problem } from '#core/contract/problem';
import { messageOf } from '#core/message-of';
import { failure, type Result } from '#core/result';
import type { StoreContext } from './store-context';
import { readTransaction } from '../base/handles';
import { storeHandlers } from './store-handlers';
import { UnreadableRow } from '../base/rows';

type Answer = Result<unknown, Problem>;

/** Checks a call's input and answers it. Anything that goes wrong comes back as a problem, and nothing has changed. */
export function answerCall(context: StoreContext, name: string, rawInput: unknown): Answer {
  if (!isStoreChannel(name))
    return failure<Problem>({ code: 'unexpected', detail: 'There is no such call.' });
  try {
    const input = checkInput<unknown>(storeChannels[name].input, rawInput);
    if (!input.ok) return input;
    const handle = storeHandlers[name] as (
      context: StoreContext,
      input: ChannelInput<StoreChannelName>,
    ) => Answer;
    const answer = (): Answer => handle(context, input.value as ChannelInput<StoreChannelName>);
    // A read sees one state of the file. A write starts its own transaction.
    return storeChannels[name].access === 'read' ? readTransaction(context.store, answer) : answer();
  } catch (error) {
    if (error instanceof UnreadableRow) return failure(error.problem);
    return failure<Problem>({
      code: 'unexpected',
      detail: messageOf(error),
    });
  }
}

function isStoreChannel(name: string): name is StoreChannelName {
  return Object.hasOwn(storeChannels, name);
}
