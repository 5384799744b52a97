import { nativeTheme } from 'electron';
import {
  type ChannelAnswer,
  type ChannelInput,
  type ChannelName,
  type ShellChannelName,
  type StoreChannelName,
} from '#core/contract/channels';
import { checkInput } from '#core/contract/check-input';
import { shellChannels } from '#core/contract/workshop';
import type { Theme } from '#core/domain/workshop';
import type { Session } from '../session';
import type { Answer } from './register';
import { type ShellContext, shellHandlers } from './shell-handlers';

/**
 * Answers calls about windows, files and folders here and sends all others to the store's thread, which checks their input. Calls
 * `onWorkshopChange` after the workshop's settings change.
 */
export function answerFrom(session: Session, onWorkshopChange: () => void): Answer {
  return async (name, input, event) => {
    if (isShellCall(name)) {
      const checked = checkInput<unknown>(shellChannels[name].input, input);
      if (!checked.ok) return checked;
      const handle = shellHandlers[name] as (
        input: unknown,
        context: ShellContext,
      ) => Promise<ChannelAnswer<ChannelName>>;
      return handle(checked.value, { session, contents: event.sender });
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

/** Sets the theme of the window frame, the menu and the system's dialogs. The page sets its own colors. */
function followTheme(name: StoreChannelName, input: unknown, value: unknown): void {
  const source = name === 'workshop:opening' ? value : name === 'workshop:change' ? input : null;
  if (source !== null) nativeTheme.themeSource = (source as { workshop: { theme: Theme } }).workshop.theme;
}
