import type { PhotoId } from '#core/domain/ids';

/** Where the window fetches a kept photo; the thumbnail is at most a few hundred pixels wide. */
export function photoAddress(photoId: PhotoId, size: 'full' | 'thumbnail'): string {
  return `/photo/${photoId}${size === 'thumbnail' ? '?size=thumbnail' : ''}`;
}
