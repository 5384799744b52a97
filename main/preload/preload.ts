import { contextBridge } from 'electron';

contextBridge.exposeInMainWorld('ringbound', {});
