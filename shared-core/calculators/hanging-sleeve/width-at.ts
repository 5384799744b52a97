import { assertNever } from '#core/assert-never';
import type { Outline } from '#core/domain/outline';
import { cornerRadiusOf } from '../outline/outline-measures';

/**
 * Width of the outline at a height `down` below the middle of its top edge, in 1/320 mm; `down` is at most half its length. A list
 * of sides has no angles, so it counts as wide as its widest.
 */
export function widthAt(outline: Outline, down: number): number {
  switch (outline.shape) {
    case 'square':
      return outline.side;
    case 'rectangle':
    case 'sides':
      return outline.width;
    case 'circle':
      return 2 * Math.sqrt(down * (outline.diameter - down));
    case 'ellipse':
      return (outline.width * 2 * Math.sqrt(down * (outline.length - down))) / outline.length;
    case 'rounded': {
      const left = Math.max(0, cornerRadiusOf(outline) - down);
      const radius = cornerRadiusOf(outline);
      return outline.width - 2 * (radius - Math.sqrt(radius ** 2 - left ** 2));
    }
    case 'hexagon':
      return outline.acrossFlats / Math.sqrt(3) + (2 * down) / Math.sqrt(3);
    case 'octagon':
      return Math.min(outline.acrossFlats, outline.acrossFlats * (Math.SQRT2 - 1) + 2 * down);
    default:
      return assertNever(outline);
  }
}
