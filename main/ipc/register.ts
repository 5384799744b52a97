import { ipcMain, type IpcMainInvokeEvent } from 'electron';
import { CALL_CHANNEL } from '#core/contract/wires';
import { type ChannelName, channels } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import { messageOf } from '#core/message-of';
import { failure, type Result } from '#core/result';
import { isOwnAddress } from '../security/navigation';

/** Answers a call whose sender and name are checked. The input is checked where it is used. */
export type Answer = (
  name: ChannelName,
  input: unknown,
  event: IpcMainInvokeEvent,
) => Promise<Result<unknown, Problem>>;

/**
 * The only way from the page into the main process. The sender must be the top frame of our own page, and the call must be in the
 * contract. Anything that goes wrong comes back as data.
 */
export function registerCalls(answer: Answer): void {
  ipcMain.handle(CALL_CHANNEL, async (event, name: unknown, input: unknown) => {
    if (!isTrusted(event))
      return failure<Problem>({ code: 'unexpected', detail: 'The call came from elsewhere.' });
    if (!isChannelName(name))
      return failure<Problem>({ code: 'unexpected', detail: 'There is no such call.' });
    try {
      return await answer(name, input, event);
    } catch (error) {
      return failure<Problem>({
        code: 'unexpected',
        detail: messageOf(error),
      });
    }
  });
}

function isTrusted(event: IpcMainInvokeEvent): boolean {
  const frame = event.senderFrame;
  return frame !== null && frame === event.sender.mainFrame && isOwnAddress(frame.url);
}

function isChannelName(name: unknown): name is ChannelName {
  return typeof name === 'string' && Object.hasOwn(channels, name);
}
