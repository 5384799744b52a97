import type { PhotoId } from '#core/domain/ids';

/** The address of a saved photo. A thumbnail is at most a few hundred pixels wide. */
export function photoAddress(photoId: PhotoId, size: 'full' | 'thumbnail'): string {
  return `/photo/${photoId}${size === 'thumbnail' ? '?size=thumbnail' : ''}`;
}
