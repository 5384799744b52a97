import fs from 'node:fs/promises';
import path from 'node:path';

/**
 * Removes the archive that opens a folder given on the command line: a packaged program opens only itself.
 *
 * @param {{ appOutDir: string, electronPlatformName: string, packager: { appInfo: { productFilename: string } } }} context
 */
export async function afterPack({ appOutDir, electronPlatformName, packager }) {
  const resources =
    electronPlatformName === 'darwin'
      ? `${packager.appInfo.productFilename}.app/Contents/Resources`
      : 'resources';
  await fs.rm(path.join(appOutDir, resources, 'default_app.asar'), { force: true });
}
