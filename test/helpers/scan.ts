import type { Locator } from '@playwright/test';
import jsqr from 'jsqr';
import type { DevelopedProgram } from './launch';

/** A scanner that is a keyboard: every character goes down and up right after the one before, and Enter ends them. */
export async function scan({ electron }: DevelopedProgram, code: string): Promise<void> {
  await electron.evaluate(
    ({ BrowserWindow }, keys) => {
      const contents = BrowserWindow.getAllWindows()[0]?.webContents;
      for (const keyCode of keys) {
        contents?.sendInputEvent({ type: 'keyDown', keyCode });
        contents?.sendInputEvent({ type: 'char', keyCode });
        contents?.sendInputEvent({ type: 'keyUp', keyCode });
      }
    },
    [...Array.from(code), 'Enter'],
  );
}

/** What an independent decoder reads in the picture of what is drawn there; null for nothing. */
export async function decode({ electron }: DevelopedProgram, drawn: Locator): Promise<string | null> {
  const picture = (await drawn.screenshot()).toString('base64');
  const { width, height, points } = await electron.evaluate(({ nativeImage }, base64) => {
    const image = nativeImage.createFromBuffer(Buffer.from(base64, 'base64'));
    return { ...image.getSize(), points: image.toBitmap().toString('base64') };
  }, picture);
  // Blue, green, red: black and white read alike either way round.
  return jsqr(new Uint8ClampedArray(Buffer.from(points, 'base64')), width, height)?.data ?? null;
}
