import type { z } from 'zod';
import { countField, flagField } from '#core/domain/fields';
import { lengthFromInches } from '#core/units/length';
import { rectangleAt } from '../cut-shapes';
import { type Computed, type PatchUnit, sizeField, unitSizes } from '../patch-unit';
import { mergedPatches, type NamedRectangle } from '../rectangle-patch';

export const sashingSizes = unitSizes(
  'sashing',
  'Sashing and cornerstones',
  {
    blockWidth: sizeField('Block width'),
    blockLength: sizeField('Block length'),
    across: countField({ title: 'Blocks across', minimum: 1, maximum: 12 }),
    down: countField({ title: 'Blocks down', minimum: 1, maximum: 12 }),
    sashing: sizeField('Sashing', 'Width of the strips between the blocks.'),
    cornerstones: flagField({
      title: 'Cornerstones',
      help: 'Squares of another fabric where sashing strips cross.',
    }),
    outside: flagField({
      title: 'Also around the outside',
      help: 'Sashing strips on the four outer sides too.',
    }),
  },
  {
    blockWidth: lengthFromInches(9),
    blockLength: lengthFromInches(9),
    across: 4,
    down: 5,
    sashing: lengthFromInches(2),
    cornerstones: true,
    outside: true,
  },
);

type Sizes = Computed<z.infer<typeof sashingSizes>>;

export const sashing: PatchUnit<Sizes> = {
  kind: 'sashing',
  fabrics: { second: 'the sashing', third: 'the cornerstones' },
  cutMeans: 'the blocks, with their seam allowance, and the strips',
  plan: (sizes, seam) => {
    const outside = sizes.outside ? 2 : 0;
    const width = total(sizes.blockWidth, sizes.across, sizes.sashing, outside);
    const length = total(sizes.blockLength, sizes.down, sizes.sashing, outside);
    const rectangles = sizes.cornerstones ? withCornerstones(sizes) : withLongStrips(sizes);
    return {
      width,
      length,
      outline: rectangleAt(0, 0, width, length),
      ...mergedPatches(rectangles, seam),
    };
  },
  fromCut: (sizes, seam) => {
    const finished = sizes.blockWidth - 2 * seam;
    return {
      sizes: {
        ...sizes,
        blockWidth: finished,
        blockLength: sizes.blockLength - 2 * seam,
        sashing: sizes.sashing - 2 * seam,
      },
      formula: 'F = C − 2s (for the blocks and the strips)',
      cut: sizes.blockWidth,
      finished,
    };
  },
};

const BLOCK = { name: 'Block', role: 'first', source: 'sewn' } as const;
const STRIP = { name: 'Sashing strip', role: 'second', source: 'fabric-joined' } as const;

function total(block: number, blocks: number, sashing: number, outside: number): number {
  return blocks * block + (blocks - 1 + outside) * sashing;
}

/** Rows and columns of blocks and sashing strips, with a cornerstone where two strips cross. */
function withCornerstones(sizes: Sizes): readonly NamedRectangle[] {
  const columns = bands(sizes.blockWidth, sizes.across, sizes);
  const rows = bands(sizes.blockLength, sizes.down, sizes);
  return rows.flatMap((row) =>
    columns.map((column) => {
      const polygon = rectangleAt(column.at, row.at, column.size, row.size);
      const size = { width: column.size, length: row.size, polygon };
      if (!column.isStrip && !row.isStrip) return { ...BLOCK, ...size };
      if (column.isStrip && row.isStrip) {
        return { ...size, name: 'Cornerstone', role: 'third', source: 'fabric' } as const;
      }
      return {
        ...STRIP,
        ...size,
        source: 'fabric',
        name: column.isStrip ? 'Vertical sashing strip' : 'Horizontal sashing strip',
      };
    }),
  );
}

/** Short vertical strips join the blocks into rows, long horizontal ones join the rows. Around the outside, the sides come first. */
function withLongStrips(sizes: Sizes): readonly NamedRectangle[] {
  const { sashing, outside } = sizes;
  const edge = outside ? sashing : 0;
  const width = total(sizes.blockWidth, sizes.across, sashing, 0);
  const length = total(sizes.blockLength, sizes.down, sashing, 0);
  const inner = { ...sizes, outside: false };
  const at = (x: number, y: number, wide: number, long: number) => {
    return { width: wide, length: long, polygon: rectangleAt(x, y, wide, long) };
  };
  const rows = bands(sizes.blockLength, sizes.down, inner).flatMap((row): readonly NamedRectangle[] => {
    if (row.isStrip)
      return [
        { ...STRIP, name: 'Long horizontal sashing strip', ...at(edge, edge + row.at, width, row.size) },
      ];
    return bands(sizes.blockWidth, sizes.across, inner).map((column) => {
      const place = at(edge + column.at, edge + row.at, column.size, row.size);
      return column.isStrip
        ? { ...STRIP, name: 'Vertical sashing strip', source: 'fabric', ...place }
        : { ...BLOCK, ...place };
    });
  });
  if (!outside) return rows;
  const frame = [
    { ...STRIP, name: 'Side sashing strip', ...at(0, sashing, sashing, length) },
    { ...STRIP, name: 'Side sashing strip', ...at(sashing + width, sashing, sashing, length) },
    { ...STRIP, name: 'Top and bottom sashing strip', ...at(0, 0, width + 2 * sashing, sashing) },
    {
      ...STRIP,
      name: 'Top and bottom sashing strip',
      ...at(0, sashing + length, width + 2 * sashing, sashing),
    },
  ];
  return [...rows, ...frame];
}

interface Band {
  readonly at: number;
  readonly size: number;
  readonly isStrip: boolean;
}

function bands(block: number, blocks: number, { sashing, outside }: Sizes): readonly Band[] {
  const edge = outside ? sashing : 0;
  const inner = Array.from({ length: 2 * blocks - 1 }, (_, index): Band => {
    const isStrip = index % 2 === 1;
    const before = (index - (index % 2)) / 2;
    const at = edge + before * (block + sashing) + (isStrip ? block : 0);
    return { at, size: isStrip ? sashing : block, isStrip };
  });
  if (!outside) return inner;
  const end = edge + blocks * block + (blocks - 1) * sashing;
  return [{ at: 0, size: sashing, isStrip: true }, ...inner, { at: end, size: sashing, isStrip: true }];
}
