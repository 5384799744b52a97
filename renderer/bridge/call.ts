import { type MenuItem, menuItemSchema } from '#core/contract/menu';
import type { ChannelAnswer, ChannelInput, ChannelName } from '#core/contract/channels';

/** What the preload exposes, and all of it. */
interface Ringbound {
  readonly call: (name: string, input: unknown) => Promise<unknown>;
  readonly onMenu: (listener: (item: unknown) => void) => () => void;
}

declare global {
  interface Window {
    readonly ringbound: Ringbound;
  }
}

/** One call across the bridge. It never rejects: a bridge that breaks is the problem `unexpected`. */
export async function call<Name extends ChannelName>(
  name: Name,
  input: ChannelInput<Name>,
): Promise<ChannelAnswer<Name>> {
  try {
    return (await window.ringbound.call(name, input)) as ChannelAnswer<Name>;
  } catch (error) {
    const detail = error instanceof Error ? error.message : String(error);
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
