import { z } from 'zod';
import { PLACES } from './screens';

/** What the menu asks of the page: to open an address, or to carry out a command. */
export const menuItemSchema = z.union([
  z.object({ open: z.string() }).readonly(),
  z.object({ command: z.enum(['undo', 'redo', 'show-shortcuts']) }).readonly(),
]);
export type MenuItem = z.infer<typeof menuItemSchema>;

export interface MenuEntry {
  readonly label: string;
  readonly item: MenuItem;
  /** As Electron writes an accelerator. */
  readonly key: string;
  /** The page listens for the key itself, since it knows where the caret is. */
  readonly isPageKey?: boolean;
}

const NEW_THINGS: readonly MenuEntry[] = [
  { label: 'New project', item: { open: '/projects/new' }, key: 'CmdOrCtrl+N' },
  { label: 'New fabric', item: { open: '/stash?new' }, key: 'CmdOrCtrl+Shift+N' },
];

const CHANGES: readonly MenuEntry[] = [
  { label: 'Undo', item: { command: 'undo' }, key: 'CmdOrCtrl+Z', isPageKey: true },
  { label: 'Redo', item: { command: 'redo' }, key: 'CmdOrCtrl+Shift+Z', isPageKey: true },
];

const GO: readonly MenuEntry[] = PLACES.map(({ path, words }, index) => ({
  label: words,
  item: { open: path },
  key: `CmdOrCtrl+${index + 1}`,
}));

const HELP: readonly MenuEntry[] = [
  { label: 'Keyboard shortcuts', item: { command: 'show-shortcuts' }, key: 'F1' },
];

/** The entries of the menu that the page carries out, by the menu they are in. */
export const MENU = { notebook: NEW_THINGS, edit: CHANGES, go: GO, help: HELP } as const;
