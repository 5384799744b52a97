import { QueryClientProvider } from '@tanstack/react-query';
import { render } from '@testing-library/react';
import type { ReactNode } from 'react';
import { MemoryRouter, useLocation } from 'react-router';
import { onTestFinished } from 'vitest';
import type { StoreChannelName } from '#core/contract/channels';
import { makeQueryClient } from '#renderer/bridge/query';
import { PageFrameContext } from '#renderer/ui/page/page';
import { openWorkshop, type TestWorkshop } from './workshop';

/** A workshop on a real file that answers the pages under test through the window's bridge. */
export function workshopBehindWindow(): TestWorkshop {
  const workshop = openWorkshop();
  const bridge = {
    call: (name: StoreChannelName, input: never) => Promise.resolve(workshop.ask(name, input)),
    onMenu: () => () => undefined,
  };
  Object.defineProperty(window, 'ringbound', { value: bridge, configurable: true });
  onTestFinished(() => {
    Reflect.deleteProperty(window, 'ringbound');
  });
  return workshop;
}

/** Renders a page in a router at `address`, with the place for its main action. */
export function renderPage(page: ReactNode, address = '/'): void {
  givenModalDialogs();
  const actionPlace = document.body.appendChild(document.createElement('div'));
  onTestFinished(() => actionPlace.remove());
  render(
    <QueryClientProvider client={makeQueryClient()}>
      <MemoryRouter initialEntries={[address]}>
        <PageFrameContext value={{ actionPlace, visit: null }}>{page}</PageFrameContext>
        <Address />
      </MemoryRouter>
    </QueryClientProvider>,
  );
}

/** The router's address, for the test to read. */
function Address() {
  const { pathname, search } = useLocation();
  return <output data-testid="address">{`${pathname}${search}`}</output>;
}

/** jsdom has dialog elements but cannot open them. */
export function givenModalDialogs(): void {
  HTMLDialogElement.prototype.showModal = function show(this: HTMLDialogElement) {
    this.open = true;
  };
  HTMLDialogElement.prototype.close = function close(this: HTMLDialogElement) {
    this.open = false;
  };
}
