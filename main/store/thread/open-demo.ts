import type { ChannelOutput, StoreChannelName } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import { messageOf } from '#core/message-of';
import { failure, type Result } from '#core/result';
import { addDays } from '#core/units/calendar-date';
import { answerCall } from './answer-call';
import type { StoreContext } from './store-context';
import { forgetChanges } from '../history/changes';
import { writeTransaction } from '../base/handles';
import { openContext } from './open-context';
import { closeStore } from '../opening/open-store';
import type { StartOptions } from './protocol';
import { systemClockAndIds } from '../base/clock-and-ids';
import { fillDemo } from '#main/demo/fill-demo';

const DAY_MS = 86_400_000;

/** Opens a new file as the demo workshop and fills it, each change dated on its own day before today. */
export function openDemo(options: StartOptions): Result<StoreContext, Problem> {
  let daysAgo = 0;
  const system = systemClockAndIds();
  const opened = openContext(options, {
    ...system,
    now: () => system.now() - daysAgo * DAY_MS,
    today: () => addDays(system.today(), -daysAgo),
  });
  if (!opened.ok) return opened;
  const context = opened.value;
  try {
    fillDemo({
      call: (name, input) => answerOrThrow(context, name, input),
      today: system.today(),
      setClock: (days) => {
        daysAgo = days;
      },
    });
    writeTransaction(context.store, forgetChanges);
    return opened;
  } catch (error) {
    closeStore(context.store);
    return failure({ code: 'unexpected', detail: messageOf(error) });
  }
}

function answerOrThrow<Name extends StoreChannelName>(
  context: StoreContext,
  name: Name,
  input: unknown,
): ChannelOutput<Name> {
  const answer = answerCall(context, name, input);
  if (!answer.ok) throw new Error(`The demo could not be filled: ${name} ${JSON.stringify(answer.error)}`);
  return answer.value as ChannelOutput<Name>;
}
