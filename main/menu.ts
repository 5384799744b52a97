import { app, BrowserWindow, Menu, type MenuItemConstructorOptions } from 'electron';

/** An item that the page carries out; keys marked `isPageKey` are heard by the page itself, which knows where the caret is. */
interface PageItem {
  readonly label: string;
  readonly item: string;
  readonly key?: string;
  readonly isPageKey?: boolean;
}

const NOTEBOOK: readonly PageItem[] = [
  { label: 'New project', item: 'new-project', key: 'CmdOrCtrl+N' },
  { label: 'New fabric', item: 'new-fabric', key: 'CmdOrCtrl+Shift+N' },
];

const CHANGES: readonly PageItem[] = [
  { label: 'Undo', item: 'undo', key: 'CmdOrCtrl+Z', isPageKey: true },
  { label: 'Redo', item: 'redo', key: 'CmdOrCtrl+Shift+Z', isPageKey: true },
];

const PLACES: readonly PageItem[] = [
  { label: 'Bench', item: 'go-bench', key: 'CmdOrCtrl+1' },
  { label: 'Projects', item: 'go-projects', key: 'CmdOrCtrl+2' },
  { label: 'Days', item: 'go-days', key: 'CmdOrCtrl+3' },
  { label: 'Out', item: 'go-out', key: 'CmdOrCtrl+4' },
  { label: 'Stash', item: 'go-stash', key: 'CmdOrCtrl+5' },
  { label: 'Shopping', item: 'go-shopping', key: 'CmdOrCtrl+6' },
  { label: 'Workshop', item: 'go-workshop', key: 'CmdOrCtrl+7' },
];

const HELP: readonly PageItem[] = [{ label: 'Keys', item: 'show-keys', key: 'F1' }];

export function setMenu(): void {
  const ownMenu: MenuItemConstructorOptions[] = process.platform === 'darwin' ? [{ role: 'appMenu' }] : [];
  const clipboard: MenuItemConstructorOptions[] = [
    { role: 'cut' },
    { role: 'copy' },
    { role: 'paste' },
    { role: 'selectAll' },
  ];
  Menu.setApplicationMenu(
    Menu.buildFromTemplate([
      ...ownMenu,
      { label: 'Notebook', submenu: [...NOTEBOOK.map(toItem), { type: 'separator' }, { role: 'quit' }] },
      { label: 'Edit', submenu: [...CHANGES.map(toItem), { type: 'separator' }, ...clipboard] },
      { label: 'Go', submenu: PLACES.map(toItem) },
      {
        label: 'View',
        submenu: [
          { role: 'resetZoom' },
          { role: 'zoomIn' },
          { role: 'zoomOut' },
          { role: 'togglefullscreen' },
          ...(app.isPackaged ? [] : [{ role: 'toggleDevTools' } as const]),
        ],
      },
      { label: 'Help', submenu: HELP.map(toItem) },
    ]),
  );
}

function toItem({ label, item, key, isPageKey = false }: PageItem): MenuItemConstructorOptions {
  return {
    label,
    ...(key === undefined ? {} : { accelerator: key }),
    registerAccelerator: !isPageKey,
    click: (_menuItem, window) => {
      if (window instanceof BrowserWindow) window.webContents.send('ringbound:menu', item);
    },
  };
}
