import { contextBridge, ipcRenderer } from 'electron';

/**
 * The whole of what the page can reach: one call, whose name and input the main side checks against the contract, and word of
 * a menu item chosen. `onMenu` answers with a function that stops listening.
 */
const bridge = {
  call: (name: string, input: unknown): Promise<unknown> => ipcRenderer.invoke('ringbound:call', name, input),
  onMenu: (listener: (item: string) => void): (() => void) => {
    const hear = (_event: unknown, item: unknown): void => {
      if (typeof item === 'string') listener(item);
    };
    ipcRenderer.on('ringbound:menu', hear);
    return () => {
      ipcRenderer.off('ringbound:menu', hear);
    };
  },
};

contextBridge.exposeInMainWorld('ringbound', bridge);
