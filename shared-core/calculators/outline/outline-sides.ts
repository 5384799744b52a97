import { assertNever } from '#core/assert-never';
import type { Outline } from '#core/domain/outline';

/**
 * Lengths of the straight sides from corner to corner, in 1/320 mm and in the order in which a drawing follows them. Empty where
 * the edge has no corners: a circle, an ellipse and rounded corners.
 */
export function outlineSides(outline: Outline): readonly number[] {
  switch (outline.shape) {
    case 'square':
      return sidesAlike(4, outline.side);
    case 'rectangle':
      return [outline.width, outline.length, outline.width, outline.length];
    case 'hexagon':
      return sidesAlike(6, outline.acrossFlats / Math.sqrt(3));
    case 'octagon':
      return sidesAlike(8, outline.acrossFlats * (Math.SQRT2 - 1));
    case 'sides':
      return outline.sides;
    case 'rounded':
    case 'circle':
    case 'ellipse':
      return [];
    default:
      return assertNever(outline);
  }
}

function sidesAlike(count: number, side: number): readonly number[] {
  return Array.from({ length: count }, () => side);
}
