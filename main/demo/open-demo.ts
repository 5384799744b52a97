import type { ChannelOutput, StoreChannelName } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import { failure, type Result } from '#core/result';
import { addDays } from '#core/units/calendar-date';
import { answerCall } from '../store/thread/answer-call';
import type { StoreContext } from '../store/thread/store-context';
import { forgetChanges } from '../store/history/changes';
import { writeTransaction } from '../store/base/handles';
import { openContext } from '../store/thread/open-context';
import { closeStore } from '../store/opening/open-store';
import type { StartOptions } from '../store/thread/protocol';
import { systemClockAndIds } from '../store/base/clock-and-ids';
import { fillDemo } from './fill-demo';

const DAY_MS = 86_400_000;

/** Opens a new file as the demo workshop and tells it its story, each part of it on its own day before today. */
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
    return failure({ code: 'unexpected', detail: error instanceof Error ? error.message : String(error) });
  }
}

function answerOrThrow<Name extends StoreChannelName>(
  context: StoreContext,
  name: Name,
  input: unknown,
): ChannelOutput<Name> {
  const answer = answerCall(context, name, input);
  if (!answer.ok) throw new Error(`The demo could not be laid out: ${name} ${JSON.stringify(answer.error)}`);
  return answer.value as ChannelOutput<Name>;
}
