import { nativeImage } from 'electron';

const LONGEST_SIDE = 480;

/** A JPEG of at most 480 pixels on its longest side; null if the system cannot read the picture. */
export function makeThumbnail(bytes: Uint8Array): Uint8Array | null {
  const picture = nativeImage.createFromBuffer(Buffer.from(bytes));
  if (picture.isEmpty()) return null;
  const { width, height } = picture.getSize();
  const side = width >= height ? { width: LONGEST_SIDE } : { height: LONGEST_SIDE };
  const small =
    Math.max(width, height) <= LONGEST_SIDE ? picture : picture.resize({ ...side, quality: 'good' });
  return small.toJPEG(82);
}
