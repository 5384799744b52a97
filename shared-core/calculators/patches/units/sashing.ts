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
    sash: sizeField('Sash', 'Width of the strips between the blocks.'),
    cornerstones: flagField({ title: 'Cornerstones', help: 'Squares of another fabric where sashes cross.' }),
    outside: flagField({ title: 'Also round the outside', help: 'Sashes on the four outer sides too.' }),
  },
  {
    blockWidth: lengthFromInches(9),
    blockLength: lengthFromInches(9),
    across: 4,
    down: 5,
    sash: lengthFromInches(2),
    cornerstones: true,
    outside: true,
  },
);

type Sizes = Computed<z.infer<typeof sashingSizes>>;

export const sashing: PatchUnit<Sizes> = {
  kind: 'sashing',
  cutMeans: 'the blocks, with their seam allowance, and the strips',
  plan: (sizes, seam) => {
    const outside = sizes.outside ? 2 : 0;
    const width = total(sizes.blockWidth, sizes.across, sizes.sash, outside);
    const length = total(sizes.blockLength, sizes.down, sizes.sash, outside);
    const parts = sizes.cornerstones ? withCornerstones(sizes) : withLongSashes(sizes);
    return {
      width,
      length,
      outline: rectangleAt(0, 0, width, length),
      ...mergedPatches(parts, seam),
    };
  },
  fromCut: (sizes, seam) => {
    const finished = sizes.blockWidth - 2 * seam;
    return {
      sizes: {
        ...sizes,
        blockWidth: finished,
        blockLength: sizes.blockLength - 2 * seam,
        sash: sizes.sash - 2 * seam,
      },
      formula: 'F = C − 2s (blocks and strips alike)',
      cut: sizes.blockWidth,
      finished,
    };
  },
};

const BLOCK = { name: 'Block', role: 'first', source: 'sewn' } as const;
const SASH = { name: 'Sash', role: 'second', source: 'fabric-joined' } as const;

function total(block: number, blocks: number, sash: number, outside: number): number {
  return blocks * block + (blocks - 1 + outside) * sash;
}

/** Bands of blocks and sashes in both directions; where two sashes cross lies a cornerstone. */
function withCornerstones(sizes: Sizes): readonly NamedRectangle[] {
  const columns = bands(sizes.blockWidth, sizes.across, sizes);
  const rows = bands(sizes.blockLength, sizes.down, sizes);
  return rows.flatMap((row) =>
    columns.map((column) => {
      const polygon = rectangleAt(column.at, row.at, column.size, row.size);
      const size = { width: column.size, length: row.size, polygon };
      if (!column.isSash && !row.isSash) return { ...BLOCK, ...size };
      if (column.isSash && row.isSash) {
        return { ...size, name: 'Cornerstone', role: 'third', source: 'fabric' } as const;
      }
      return { ...SASH, ...size, source: 'fabric', name: column.isSash ? 'Upright sash' : 'Cross sash' };
    }),
  );
}

/** Short sashes join the blocks into rows, long ones the rows; outside, the sides come first, then top and bottom. */
function withLongSashes(sizes: Sizes): readonly NamedRectangle[] {
  const { sash, outside } = sizes;
  const edge = outside ? sash : 0;
  const width = total(sizes.blockWidth, sizes.across, sash, 0);
  const length = total(sizes.blockLength, sizes.down, sash, 0);
  const inner = { ...sizes, outside: false };
  const at = (x: number, y: number, wide: number, long: number) => {
    return { width: wide, length: long, polygon: rectangleAt(x, y, wide, long) };
  };
  const rows = bands(sizes.blockLength, sizes.down, inner).flatMap((row): readonly NamedRectangle[] => {
    if (row.isSash) return [{ ...SASH, name: 'Long sash', ...at(edge, edge + row.at, width, row.size) }];
    return bands(sizes.blockWidth, sizes.across, inner).map((column) => {
      const place = at(edge + column.at, edge + row.at, column.size, row.size);
      return column.isSash
        ? { ...SASH, name: 'Short sash', source: 'fabric', ...place }
        : { ...BLOCK, ...place };
    });
  });
  if (!outside) return rows;
  const frame = [
    { ...SASH, name: 'Side sash', ...at(0, sash, sash, length) },
    { ...SASH, name: 'Side sash', ...at(sash + width, sash, sash, length) },
    { ...SASH, name: 'Top and bottom sash', ...at(0, 0, width + 2 * sash, sash) },
    { ...SASH, name: 'Top and bottom sash', ...at(0, sash + length, width + 2 * sash, sash) },
  ];
  return [...rows, ...frame];
}

interface Band {
  readonly at: number;
  readonly size: number;
  readonly isSash: boolean;
}

function bands(block: number, blocks: number, { sash, outside }: Sizes): readonly Band[] {
  const edge = outside ? sash : 0;
  const inner = Array.from({ length: 2 * blocks - 1 }, (_, index): Band => {
    const isSash = index % 2 === 1;
    const before = (index - (index % 2)) / 2;
    const at = edge + before * (block + sash) + (isSash ? block : 0);
    return { at, size: isSash ? sash : block, isSash };
  });
  if (!outside) return inner;
  const end = edge + blocks * block + (blocks - 1) * sash;
  return [{ at: 0, size: sash, isSash: true }, ...inner, { at: end, size: sash, isSash: true }];
}
