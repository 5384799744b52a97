import { circlePerimeter } from '#core/geometry/circle';
import { outlineInsetPerimeter } from '../outline/outline-inset';
import { outlineSlit } from '../outline/outline-measures';
import type { HandFinishInput } from './input';

/** One part of the line to sew by hand on the back, in 1/320 mm as a double. */
export interface HandSewnPart {
  readonly part: 'outer' | 'inner' | 'slit';
  readonly length: number;
}

/**
 * The line on the back where the fold of the binding is sewn down: inside the outer edge and around the hole, each the seam and
 * the cover away from it, and both sides of a slit. Where slit and ring meet, both count in full, so the sum is at most a few
 * inches too long and never short. Null when the outline has no room for the line.
 */
export function handSewnParts(input: HandFinishInput): readonly HandSewnPart[] | null {
  const inset = input.seam + input.backCover;
  const outer = outlineInsetPerimeter(input.outline, inset);
  if (outer === null) return null;
  if (input.hole === null) return [{ part: 'outer', length: outer }];
  const slit = outlineSlit(input.outline, input.hole);
  if (slit <= 2 * inset) return null;
  const inner = circlePerimeter(input.hole.diameter / 2 + inset);
  const parts: readonly HandSewnPart[] = [
    { part: 'outer', length: outer },
    { part: 'inner', length: inner },
  ];
  return input.hasSlit ? [...parts, { part: 'slit', length: 2 * slit }] : parts;
}
