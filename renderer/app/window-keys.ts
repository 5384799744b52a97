import { useEffect, useLayoutEffect, useRef } from 'react';
import { useNavigate } from 'react-router';
import type { MenuItem } from '#core/contract/menu';
import { onMenu } from '#renderer/bridge/call';
import { isTextField } from './text-field';

export interface WindowCommands {
  readonly undo: () => void;
  readonly redo: () => void;
  readonly showShortcuts: () => void;
}

/** Carries out menu items and the keys that work everywhere. In a text field, undo and redo belong to the field. */
export function useWindowKeys(commands: WindowCommands): void {
  const navigate = useNavigate();
  const latest = useRef(commands);
  useLayoutEffect(() => {
    latest.current = commands;
  });
  useEffect(() => {
    const carryOut = (item: MenuItem): void => {
      if ('open' in item) void navigate(item.open);
      else if (item.command === 'show-shortcuts') latest.current.showShortcuts();
      else undoOrRedo(item.command, latest.current);
    };
    const hearKey = (event: KeyboardEvent): void => {
      const isCommand = event.ctrlKey || event.metaKey;
      if (isCommand && event.key === 'Enter') pressMainAction(event);
      const step = undoKey(event);
      if (step === null || isTextField(document.activeElement)) return;
      event.preventDefault();
      latest.current[step]();
    };
    window.addEventListener('keydown', hearKey);
    const stopMenu = onMenu(carryOut);
    return () => {
      window.removeEventListener('keydown', hearKey);
      stopMenu();
    };
  }, [navigate]);
}

function undoKey(event: KeyboardEvent): 'undo' | 'redo' | null {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return null;
  const key = event.key.toLowerCase();
  if (key === 'z') return event.shiftKey ? 'redo' : 'undo';
  return key === 'y' && event.ctrlKey ? 'redo' : null;
}

function undoOrRedo(item: 'undo' | 'redo', commands: WindowCommands): void {
  // The platform has no other call for the undo of a text field.
  if (isTextField(document.activeElement)) {
    // oxlint-disable-next-line typescript/no-deprecated
    document.execCommand(item);
  } else commands[item]();
}

/** Does nothing while a dialog is open. */
function pressMainAction(event: KeyboardEvent): void {
  if (document.querySelector('dialog[open]') !== null) return;
  const action = document.querySelector<HTMLElement>('[data-main-action] [data-look="main"]');
  if (action === null) return;
  event.preventDefault();
  if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
  action.click();
}
