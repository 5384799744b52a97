import { failure, type Result, success } from '#core/result';
import type { Refusal } from '../calculator';
import type { Note } from '../explanation';
import { countQuantity, lengthNearest } from '../quantities';
import { rectangleAt } from '../patches/cut-shapes';
import { rectanglePatch } from '../patches/rectangle-patch';
import {
  type Assembly,
  findBlock,
  lengthTerm,
  MOST_BLOCKS,
  type PlacedBlock,
  type PlacedPiece,
  tooLarge,
  tooManyBlocks,
  type TopStep,
  unknownBlock,
  WIDEST_TOP,
} from './assembly';
import type { BlockKind, LayoutOf, Sash } from './input';

/** One sewn row: its blocks from left to right, as long as its longest block. */
interface Row {
  readonly blocks: readonly BlockKind[];
  readonly width: number;
  readonly length: number;
  /** Number of the row in the list it came from, from 1. */
  readonly number: number;
}

/** Blocks sewn into rows and rows into a top, with or without sashes between. The widest row gives the width. */
export function layRows(
  layout: LayoutOf<'rows'>,
  kinds: readonly BlockKind[],
  seam: number,
): Result<Assembly, Refusal> {
  const read = rowsOf(layout, kinds);
  if (!read.ok) return read;
  const rows = read.value;
  const { sash } = layout;
  const gap = sash?.width ?? 0;
  const width = Math.max(...rows.map((row) => row.width));
  const blocks: PlacedBlock[] = [];
  const pieces: PlacedPiece[] = [];
  let y = 0;
  rows.forEach((row, index) => {
    let x = 0;
    row.blocks.forEach((block, at) => {
      if (at > 0) {
        if (sash !== null) pieces.push(sashPiece(sash, 'Upright sash', x, y, gap, row.length, seam));
        x += gap;
      }
      blocks.push({ block, x, y });
      x += block.width;
    });
    y += row.length;
    if (sash === null || index === rows.length - 1) return;
    pieces.push(...sashBelow(row, sash, y, width, seam));
    y += gap;
  });
  const step: TopStep = {
    label: sash === null ? 'Rows sewn together' : 'Rows and sashes',
    width,
    length: y,
    formula: 'the widest row',
    terms: [lengthTerm('W', 'width of the widest row', width)],
  };
  return success({
    blocks,
    pieces,
    steps: [...rowSteps(rows, gap), step],
    misfits: [...rows.flatMap(unevenBlocks), ...unevenRows(rows, width)],
    x: 0,
    y: 0,
    width,
    length: y,
    outline: rectangleAt(0, 0, width, y),
  });
}

function rowsOf(layout: LayoutOf<'rows'>, kinds: readonly BlockKind[]): Result<readonly Row[], Refusal> {
  const gap = layout.sash?.width ?? 0;
  const rows: Row[] = [];
  let count = 0;
  for (const [index, row] of layout.rows.entries()) {
    const blocks: BlockKind[] = [];
    for (const [at, { block: name, times }] of row.blocks.entries()) {
      const block = findBlock(kinds, name);
      if (block === undefined) {
        return failure(unknownBlock(name, ['layout', 'rows', index, 'blocks', at, 'block']));
      }
      count += times * row.times;
      if (count > MOST_BLOCKS) return failure(tooManyBlocks());
      for (let time = 0; time < times; time += 1) blocks.push(block);
    }
    const width = blocks.reduce((sum, block) => sum + block.width, gap * (blocks.length - 1));
    const length = Math.max(...blocks.map((block) => block.length));
    for (let time = 0; time < row.times; time += 1) rows.push({ blocks, width, length, number: index + 1 });
  }
  const length = rows.reduce((sum, row) => sum + row.length, gap * (rows.length - 1));
  const isTooLarge = length > WIDEST_TOP || rows.some((row) => row.width > WIDEST_TOP);
  return isTooLarge ? failure(tooLarge()) : success(rows);
}

/** Every kind of row once. */
function rowSteps(rows: readonly Row[], gap: number): readonly TopStep[] {
  return distinct(rows).map(({ number, width, length, blocks }) => ({
    label: `Row ${String(number)}`,
    width,
    length,
    formula: 'Σb + (n − 1)g',
    terms: [
      lengthTerm('Σb', 'all blocks of the row', width - gap * (blocks.length - 1)),
      {
        symbol: 'n',
        means: 'blocks in the row',
        quantity: countQuantity(blocks.length, ['block', 'blocks']),
      },
      lengthTerm('g', 'finished sash between them', gap),
    ],
  }));
}

function distinct(rows: readonly Row[]): readonly Row[] {
  return rows.filter((row, index) => rows.findIndex((other) => other.number === row.number) === index);
}

function sashPiece(
  sash: Pick<Sash, 'fabric'>,
  name: string,
  x: number,
  y: number,
  width: number,
  length: number,
  seam: number,
): PlacedPiece {
  const patch = rectanglePatch({ name, role: 'first', width, length, seam, source: 'fabric-joined' });
  return { fabric: sash.fabric, patch, polygon: rectangleAt(x, y, width, length) };
}

/** One long sash, or short ones under each block with cornerstones between, the last as long as the row is short of the rest. */
function sashBelow(row: Row, sash: Sash, y: number, width: number, seam: number): readonly PlacedPiece[] {
  if (sash.cornerFabric === '') return [sashPiece(sash, 'Long sash', 0, y, width, sash.width, seam)];
  const pieces: PlacedPiece[] = [];
  let x = 0;
  row.blocks.forEach((block, at) => {
    const isLast = at === row.blocks.length - 1;
    const long = block.width + (isLast ? width - row.width : 0);
    pieces.push(sashPiece(sash, 'Cross sash', x, y, long, sash.width, seam));
    x += long;
    if (isLast) return;
    const stone = { fabric: sash.cornerFabric };
    pieces.push(sashPiece(stone, 'Cornerstone', x, y, sash.width, sash.width, seam));
    x += sash.width;
  });
  return pieces;
}

function unevenBlocks(row: Row, index: number, rows: readonly Row[]): readonly Note[] {
  if (rows.findIndex((other) => other.number === row.number) !== index) return [];
  const short = row.blocks.find((block) => block.length < row.length);
  if (short === undefined) return [];
  return [
    {
      kind: 'warning',
      says: `Row {row}: ${short.name} is {short} shorter than the longest block of the row. Make the blocks alike or add a strip.`,
      values: { row: rowNumber(row), short: misfitLength(row.length - short.length) },
    },
  ];
}

function unevenRows(rows: readonly Row[], width: number): readonly Note[] {
  const narrow = distinct(rows).filter((row) => row.width < width);
  return narrow.map((row) => ({
    kind: 'warning',
    says: 'Row {row} finishes {narrow} narrower than the widest row: {own} against {widest}.',
    values: {
      row: rowNumber(row),
      narrow: misfitLength(width - row.width),
      own: misfitLength(row.width),
      widest: misfitLength(width),
    },
  }));
}

function rowNumber(row: Row) {
  return countQuantity(row.number, ['', '']);
}

function misfitLength(exact: number) {
  return lengthNearest(exact);
}
