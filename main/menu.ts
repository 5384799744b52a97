import { app, BrowserWindow, Menu, type MenuItemConstructorOptions } from 'electron';
import { MENU, type MenuEntry } from '#core/contract/menu';
import { MENU_CHANNEL } from '#core/contract/wires';

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
      { label: 'Notebook', submenu: [...MENU.notebook.map(toItem), { type: 'separator' }, { role: 'quit' }] },
      { label: 'Edit', submenu: [...MENU.edit.map(toItem), { type: 'separator' }, ...clipboard] },
      { label: 'Go', submenu: MENU.go.map(toItem) },
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
      { label: 'Help', submenu: MENU.help.map(toItem) },
    ]),
  );
}

function toItem({ label, item, key, isPageKey = false }: MenuEntry): MenuItemConstructorOptions {
  return {
    label,
    accelerator: key,
    registerAccelerator: !isPageKey,
    click: (_menuItem, window) => {
      if (window instanceof BrowserWindow) window.webContents.send(MENU_CHANNEL, item);
    },
  };
}
