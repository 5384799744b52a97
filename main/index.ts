import { app } from 'electron';
import { openWindow } from './window';

void app.whenReady().then(openWindow);
