import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useLayoutEffect, useRef, useState } from 'react';
import { useRead, useWrite } from '#renderer/bridge/query';
import { UndoBar } from '#renderer/ui/page/undo-bar';

/** What the line at the bottom of the window is about: nothing until the first change since the window opened. */
type LastStep =
  | { readonly step: 'none' | 'change' }
  | { readonly step: 'undo' | 'redo' | 'refused'; readonly says: string };

export interface LastChange {
  readonly bar: React.ReactNode;
  readonly undo: () => void;
  readonly redo: () => void;
}

/** The bar with the last change in the store's words, and the calls to undo and redo. */
export function useLastChange(): LastChange {
  const { value: state } = useRead('change:state', {});
  const [last, setLast] = useState<LastStep>({ step: 'none' });
  const undoing = useWrite('change:undo');
  const redoing = useWrite('change:redo');
  useAfterEveryWrite(() => setLast({ step: 'change' }));

  const undo = () => {
    void undoing.write({}).then((answer) => {
      setLast(
        answer.ok ? { step: 'undo', says: answer.value.says } : { step: 'refused', says: 'Nothing to undo' },
      );
    });
  };
  const redo = () => {
    void redoing.write({}).then((answer) => {
      setLast(
        answer.ok ? { step: 'redo', says: answer.value.says } : { step: 'refused', says: 'Nothing to redo' },
      );
    });
  };
  const canUndo = state !== undefined && state.undo !== null;
  const canRedo = state !== undefined && state.redo !== null;
  const says = lastWords(last, state?.undo ?? null);
  return {
    bar: <UndoBar says={says} canUndo={canUndo} canRedo={canRedo} onUndo={undo} onRedo={redo} />,
    undo,
    redo,
  };
}

function lastWords(last: LastStep, undoWords: string | null): string | null {
  switch (last.step) {
    case 'none':
      return null;
    case 'change':
      return undoWords;
    case 'undo':
      return `Undone: ${last.says}`;
    case 'redo':
      return `Redone: ${last.says}`;
    case 'refused':
      return last.says;
  }
}

/** Calls `onWrite` after every successful change of the workshop, except undo and redo. */
function useAfterEveryWrite(onWrite: () => void): void {
  const client = useQueryClient();
  const listener = useRef(onWrite);
  useLayoutEffect(() => {
    listener.current = onWrite;
  });
  useEffect(
    () =>
      client.getMutationCache().subscribe((event) => {
        if (event.type !== 'updated' || event.action.type !== 'success') return;
        const name = event.mutation.options.mutationKey?.[1];
        const answer = event.mutation.state.data as { readonly ok: boolean } | undefined;
        if (answer?.ok === true && typeof name === 'string' && !/^(?:change|shell):/.test(name))
          listener.current();
      }),
    [client],
  );
}
