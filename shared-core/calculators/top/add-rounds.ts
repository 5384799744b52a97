import { assertNever } from '#core/assert-never';
import { failure, type Result, success } from '#core/result';
import { roundNearest } from '#core/units/rounding';
import type { Refusal } from '../calculator';
import type { Note } from '../explanation';
import { polygonOf, rectangleAt } from '../patches/cut-shapes';
import { rectanglePatch } from '../patches/rectangle-patch';
import { miteredStrip } from '../patches/units/mitered-border';
import { countQuantity, lengthNearest } from '../quantities';
import {
  type Assembly,
  findBlock,
  lengthTerm,
  MOST_BLOCKS,
  type PlacedBlock,
  type PlacedPatch,
  tooManyBlocks,
  unknownBlock,
} from './assembly';
import type { BlockKind, Round } from './input';

type Border = Extract<Round, { round: 'border' }>;
type BlockRound = Extract<Round, { round: 'blocks' }>;

/** Adds borders and rounds of blocks from the inside out. */
export function addRounds(
  inner: Assembly,
  rounds: readonly Round[],
  kinds: readonly BlockKind[],
  seam: number,
): Result<Assembly, Refusal> {
  let top = inner;
  for (const [index, round] of rounds.entries()) {
    const label = labelOfRound(index);
    switch (round.round) {
      case 'border':
        top = grown(top, label, round.width, { patches: borderPatches(top, round, seam) });
        break;
      case 'blocks': {
        const next = addBlocks(top, round, kinds, index);
        if (!next.ok) return next;
        top = next.value;
        break;
      }
      default:
        return assertNever(round);
    }
  }
  return success(top);
}

function labelOfRound(index: number): string {
  return `Round ${String(index + 1)}`;
}

/** The top with a round of this depth on all four sides. */
function grown(
  inner: Assembly,
  label: string,
  depth: number,
  added: Partial<Pick<Assembly, 'blocks' | 'patches' | 'misfits'>>,
): Assembly {
  const [x, y] = [inner.x - depth, inner.y - depth];
  const [width, length] = [inner.width + 2 * depth, inner.length + 2 * depth];
  const terms = [
    lengthTerm('W', 'width before', inner.width),
    lengthTerm('w', 'finished width of the round', depth),
  ];
  return {
    blocks: [...inner.blocks, ...(added.blocks ?? [])],
    patches: [...inner.patches, ...(added.patches ?? [])],
    misfits: [...inner.misfits, ...(added.misfits ?? [])],
    steps: [...inner.steps, { label, width, length, formula: 'W + 2w', terms }],
    x,
    y,
    width,
    length,
    outline: rectangleAt(x, y, width, length),
    rings: [],
  };
}

function borderPatches(inner: Assembly, border: Border, seam: number): readonly PlacedPatch[] {
  return border.corners === 'mitered'
    ? miteredPatches(inner, border, seam)
    : straightPatches(inner, border, seam);
}

/** The sides come first. Top and bottom go across their ends or stop at cornerstones. */
function straightPatches(inner: Assembly, border: Border, seam: number): readonly PlacedPatch[] {
  const { x, y, width, length } = inner;
  const { width: wide, fabric } = border;
  const isButted = border.corners === 'butted';
  const cornerFabric = border.cornerFabric === '' ? fabric : border.cornerFabric;
  const patchAt = (name: string, of: string, at: readonly [number, number, number, number]): PlacedPatch => {
    const [left, top, across, down] = at;
    const source = 'fabric-joined';
    const patch = rectanglePatch({ name, role: 'first', width: across, length: down, seam, source });
    return { fabric: of, patch, polygon: rectangleAt(left, top, across, down) };
  };
  const over = isButted ? wide : 0;
  const ends = [y - wide, y + length].map((top) =>
    patchAt('Top or bottom border', fabric, [x - over, top, width + 2 * over, wide]),
  );
  const sides = [x - wide, x + width].map((left) => patchAt('Side border', fabric, [left, y, wide, length]));
  if (isButted) return [...sides, ...ends];
  const stones = [x - wide, x + width].flatMap((left) =>
    [y - wide, y + length].map((top) => patchAt('Cornerstone', cornerFabric, [left, top, wide, wide])),
  );
  return [...sides, ...ends, ...stones];
}

function miteredPatches(inner: Assembly, border: Border, seam: number): readonly PlacedPatch[] {
  const { width: wide, fabric } = border;
  const [left, top] = [inner.x, inner.y];
  const [right, bottom] = [left + inner.width, top + inner.length];
  const side = { ...miteredStrip('Side border', inner.length, wide, seam), standsUp: true };
  const end = miteredStrip('Top or bottom border', inner.width, wide, seam);
  const out = {
    topLeft: [left - wide, top - wide],
    topRight: [right + wide, top - wide],
    bottomRight: [right + wide, bottom + wide],
    bottomLeft: [left - wide, bottom + wide],
  } as const;
  const shapes = [
    { patch: end, polygon: polygonOf(out.topLeft, out.topRight, [right, top], [left, top]) },
    { patch: side, polygon: polygonOf(out.topRight, out.bottomRight, [right, bottom], [right, top]) },
    { patch: end, polygon: polygonOf(out.bottomRight, out.bottomLeft, [left, bottom], [right, bottom]) },
    { patch: side, polygon: polygonOf(out.bottomLeft, out.topLeft, [left, top], [left, bottom]) },
  ];
  return shapes.map(({ patch, polygon }) => ({ fabric, patch: { ...patch, takes: 1 }, polygon }));
}

function addBlocks(
  inner: Assembly,
  { block: name, corner: cornerName }: BlockRound,
  kinds: readonly BlockKind[],
  index: number,
): Result<Assembly, Refusal> {
  const label = labelOfRound(index);
  const block = findBlock(kinds, name);
  if (block === undefined) return failure(unknownBlock(name, ['layout', 'rounds', index, 'block']));
  const corner = findBlock(kinds, cornerName);
  if (corner === undefined) return failure(unknownBlock(cornerName, ['layout', 'rounds', index, 'corner']));
  const depth = block.length;
  const fitting = (side: number) => Math.max(1, roundNearest(side / block.width, 1));
  const [across, down] = [fitting(inner.width), fitting(inner.length)];
  const total = inner.blocks.length + 2 * (across + down) + 4;
  if (total > MOST_BLOCKS) return failure(tooManyBlocks());
  const misfits = [
    ...sideMisfit({ where: `${label}, top and bottom`, side: inner.width, block, count: across }),
    ...sideMisfit({ where: `${label}, sides`, side: inner.length, block, count: down }),
    ...cornerMisfit(label, corner, depth),
  ];
  const blocks = blocksRound(inner, block, corner, [across, down]);
  return success(grown(inner, label, depth, { blocks, misfits }));
}

/** Blocks on the sides are turned by a quarter, so that their width is along the edge of the top everywhere. */
function blocksRound(
  inner: Assembly,
  block: BlockKind,
  corner: BlockKind,
  [across, down]: readonly [number, number],
): readonly PlacedBlock[] {
  const { x, y, width, length } = inner;
  const depth = block.length;
  const turned: BlockKind = { ...block, width: block.length, length: block.width };
  const along = Array.from({ length: across }, (_, at) => at * block.width);
  const downward = Array.from({ length: down }, (_, at) => at * block.width);
  return [
    ...along.map((at) => ({ block, x: x + at, y: y - depth })),
    ...along.map((at) => ({ block, x: x + at, y: y + length })),
    ...downward.map((at) => ({ block: turned, x: x - depth, y: y + at })),
    ...downward.map((at) => ({ block: turned, x: x + width, y: y + at })),
    ...[x - depth, x + width].flatMap((left) =>
      [y - depth, y + length].map((top) => ({ block: corner, x: left, y: top })),
    ),
  ];
}

interface SideOfRound {
  /** Where in the top, such as `Round 1, sides`. */
  readonly where: string;
  readonly side: number;
  readonly block: BlockKind;
  readonly count: number;
}

/** A border under the round makes the side longer, so it only helps if the blocks are too long. */
function sideMisfit({ where, side, block, count }: SideOfRound): readonly Note[] {
  const over = count * block.width - side;
  if (over === 0) return [];
  const values = {
    count: countQuantity(count, ['', '']),
    off: lengthNearest(Math.abs(over)),
    side: lengthNearest(side),
  };
  const start = `${where}: {count} of ${block.name} are {off}`;
  const end = 'than the side of the top, which is {side}.';
  if (over < 0) {
    return [{ kind: 'warning', says: `${start} shorter ${end} Use a larger block.`, values }];
  }
  return [
    {
      kind: 'warning',
      says: `${start} longer ${end} First add a border {half} wide, or use a smaller block.`,
      values: { ...values, half: lengthNearest(over / 2) },
    },
  ];
}

function cornerMisfit(label: string, corner: BlockKind, depth: number): readonly Note[] {
  if (corner.width === depth && corner.length === depth) return [];
  return [
    {
      kind: 'warning',
      says: `${label}: ${corner.name} in the corners has to be a {depth} square, as wide as the round.`,
      values: { depth: lengthNearest(depth) },
    },
  ];
}
