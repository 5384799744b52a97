import { contextBridge, ipcRenderer } from 'electron';
import { CALL_CHANNEL, MENU_CHANNEL } from '#core/contract/wires';

/**
 * Everything the page can reach: one call, which the main process checks against the contract, and the menu items the maker
 * chooses. `onMenu` returns a function that stops listening.
 */
const bridge = {
  call: (name: string, input: unknown): Promise<unknown> => ipcRenderer.invoke(CALL_CHANNEL, name, input),
  onMenu: (listener: (item: unknown) => void): (() => void) => {
    const hear = (_event: unknown, item: unknown): void => {
      listener(item);
    };
    ipcRenderer.on(MENU_CHANNEL, hear);
    return () => {
      ipcRenderer.off(MENU_CHANNEL, hear);
    };
  },
};

contextBridge.exposeInMainWorld('ringbound', bridge);
