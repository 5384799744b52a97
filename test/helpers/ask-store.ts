import type { Page } from '@playwright/test';
import type { ChannelAnswer, ChannelInput, ChannelName, ChannelOutput } from '#core/contract/channels';

/** Makes a call through the page's own bridge; throws when the answer is a problem. */
export async function askStore<Name extends ChannelName>(
  page: Page,
  name: Name,
  input: ChannelInput<Name>,
): Promise<ChannelOutput<Name>> {
  const asked = { name: name as string, input: input as unknown };
  const answer = (await page.evaluate((call) => {
    const bridge = (
      window as unknown as { ringbound: { call: (name: string, input: unknown) => Promise<unknown> } }
    ).ringbound;
    return bridge.call(call.name, call.input);
  }, asked)) as ChannelAnswer<Name>;
  if (!answer.ok) throw new Error(`${name}: ${JSON.stringify(answer.error)}`);
  return answer.value;
}
