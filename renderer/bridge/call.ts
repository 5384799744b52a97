import { type MenuItem, menuItemSchema } from '#core/contract/menu';
import type { ChannelAnswer, ChannelInput, ChannelName } from '#core/contract/channels';
import { messageOf } from '#core/message-of';

/** Everything the preload script exposes. */
interface Ringbound {
  readonly call: (name: string, input: unknown) => Promise<unknown>;
  readonly onMenu: (listener: (item: unknown) => void) => () => void;
}

declare global {
  interface Window {
    readonly ringbound: Ringbound;
  }
}

/** Calls a channel. It never rejects: an error of the bridge becomes the problem `unexpected`. */
export async function call<Name extends ChannelName>(
  name: Name,
  input: ChannelInput<Name>,
): Promise<ChannelAnswer<Name>> {
  try {
    return (await window.ringbound.call(name, input)) as ChannelAnswer<Name>;
  } catch (error) {
    const detail = messageOf(error);
    return { ok: false, error: { code: 'unexpected', detail } };
  }
}

/** Calls `listener` for each item chosen in the window's menu; returns a function that stops listening. */
export function onMenu(listener: (item: MenuItem) => void): () => void {
  return window.ringbound.onMenu((sent) => {
    const item = menuItemSchema.safeParse(sent);
    if (item.success) listener(item.data);
  });
}
