import type { z } from 'zod';
import { lengthField } from '#core/domain/fields';
import { lengthFromInches, UNITS_PER_INCH } from '#core/units/length';
import { type CutEdge, edgeTerm, plainEdge } from '../cut-edge';
import { polygonOf, rectangleAt, trimmedShape } from '../cut-shapes';
import { type Computed, type CutPatch, type PatchUnit, sizeField, unitSizes } from '../patch-unit';
import { rectanglePatch } from '../rectangle-patch';

export const miteredBorderSizes = unitSizes(
  'mitered-border',
  'Border, mitered',
  {
    topWidth: lengthField({ title: 'Top width', help: 'Without the border.' }),
    topLength: lengthField({ title: 'Top length' }),
    border: sizeField('Border width'),
  },
  { topWidth: lengthFromInches(36), topLength: lengthFromInches(45), border: lengthFromInches(4) },
);

export const miteredBorder: PatchUnit<Computed<z.infer<typeof miteredBorderSizes>>> = {
  kind: 'mitered-border',
  fabrics: { second: 'the border' },
  cutMeans: 'the top and the border strips, with their seam allowance',
  plan: ({ topWidth, topLength, border }, seam) => {
    const [width, length] = [topWidth + 2 * border, topLength + 2 * border];
    const [right, bottom] = [border + topWidth, border + topLength];
    const source = 'sewn';
    return {
      width,
      length,
      outline: rectangleAt(0, 0, width, length),
      finishedPatches: [
        { patch: 0, polygon: rectangleAt(border, border, topWidth, topLength) },
        { patch: 1, polygon: polygonOf([0, 0], [border, border], [border, bottom], [0, length]) },
        { patch: 1, polygon: polygonOf([width, 0], [width, length], [right, bottom], [right, border]) },
        { patch: 2, polygon: polygonOf([0, 0], [width, 0], [right, border], [border, border]) },
        { patch: 2, polygon: polygonOf([0, length], [border, bottom], [right, bottom], [width, length]) },
      ],
      patches: [
        rectanglePatch({ name: 'Top', role: 'first', width: topWidth, length: topLength, seam, source }),
        miteredStrip('Side border', topLength, border, seam),
        miteredStrip('Top and bottom border', topWidth, border, seam),
      ],
    };
  },
  fromCut: (sizes, seam) => {
    const finished = sizes.topWidth - 2 * seam;
    return {
      sizes: {
        ...sizes,
        topWidth: finished,
        topLength: sizes.topLength - 2 * seam,
        border: sizes.border - 2 * seam,
      },
      formula: 'F = C − 2s (for the top and the border)',
      cut: sizes.topWidth,
      finished,
    };
  },
  tips: () => [
    'Cut the strips to width now. Cut them to length when the pressed top is measured in three places: use the mean.',
    'Stop each border seam one seam allowance before the corner, then sew the miter from there outward.',
  ],
};

/** The exact length leaves just a full seam on the slanted ends. The customary length leaves 6 in more, to sew first and cut later. */
export function miteredStrip(name: string, inner: number, border: number, seam: number): CutPatch {
  const terms = [
    edgeTerm('L', 'finished side of the top', inner),
    edgeTerm('W', 'finished border width', border),
  ];
  const across = plainEdge(edgeTerm('W', 'finished border width', border), seam);
  const along: CutEdge = {
    formula: 'L + 2W + 2s(1 + √2)',
    exact: inner + 2 * border + 2 * seam * (1 + Math.SQRT2),
    terms,
    customary: { formula: 'L + 2W + 6 in', exact: inner + 2 * border + 6 * UNITS_PER_INCH },
  };
  const short = inner + 2 * seam * (Math.SQRT2 - 1);
  const inset = (along.exact - short) / 2;
  const kept = polygonOf(
    [0, 0],
    [along.exact, 0],
    [along.exact - inset, across.exact],
    [inset, across.exact],
  );
  const shape = trimmedShape(across.exact, along.exact, kept, null);
  return { name, role: 'second', across, along, shape, takes: 2, makes: 1, source: 'fabric-joined' };
}
