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
  type PlacedPatch,
  tooLarge,
  tooManyBlocks,
  type TopStep,
  unknownBlock,
  WIDEST_TOP,
} from './assembly';
import type { BlockKind, LayoutOf, Sashing } from './input';
import { term } from '../working/terms';

/** One sewn row: its blocks from left to right, as long as its longest block. */
interface Row {
  readonly blocks: readonly BlockKind[];
  readonly width: number;
  readonly length: number;
  /** Its number in the list of rows, from 1. */
  readonly number: number;
}

/** Blocks sewn into rows and rows into a top, with or without sashing. The top is as wide as its widest row. */
export function layRows(
  layout: LayoutOf<'rows'>,
  kinds: readonly BlockKind[],
  seam: number,
): Result<Assembly, Refusal> {
  const read = rowsOf(layout, kinds);
  if (!read.ok) return read;
  const rows = read.value;
  const { sashing } = layout;
  const gap = sashing?.width ?? 0;
  const width = Math.max(...rows.map((row) => row.width));
  const blocks: PlacedBlock[] = [];
  const patches: PlacedPatch[] = [];
  let y = 0;
  rows.forEach((row, index) => {
    let x = 0;
    row.blocks.forEach((block, at) => {
      if (at > 0) {
        if (sashing !== null) {
          const at = { x, y, width: gap, length: row.length };
          patches.push(sashingStrip('Vertical sashing strip', sashing.fabric, at, seam));
        }
        x += gap;
      }
      blocks.push({ block, x, y });
      x += block.width;
    });
    y += row.length;
    if (sashing === null || index === rows.length - 1) return;
    patches.push(...sashingBelow(row, sashing, { y, width, seam }));
    y += gap;
  });
  const step: TopStep = {
    label: sashing === null ? 'Rows sewn together' : 'Rows and sashing',
    width,
    length: y,
    formula: 'the widest row',
    terms: [lengthTerm('W', 'width of the widest row', width)],
  };
  return success({
    blocks,
    patches,
    steps: [...rowSteps(rows, gap), step],
    misfits: [...rows.flatMap(unevenBlocks), ...unevenRows(rows, width)],
    x: 0,
    y: 0,
    width,
    length: y,
    outline: rectangleAt(0, 0, width, y),
    rings: [],
  });
}

function rowsOf(layout: LayoutOf<'rows'>, kinds: readonly BlockKind[]): Result<readonly Row[], Refusal> {
  const gap = layout.sashing?.width ?? 0;
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

/** One step for each different row. */
function rowSteps(rows: readonly Row[], gap: number): readonly TopStep[] {
  return distinct(rows).map(({ number, width, length, blocks }) => ({
    label: `Row ${String(number)}`,
    width,
    length,
    formula: 'Σb + (n − 1)g',
    terms: [
      lengthTerm('Σb', 'all blocks of the row', width - gap * (blocks.length - 1)),
      term('n', 'blocks in the row', countQuantity(blocks.length, ['block', 'blocks'])),
      lengthTerm('g', 'finished sashing between them', gap),
    ],
  }));
}

function distinct(rows: readonly Row[]): readonly Row[] {
  return rows.filter((row, index) => rows.findIndex((other) => other.number === row.number) === index);
}

interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly length: number;
}

function sashingStrip(
  name: string,
  fabric: string,
  { x, y, width, length }: Place,
  seam: number,
): PlacedPatch {
  const patch = rectanglePatch({ name, role: 'first', width, length, seam, source: 'fabric-joined' });
  return { fabric, patch, polygon: rectangleAt(x, y, width, length) };
}

interface Below {
  readonly y: number;
  /** Of the whole top. */
  readonly width: number;
  readonly seam: number;
}

/**
 * One long strip, or a short one under each block with cornerstones between them. The last one fills the difference to the widest
 * row.
 */
function sashingBelow(row: Row, sashing: Sashing, { y, width, seam }: Below): readonly PlacedPatch[] {
  const depth = sashing.width;
  if (sashing.cornerFabric === '') {
    const at = { x: 0, y, width, length: depth };
    return [sashingStrip('Long horizontal sashing strip', sashing.fabric, at, seam)];
  }
  const patches: PlacedPatch[] = [];
  let x = 0;
  row.blocks.forEach((block, index) => {
    const isLast = index === row.blocks.length - 1;
    const long = block.width + (isLast ? width - row.width : 0);
    const strip = { x, y, width: long, length: depth };
    patches.push(sashingStrip('Horizontal sashing strip', sashing.fabric, strip, seam));
    x += long;
    if (isLast) return;
    const corner = { x, y, width: depth, length: depth };
    patches.push(sashingStrip('Cornerstone', sashing.cornerFabric, corner, seam));
    x += depth;
  });
  return patches;
}

function unevenBlocks(row: Row, index: number, rows: readonly Row[]): readonly Note[] {
  if (rows.findIndex((other) => other.number === row.number) !== index) return [];
  const short = row.blocks.find((block) => block.length < row.length);
  if (short === undefined) return [];
  return [
    {
      kind: 'warning',
      says: `Row {row}: ${short.name} is {short} shorter than the longest block of the row. Make all blocks of the row equally long, or add a strip.`,
      values: { row: rowNumber(row), short: lengthNearest(row.length - short.length) },
    },
  ];
}

function unevenRows(rows: readonly Row[], width: number): readonly Note[] {
  const narrow = distinct(rows).filter((row) => row.width < width);
  return narrow.map((row) => ({
    kind: 'warning',
    says: 'Row {row} finishes {narrow} narrower than the widest row: {own} instead of {widest}.',
    values: {
      row: rowNumber(row),
      narrow: lengthNearest(width - row.width),
      own: lengthNearest(row.width),
      widest: lengthNearest(width),
    },
  }));
}

function rowNumber(row: Row) {
  return countQuantity(row.number, ['', '']);
}
