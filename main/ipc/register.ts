import { ipcMain, type IpcMainInvokeEvent } from 'electron';
import { type ChannelName, channels } from '#core/contract/channels';
import type { FieldProblem, Problem } from '#core/contract/problem';
import { failure, type Result } from '#core/result';
import { isOwnAddress } from '../security/navigation';

/** Answers a call whose name and input have been checked. */
export type Answer = (
  name: ChannelName,
  input: unknown,
  event: IpcMainInvokeEvent,
) => Promise<Result<unknown, Problem>>;

/**
 * The one door between page and main process: the sender must be the top frame of our own page, the name one of the
 * contract's, the input what that name asks for. Everything that goes wrong comes back as data.
 */
export function registerCalls(answer: Answer): void {
  ipcMain.handle('ringbound:call', async (event, name: unknown, input: unknown) => {
    if (!isTrusted(event))
      return failure<Problem>({ code: 'unexpected', detail: 'The call came from elsewhere.' });
    if (!isChannelName(name))
      return failure<Problem>({ code: 'unexpected', detail: 'There is no such call.' });
    const checked = channels[name].input.safeParse(input);
    if (!checked.success)
      return failure<Problem>({ code: 'invalid-input', fields: checked.error.issues.map(toField) });
    try {
      return await answer(name, checked.data, event);
    } catch (error) {
      return failure<Problem>({
        code: 'unexpected',
        detail: error instanceof Error ? error.message : String(error),
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

function toField(issue: { path: PropertyKey[]; message: string; input?: unknown }): FieldProblem {
  return {
    path: issue.path.map((part) => (typeof part === 'number' ? part : String(part))),
    read: issue.input === undefined ? '' : JSON.stringify(issue.input).slice(0, 80),
    expected: issue.message,
  };
}
