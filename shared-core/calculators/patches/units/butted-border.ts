import type { z } from 'zod';
import { choiceField, lengthField } from '#core/domain/fields';
import { lengthFromInches } from '#core/units/length';
import { rectangleAt } from '../cut-shapes';
import { type Computed, type PatchUnit, sizeField, unitSizes } from '../patch-unit';
import { mergedPatches, type NamedRectangle } from '../rectangle-patch';

const corners = choiceField(['butted', 'cornerstones'], {
  title: 'Corners',
  help: 'Butted: sides first, then top and bottom across their ends. Cornerstones: a square in each corner.',
});

export const buttedBorderSizes = unitSizes(
  'butted-border',
  'Border, butted',
  {
    topWidth: lengthField({ title: 'Top width', help: 'Without the border.' }),
    topLength: lengthField({ title: 'Top length' }),
    border: sizeField('Border width'),
    corners,
  },
  {
    topWidth: lengthFromInches(36),
    topLength: lengthFromInches(45),
    border: lengthFromInches(4),
    corners: 'butted',
  },
);

type Sizes = Computed<z.infer<typeof buttedBorderSizes>>;

export const buttedBorder: PatchUnit<Sizes> = {
  kind: 'butted-border',
  fabrics: { second: 'the border', third: 'the cornerstones' },
  cutMeans: 'the top and the border strips, with their seam allowance',
  plan: (sizes, seam) => {
    const [width, length] = [sizes.topWidth + 2 * sizes.border, sizes.topLength + 2 * sizes.border];
    return {
      width,
      length,
      outline: rectangleAt(0, 0, width, length),
      ...mergedPatches(rectanglesOf(sizes), seam),
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
  ],
};

function rectanglesOf({ topWidth, topLength, border, corners }: Sizes): readonly NamedRectangle[] {
  const at = (x: number, y: number, width: number, length: number) => {
    return { width, length, polygon: rectangleAt(x, y, width, length) };
  };
  const strip = { role: 'second', source: 'fabric-joined' } as const;
  const sides = [0, border + topWidth].map((x) => {
    return { ...strip, name: 'Side border', ...at(x, border, border, topLength) };
  });
  const start = corners === 'butted' ? 0 : border;
  const ends = [0, border + topLength].map((y) => {
    const width = topWidth + 2 * (border - start);
    return { ...strip, name: 'Top and bottom border', ...at(start, y, width, border) };
  });
  const stones = [0, border + topWidth].flatMap((x) =>
    [0, border + topLength].map((y) => {
      return { name: 'Cornerstone', role: 'third', source: 'fabric', ...at(x, y, border, border) } as const;
    }),
  );
  const top = {
    name: 'Top',
    role: 'first',
    source: 'sewn',
    ...at(border, border, topWidth, topLength),
  } as const;
  return [top, ...sides, ...ends, ...(corners === 'butted' ? [] : stones)];
}
