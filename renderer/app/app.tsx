import { QueryClientProvider } from '@tanstack/react-query';
import { useEffect, useMemo, useState } from 'react';
import { RouterProvider } from 'react-router';
import type { Opening } from '#core/contract/workshop';
import { makeQueryClient } from '#renderer/bridge/query';
import { useOpening, useWorkshop } from '#renderer/bridge/workshop';
import { forgetOtherNotebooks, NotebookContext } from '#renderer/ui/base/draft';
import { DisplayContext } from '#renderer/ui/base/display';
import { makeRouter } from './routes';

/** Everything in the window. */
export function App() {
  const [client] = useState(makeQueryClient);
  return (
    <QueryClientProvider client={client}>
      <Notebook />
    </QueryClientProvider>
  );
}

function Notebook() {
  const { currency, settings, theme } = useWorkshop();
  const opening = useOpening();
  const notebook = opening === undefined ? '' : notebookName(opening);
  const [router] = useState(makeRouter);
  useEffect(() => {
    if (opening?.isDemo === true) forgetOtherNotebooks(DEMO, notebook);
  }, [opening?.isDemo, notebook]);
  useEffect(() => {
    document.documentElement.dataset['theme'] = theme;
  }, [theme]);
  const { unitSystem, inchStep } = settings;
  const display = useMemo(
    () => ({ length: { system: unitSystem, inchStep }, currency, locale: englishLocale() }),
    [currency, unitSystem, inchStep],
  );
  return (
    <DisplayContext value={display}>
      <NotebookContext value={notebook}>
        <RouterProvider router={router} />
      </NotebookContext>
    </DisplayContext>
  );
}

const DEMO = 'demo ';

/** The demo is made anew each time it is opened, so what was typed in an earlier one is of no use. */
function notebookName({ isDemo, fileId }: Opening): string {
  return `${isDemo ? DEMO : ''}${fileId}`;
}

/** The interface is in English; dates and numbers follow the first kind of English that the system prefers. */
function englishLocale(): string {
  return navigator.languages.find((language) => language.startsWith('en')) ?? 'en-GB';
}
