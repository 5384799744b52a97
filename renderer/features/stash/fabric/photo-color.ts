import { colorWordsOf } from '#core/stash/color-words';
import type { ScreenColor } from '#core/units/screen-color';

/** Photos are read at this many points a side. */
const SIDE = 16;

/** The color of a photo: the average as `#` and six hex digits, and the main colors in words. */
export interface PhotoColor {
  readonly swatch: string;
  readonly words: string;
}

/** Finds the color of a photo; null for a file that is not a picture. */
export async function photoColor(photo: Blob): Promise<PhotoColor | null> {
  const canvas = document.createElement('canvas');
  canvas.width = SIDE;
  canvas.height = SIDE;
  const brush = canvas.getContext('2d', { willReadFrequently: true });
  const picture = await createImageBitmap(photo, { resizeWidth: SIDE, resizeHeight: SIDE }).catch(() => null);
  if (brush === null || picture === null) return null;
  brush.drawImage(picture, 0, 0);
  picture.close();
  const { data } = brush.getImageData(0, 0, SIDE, SIDE);
  const channel = (at: number) => {
    let sum = 0;
    for (let index = at; index < data.length; index += 4) sum += data[index] ?? 0;
    return Math.round(sum / (SIDE * SIDE))
      .toString(16)
      .padStart(2, '0');
  };
  const points = Array.from({ length: SIDE * SIDE }, (_point, index): ScreenColor => {
    const [red = 0, green = 0, blue = 0] = data.subarray(index * 4, index * 4 + 3);
    return [red, green, blue];
  });
  return { swatch: `#${channel(0)}${channel(1)}${channel(2)}`, words: colorWordsOf(points).join(', ') };
}
