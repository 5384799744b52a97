import { act, cleanup, fireEvent, render } from '@testing-library/react';
import { beforeEach, expect, onTestFinished, test } from 'vitest';
import { type ChannelName, channels, type StoreChannelName, storeChannels } from '#core/contract/channels';
import { SCREENS } from '#core/contract/screens';
import { nameAlone } from '#core/domain/contact';
import { App } from '#renderer/app/app';
import { givenModalDialogs } from '#test/helpers/page-on-store';
import { addProject, addStock, openWorkshop } from '#test/helpers/workshop';

/** A question or a look, not an entry: these start over with their page. */
const NOT_ENTRIES = [/^Find/, /^Search/];

/** What a field takes as typed without reading a value from it; dates and colors have a control of the system. */
const TYPED: Readonly<Record<string, string>> = { date: '2031-05-06', month: '2031-05', color: '#123456' };

const FIELDS = 'input:not([type=checkbox], [type=radio], [type=file], [type=range]), textarea';

/** A notebook with one of everything, which answers every read and refuses every write. */
function notebook() {
  const workshop = openWorkshop();
  const { projectId, stages } = addProject(workshop);
  const { fabricId } = addStock(workshop);
  const { contactId } = workshop.get('contact:save', {
    contactId: null,
    details: nameAlone('Copper Needle', 'longarm'),
  });
  const isOfStore = (name: ChannelName): name is StoreChannelName => name in storeChannels;
  const call = (name: ChannelName, input: never) =>
    Promise.resolve(
      channels[name].access === 'read' && isOfStore(name)
        ? workshop.ask(name, input)
        : { ok: false, error: { code: 'not-found', kind: 'project' } },
    );
  const bridge = { call, onMenu: () => () => undefined };
  Object.defineProperty(window, 'ringbound', { value: bridge, configurable: true });
  onTestFinished(() => {
    Reflect.deleteProperty(window, 'ringbound');
  });
  const ids = { projectId, fabricId, contactId };
  return SCREENS.flatMap(({ path, page }) => {
    const own = path.replace(
      /:(project|fabric|contact)Id/g,
      (name) => ids[name.slice(1) as keyof typeof ids],
    );
    const addresses = path.includes(':stageId') ? stages.map(({ id }) => own.replace(':stageId', id)) : [own];
    return addresses.map((address) => ({ address, page }));
  });
}

/** Draws the program as after a restart: nothing is left but what is stored. */
async function start(address: string): Promise<void> {
  cleanup();
  window.location.hash = `#/${address}`;
  render(<App />);
  await settled();
}

/** Waits until what is drawn no longer changes. */
async function settled(): Promise<void> {
  const changes = new MutationObserver(() => undefined);
  changes.observe(document.body, { subtree: true, childList: true, attributes: true, characterData: true });
  for (let same = 0; same < 2;) {
    await act(() => new Promise((done) => setTimeout(done, 0)));
    const isStill = changes.takeRecords().length === 0 && document.querySelector('main h1') !== null;
    same = isStill ? same + 1 : 0;
  }
  changes.disconnect();
}

const dialog = () => document.querySelector<HTMLElement>('dialog[open]');
const frame = () => [...document.querySelectorAll<HTMLElement>('main, [data-main-action]')];

/** The fields of the open dialog, or else of the page. */
function fields(): readonly HTMLInputElement[] {
  const opened = dialog();
  return (opened === null ? frame() : [opened])
    .flatMap((place) => [...place.querySelectorAll<HTMLInputElement>(FIELDS)])
    .filter((field) => !field.readOnly && !field.disabled)
    .filter((field) => !NOT_ENTRIES.some((one) => one.test(nameOf(field))));
}

function nameOf(field: HTMLInputElement): string {
  return (field.labels?.[0]?.textContent ?? field.getAttribute('aria-label') ?? '').trim();
}

/** What every field holds, by its place and name. */
const entered = (): readonly string[] =>
  fields().map((field, index) => `${String(index)} ${nameOf(field)}: ${field.value}`);

/** Types into every field of a kind not typed into before, and leaves none of them. */
async function typeInto(seen: Set<string>, form: string): Promise<number> {
  let count = 0;
  // Finding the fields anew after each would take most of the time of this test; one that went away is left out.
  for (const [index, field] of fields().entries()) {
    const key = `${form} ${nameOf(field)}`;
    if (!field.isConnected || seen.has(key)) continue;
    seen.add(key);
    count += 1;
    fireEvent.change(field, { target: { value: TYPED[field.type] ?? `zz ${String(index)}` } });
  }
  await settled();
  return count;
}

const buttons = () =>
  frame()
    .flatMap((place) => [...place.querySelectorAll('button')])
    .filter((button) => !button.disabled && !button.hasAttribute('aria-expanded'));

/** Whether pressing the first button with these words opens a dialog. */
async function opens(words: string): Promise<boolean> {
  const button = buttons().find(({ textContent }) => textContent === words);
  if (button === undefined) return false;
  fireEvent.click(button);
  await settled();
  return dialog() !== null;
}

async function pressInDialog(...words: readonly string[]): Promise<boolean> {
  const all = [...(dialog()?.querySelectorAll('button') ?? [])];
  const button = all.find(({ textContent }) => words.includes(textContent));
  if (button !== undefined) fireEvent.click(button);
  await settled();
  return button !== undefined;
}

/** Throws away what was typed: all of a form by its button; of a field outside of a form, by Escape. */
async function discard(): Promise<void> {
  if (await pressInDialog('Discard what you entered')) return;
  for (const field of fields()) fireEvent.keyDown(field, { key: 'Escape' });
  await settled();
}

beforeEach(givenModalDialogs);

test('what is typed anywhere is there again after a crash, and entries of a dialog can be discarded', async () => {
  const [typedInto, pressed] = [new Set<string>(), new Set<string>()];
  const [pages, dialogs] = [new Set<string>(), new Set<string>()];
  for (const { address, page } of notebook()) {
    await start(address);
    if ((await typeInto(typedInto, page)) > 0) {
      const before = entered();
      await start(address);
      expect(entered(), page).toEqual(before);
      pages.add(page);
    }
    window.localStorage.clear();
    await start(address);
    for (const opener of new Set(buttons().map(({ textContent }) => textContent))) {
      const form = `${page}, ${opener}`;
      if (pressed.has(form)) continue;
      pressed.add(form);
      if (!(await opens(opener))) continue;
      const empty = entered();
      if ((await typeInto(typedInto, form)) > 0) {
        const before = entered();
        await start(address);
        expect(await opens(opener), form).toBe(true);
        expect(entered(), form).toEqual(before);
        await discard();
        expect(entered(), form).toEqual(empty);
        dialogs.add(form);
      }
      await pressInDialog('Cancel', 'Close');
    }
    window.localStorage.clear();
  }
  // So that the walk cannot pass by walking nowhere.
  expect(pages).toContain('workshop/workshop-page');
  expect(pages).toContain('stage/stage-page');
  expect(dialogs.size).toBeGreaterThan(25);
  expect(typedInto.size).toBeGreaterThan(200);
}, 300_000);
