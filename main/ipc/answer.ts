import { nativeTheme } from 'electron';
import {
  type ChannelAnswer,
  type ChannelInput,
  type ChannelName,
  type ShellChannelName,
  type StoreChannelName,
} from '#core/contract/channels';
import { shellChannels } from '#core/contract/workshop';
import type { Theme } from '#core/domain/workshop';
import type { Session } from '../session';
import type { Answer } from './register';
import { type ShellContext, shellHandlers } from './shell-handlers';

/**
 * Sends a checked call to the store's thread, or answers it here where it is about windows, files and folders. Tells when the
 * workshop's own settings have changed.
 */
export function answerFrom(session: Session, onWorkshopChange: () => void): Answer {
  return async (name, input, event) => {
    if (isShellCall(name)) {
      const handle = shellHandlers[name] as (
        input: unknown,
        context: ShellContext,
      ) => Promise<ChannelAnswer<ChannelName>>;
      return handle(input, { session, contents: event.sender });
    }
    const answer = await session.store().call(name, input as ChannelInput<StoreChannelName>);
    if (answer.ok) followTheme(name, input, answer.value);
    if (answer.ok && name === 'workshop:change') onWorkshopChange();
    return answer;
  };
}

function isShellCall(name: ChannelName): name is ShellChannelName {
  return Object.hasOwn(shellChannels, name);
}

/** The page colors itself; the window's frame, its menu and the system's dialogs follow the workshop's choice of light. */
function followTheme(name: StoreChannelName, input: unknown, value: unknown): void {
  const told = name === 'workshop:opening' ? value : name === 'workshop:change' ? input : null;
  if (told !== null) nativeTheme.themeSource = (told as { workshop: { theme: Theme } }).workshop.theme;
}
