import { lengthFromMeters } from '#core/units/length';
import type { Polygon } from '#core/geometry/polygon';
import type { Refusal } from '../calculator';
import type { Note, Term } from '../explanation';
import type { CutPatch } from '../patches/patch-unit';
import { givenLength, lengthNearest } from '../quantities';
import type { BlockKind } from './input';

/** A block at its place in the top, x to the right and y down, in 1/320 mm. Rounds go past (0, 0) to the left and up. */
export interface PlacedBlock {
  readonly block: BlockKind;
  readonly x: number;
  readonly y: number;
}

/** A patch of sashing, a border or a ring at its place in the top, with its cut patch. */
export interface PlacedPatch {
  readonly fabric: string;
  readonly patch: CutPatch;
  readonly polygon: Polygon;
}

/** The finished size after a step of sewing the top. The width of a regular polygon is measured from side to side. */
export interface TopStep {
  readonly label: string;
  readonly width: number;
  readonly length: number;
  /** The formula for the width. */
  readonly formula: string;
  readonly terms: readonly Term[];
}

/** A top as it is put together: where everything is, how large it is, and what does not meet. */
export interface Assembly {
  readonly blocks: readonly PlacedBlock[];
  readonly patches: readonly PlacedPatch[];
  readonly steps: readonly TopStep[];
  readonly misfits: readonly Note[];
  /** Top left corner and finished size so far. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly length: number;
  readonly outline: Polygon;
  /** The patches of each ring from the inside out; empty unless the top is made of rings. */
  readonly rings: readonly RingPatch[];
}

/** One of the equal patches of a ring. The long side is outside. Cut sizes in 1/320 mm, not rounded. */
export interface RingPatch {
  readonly name: string;
  readonly fabric: string;
  readonly count: number;
  readonly long: number;
  readonly short: number;
  readonly height: number;
  /** Between the long side and each end. */
  readonly degrees: number;
}

export const MOST_BLOCKS = 3_600;

export function findBlock(blocks: readonly BlockKind[], name: string): BlockKind | undefined {
  return blocks.find((block) => block.name === name);
}

export function unknownBlock(name: string, field: Refusal['field']): Refusal {
  return {
    code: 'unknown-block',
    field,
    says: `There is no block called ${name}. Add it to the blocks, or choose one of them.`,
    values: {},
  };
}

/** Fifty meters: no floor has room for a larger top. */
export const WIDEST_TOP = lengthFromMeters(50);

export function tooLarge(): Refusal {
  return {
    code: 'too-large',
    field: ['layout'],
    says: 'The top is wider or longer than {most}, or its seams are longer than 1,000 yards. Check the sizes and counts.',
    values: { most: givenLength(WIDEST_TOP) },
  };
}

export function tooManyBlocks(): Refusal {
  return {
    code: 'too-many-blocks',
    field: ['layout'],
    says: `This is more than ${String(MOST_BLOCKS)} blocks. Check the counts.`,
    values: {},
  };
}

/** A finished length in a formula. */
export function lengthTerm(symbol: string, means: string, exact: number): Term {
  return { symbol, means, quantity: lengthNearest(exact) };
}
