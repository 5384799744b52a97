import { lengthFromMeters } from '#core/units/length';
import type { Polygon } from '#core/geometry/polygon';
import type { Refusal } from '../calculator';
import type { Note, Term } from '../explanation';
import type { CutPatch } from '../patches/patch-unit';
import { givenLength, lengthNearest } from '../quantities';
import type { BlockKind } from './input';

/** A block where it lies in the top, x to the right and y down, in 1/320 mm; rounds grow past (0, 0) to the left and up. */
export interface PlacedBlock {
  readonly block: BlockKind;
  readonly x: number;
  readonly y: number;
}

/** A sash, border or ring piece where it lies, with the patch it is cut as (one patch each). */
export interface PlacedPiece {
  readonly fabric: string;
  readonly patch: CutPatch;
  readonly polygon: Polygon;
}

/** The finished size once a part of the top is sewn; a regular polygon is as wide as its flats are apart. */
export interface TopStep {
  readonly label: string;
  readonly width: number;
  readonly length: number;
  /** How the width was found. */
  readonly formula: string;
  readonly terms: readonly Term[];
}

/** A top being put together: what lies where, how large it is, and what did not meet. */
export interface Assembly {
  readonly blocks: readonly PlacedBlock[];
  readonly pieces: readonly PlacedPiece[];
  readonly steps: readonly TopStep[];
  readonly misfits: readonly Note[];
  /** Top left corner and finished size of what there is so far. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly length: number;
  readonly outline: Polygon;
}

export const MOST_BLOCKS = 3_600;

export function findBlock(blocks: readonly BlockKind[], name: string): BlockKind | undefined {
  return blocks.find((block) => block.name === name);
}

export function unknownBlock(name: string, field: Refusal['field']): Refusal {
  return {
    code: 'unknown-block',
    field,
    says: `There is no kind of block called ${name}: add it to the blocks, or choose one of them.`,
    values: {},
  };
}

/** Fifty meters: no floor holds a larger top. */
export const WIDEST_TOP = lengthFromMeters(50);

export function tooLarge(): Refusal {
  return {
    code: 'too-large',
    field: ['layout'],
    says: 'The top is wider or longer than {most}, or has over a kilometer of seams: look over the sizes and counts.',
    values: { most: givenLength(WIDEST_TOP) },
  };
}

export function tooManyBlocks(): Refusal {
  return {
    code: 'too-many-blocks',
    field: ['layout'],
    says: `This is more than ${String(MOST_BLOCKS)} blocks: look over the counts.`,
    values: {},
  };
}

/** A finished length in a formula. */
export function lengthTerm(symbol: string, means: string, exact: number): Term {
  return { symbol, means, quantity: lengthNearest(exact) };
}
