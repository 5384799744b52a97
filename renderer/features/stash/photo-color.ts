const SIDE = 16;

/** The color a photo has on the whole, as six hex digits with a hash; null for a file that is no picture. */
export async function photoColor(photo: Blob): Promise<string | null> {
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
  return `#${channel(0)}${channel(1)}${channel(2)}`;
}
