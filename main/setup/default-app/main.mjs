// Opens the folder that the command line names, as the official Electron does. A carried runtime has no such program.
import fs from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { app } from 'electron';

/**
 * What Electron's own program calls as well, although it is not in the published types.
 *
 * @typedef {import('electron').App & { setVersion(version: string): void, setAppPath(folder: string): void }} OpeningApp
 */

const opener = /** @type {OpeningApp} */ (app);
const require = createRequire(import.meta.url);
const args = process.argv.slice(1);
/** @type {string | undefined} */
let folder;
while (folder === undefined && args.length > 0) {
  const arg = args.shift() ?? '';
  if (arg === '-r' || arg === '--require') require(path.resolve(args.shift() ?? ''));
  else if (!arg.startsWith('-')) folder = path.resolve(arg);
}

if (folder === undefined) {
  console.error('Usage: electron FOLDER');
  opener.exit(1);
} else {
  /** @type {{ name: string, productName?: string, version: string, main: string }} */
  const about = JSON.parse(fs.readFileSync(path.join(folder, 'package.json'), 'utf8'));
  opener.setName(about.productName ?? about.name);
  opener.setVersion(about.version);
  opener.setAppPath(folder);
  Object.assign(process, { defaultApp: true });
  // Awaited here, so that 'ready' does not come before the program has registered its protocol.
  await import(pathToFileURL(path.join(folder, about.main)).href);
}
