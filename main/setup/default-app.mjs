import { packAsar } from './asar.mjs';

// The carried runtime has no program of its own that opens a folder, so `electron .` would open nothing. The main file
// is awaited at top level: 'ready' must not come before the app has registered its protocol.
const main = `import { createRequire } from 'node:module';
import path from 'node:path';
import fs from 'node:fs';
import { pathToFileURL } from 'node:url';
import { app } from 'electron';

const require = createRequire(import.meta.url);
const args = process.argv.slice(1);
let folder;
for (let i = 0; i < args.length && folder === undefined; i += 1) {
  if (args[i] === '-r' || args[i] === '--require') require(path.resolve(args[(i += 1)]));
  else if (!args[i].startsWith('-')) folder = path.resolve(args[i]);
}
if (folder === undefined) {
  console.error('Usage: electron FOLDER');
  app.exit(1);
} else {
  const about = JSON.parse(fs.readFileSync(path.join(folder, 'package.json'), 'utf8'));
  app.setName(about.productName ?? about.name);
  app.setVersion(about.version);
  app.setAppPath(folder);
  process.defaultApp = true;
  await import(pathToFileURL(path.join(folder, about.main)).href);
}
`;

/** The archive that a runtime loads when it is started with a folder, the way the official one does. */
export const defaultAppArchive = () =>
  packAsar({
    'package.json': JSON.stringify({ name: 'opener', type: 'module', main: 'main.js' }),
    'main.js': main,
  });
