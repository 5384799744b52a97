import type { z } from 'zod';
import { choiceField } from '#core/domain/fields';
import { lengthFromInches } from '#core/units/length';
import { edgeTerm, exactEdge } from '../cut-edge';
import { flippedCornerShape, polygonOf, rectangleAt, trimmedShape } from '../cut-shapes';
import { type Computed, type PatchUnit, sizeField, unitSizes } from '../patch-unit';
import { rectanglePatch } from '../rectangle-patch';
import { squarePatch } from '../triangle-patch';

const corner = choiceField(['thirds', 'regular'], {
  title: 'Corners',
  help: 'Thirds meet the seams of a nine-patch. Regular makes all eight sides of the octagon equal.',
});

export const octagonCornerSizes = unitSizes(
  'octagon-corners',
  'Octagon in a square (snowball)',
  { side: sizeField('Side', 'Of the square.'), corner },
  { side: lengthFromInches(6), corner: 'thirds' },
);

export const octagonCorners: PatchUnit<Computed<z.infer<typeof octagonCornerSizes>>> = {
  kind: 'octagon-corners',
  fabrics: { first: 'the large square', second: 'the corners' },
  cutMeans: 'the large square',
  plan: ({ side, corner }, seam) => {
    const leg = corner === 'thirds' ? side / 3 : side / (2 + Math.SQRT2);
    const term = edgeTerm('W', 'finished side of the square', side);
    const formula = corner === 'thirds' ? 'W/3 + 2s' : 'W/(2 + √2) + 2s';
    const cornerEdge = exactEdge(formula, leg + 2 * seam, [term]);
    const whole = rectanglePatch({ name: 'Large square', role: 'first', width: side, length: side, seam });
    const cut = octagon(side + 2 * seam, leg + (2 - Math.SQRT2) * seam);
    const counted = { name: 'Corner square', role: 'second', takes: 4, makes: 1 } as const;
    return {
      width: side,
      length: side,
      outline: rectangleAt(0, 0, side, side),
      finishedPatches: [
        { patch: 0, polygon: octagon(side, leg) },
        { patch: 1, polygon: polygonOf([0, 0], [leg, 0], [0, leg]) },
        { patch: 1, polygon: polygonOf([side, 0], [side, leg], [side - leg, 0]) },
        { patch: 1, polygon: polygonOf([side, side], [side - leg, side], [side, side - leg]) },
        { patch: 1, polygon: polygonOf([0, side], [0, side - leg], [leg, side]) },
      ],
      patches: [
        { ...whole, shape: trimmedShape(whole.across.exact, whole.across.exact, cut, null) },
        squarePatch(counted, cornerEdge, flippedCornerShape(leg, seam)),
      ],
    };
  },
  fromCut: (sizes, seam) => {
    const finished = sizes.side - 2 * seam;
    return { sizes: { ...sizes, side: finished }, formula: 'W = C − 2s', cut: sizes.side, finished };
  },
};

/** A square with `leg` taken off along both sides of every corner. */
function octagon(side: number, leg: number) {
  const far = side - leg;
  const top = [
    [leg, 0],
    [far, 0],
  ] as const;
  const bottom = [
    [far, side],
    [leg, side],
  ] as const;
  return polygonOf(...top, [side, leg], [side, far], ...bottom, [0, far], [0, leg]);
}
