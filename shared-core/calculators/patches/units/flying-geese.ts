import type { z } from 'zod';
import { assertNever } from '#core/assert-never';
import { choiceField } from '#core/domain/fields';
import { lengthFromInches } from '#core/units/length';
import { edgeTerm, plainEdge } from '../cut-edge';
import { flippedCornerShape, polygonOf, rectangleAt, trimmedShape } from '../cut-shapes';
import { type Computed, type CutPatch, type PatchUnit, sizeField, unitSizes } from '../patch-unit';
import { rectanglePatch } from '../rectangle-patch';
import { halfSquarePatch, quarterSquarePatch, squarePatch } from '../triangle-patch';

const method = choiceField(['four-at-a-time', 'stitch-and-flip'], {
  title: 'Method',
  help: 'Four at a time from one large and four small squares, or one at a time from a rectangle and two squares.',
});

export const flyingGeeseSizes = unitSizes(
  'flying-geese',
  'Flying geese',
  { height: sizeField('Height', 'From the base to the point. The base is twice as long.'), method },
  { height: lengthFromInches(2), method: 'four-at-a-time' },
);

type Sizes = Computed<z.infer<typeof flyingGeeseSizes>>;

export const flyingGeese: PatchUnit<Sizes> = {
  kind: 'flying-geese',
  fabrics: { first: 'the geese', second: 'the background' },
  cutMeans: 'the large square (stitch and flip: the short side of the rectangle)',
  plan: ({ height, method }, seam) => {
    const width = 2 * height;
    return {
      width,
      length: height,
      outline: rectangleAt(0, 0, width, height),
      finishedPatches: [
        { patch: 0, polygon: polygonOf([0, height], [height, 0], [width, height]) },
        { patch: 1, polygon: polygonOf([0, 0], [height, 0], [0, height]) },
        { patch: 1, polygon: polygonOf([width, 0], [width, height], [height, 0]) },
      ],
      patches: method === 'four-at-a-time' ? fourAtATime(height, seam) : stitchAndFlip(height, seam),
    };
  },
  fromCut: (sizes, seam) => {
    const { formula, finished } = finishedFrom(sizes, seam);
    return { sizes: { ...sizes, height: finished }, formula, cut: sizes.height, finished };
  },
};

/** Four geese from one large and four small squares; also for blocks with geese in them. */
export function fourAtATime(height: number, seam: number): readonly CutPatch[] {
  const large = { name: 'Large square', role: 'first', takes: 1, makes: 4 } as const;
  const small = { name: 'Small square', role: 'second', takes: 4, makes: 4 } as const;
  return [
    quarterSquarePatch(large, edgeTerm('B', 'finished base of a goose', 2 * height), seam),
    halfSquarePatch(small, edgeTerm('H', 'finished height of a goose', height), seam),
  ];
}

/** Each square is sewn from corner to corner, along the seam line from base to point. Both layers are trimmed past it. */
function stitchAndFlip(height: number, seam: number): readonly CutPatch[] {
  const [along, across] = [2 * height + 2 * seam, height + 2 * seam];
  const trim = height + (2 - Math.SQRT2) * seam;
  const left = [
    [along, trim],
    [along, across],
    [0, across],
    [0, trim],
  ] as const;
  const cut = polygonOf([trim, 0], [along - trim, 0], ...left);
  const bottom = seam + height;
  const finished = polygonOf([seam, bottom], [bottom, seam], [seam + 2 * height, bottom]);
  const goose = rectanglePatch({ name: 'Rectangle', role: 'first', width: height, length: 2 * height, seam });
  const corner = plainEdge(edgeTerm('H', 'finished height', height), seam);
  const counted = { name: 'Corner square', role: 'second', takes: 2, makes: 1 } as const;
  return [
    { ...goose, shape: trimmedShape(across, along, cut, finished) },
    squarePatch(counted, corner, flippedCornerShape(height, seam)),
  ];
}

function finishedFrom({ method, height: cut }: Sizes, seam: number) {
  switch (method) {
    case 'four-at-a-time':
      return { formula: 'H = (C − s(2 + 2√2))/2', finished: (cut - seam * (2 + 2 * Math.SQRT2)) / 2 };
    case 'stitch-and-flip':
      return { formula: 'H = C − 2s', finished: cut - 2 * seam };
    default:
      return assertNever(method);
  }
}
