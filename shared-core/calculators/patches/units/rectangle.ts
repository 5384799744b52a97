import type { z } from 'zod';
import { lengthFromInches } from '#core/units/length';
import { rectangleAt } from '../cut-shapes';
import { type Computed, type PatchUnit, sizeField, unitSizes } from '../patch-unit';
import { rectanglePatch } from '../rectangle-patch';

export const rectangleSizes = unitSizes(
  'rectangle',
  'Rectangle',
  { width: sizeField('Width'), length: sizeField('Length') },
  { width: lengthFromInches(2), length: lengthFromInches(4) },
);

export const rectangle: PatchUnit<Computed<z.infer<typeof rectangleSizes>>> = {
  kind: 'rectangle',
  fabrics: { first: 'the rectangles' },
  cutMeans: 'the width of the rectangle',
  plan: ({ width, length }, seam) => {
    const outline = rectangleAt(0, 0, width, length);
    return {
      width,
      length,
      outline,
      finishedPatches: [{ patch: 0, polygon: outline }],
      patches: [rectanglePatch({ name: 'Rectangle', role: 'first', width, length, seam })],
    };
  },
  fromCut: (sizes, seam) => {
    const finished = sizes.width - 2 * seam;
    return {
      sizes: { ...sizes, width: finished, length: sizes.length - 2 * seam },
      formula: 'W = C − 2s',
      cut: sizes.width,
      finished,
    };
  },
};
