import type { Candidate, CandidateHeap } from './candidate-heap';
import type { LaidMove, MovePlace, MoveRules } from './beam-move';
import type { OpenRectangles } from './open-rectangles';
import type { PatchKinds } from './patch-kinds';
import { emptyMove } from './beam-move';
import { emptyHeap } from './candidate-heap';
import { NONE, emptyRectangles } from './open-rectangles';

/** Partial layouts of one level, in parallel arrays; `remaining` holds one row of copies left per layout. */
export interface BeamLevel {
  size: number;
  remaining: Uint16Array;
  top: Int32Array;
  hash: Int32Array;
  history: Int32Array;
  waste: Float64Array;
  area: Float64Array;
}

/** Moves that led to each partial layout, as a tree: `parent` is an index into these arrays or NONE. */
export interface MoveHistory {
  parent: Int32Array;
  move: Int32Array;
  used: number;
}

interface TypeSizes {
  readonly width: Int32Array;
  readonly height: Int32Array;
}

/** What all beam searches on one set of patches share. It is made once and reused for every beam width and height. */
export interface BeamContext extends MoveRules {
  /** Area of one patch by type. */
  readonly areas: readonly number[];
  readonly store: OpenRectangles;
  readonly heap: CandidateHeap;
  readonly history: MoveHistory;
  /** A random number for each type; their sum is the hash of a layout's patches. */
  readonly typeHash: Int32Array;
  /** Sizes of each type unturned and turned; larger than any fabric where the type may not be laid that way. */
  readonly straight: TypeSizes;
  readonly turned: TypeSizes;
  /** Overwritten for every move, so that the inner loop creates no objects. */
  readonly laid: LaidMove;
  readonly place: MovePlace;
  readonly candidate: Candidate;
  levels: readonly [BeamLevel, BeamLevel];
}

/** Makes the context. `random` returns numbers in [0, 1) and is used only to spread the hashes. */
export function beamContext(rules: MoveRules, areas: readonly number[], random: () => number): BeamContext {
  const { kinds } = rules;
  return {
    ...rules,
    areas,
    store: emptyRectangles(),
    heap: emptyHeap(),
    history: { parent: new Int32Array(2 ** 10), move: new Int32Array(2 ** 10), used: 0 },
    typeHash: Int32Array.from(areas, () => (random() * 2 ** 32) | 0),
    straight: sizesByType(kinds, areas.length, 0),
    turned: sizesByType(kinds, areas.length, 1),
    laid: emptyMove(),
    place: { width: 0, height: 0, level: 0, remaining: 0 },
    candidate: { guide: 0, waste: 0, node: 0, move: 0, hash: 0 },
    levels: [emptyLevel(1, areas.length), emptyLevel(1, areas.length)],
  };
}

/** Larger than any fabric. */
const TOO_LARGE = 2 ** 30;

function sizesByType(kinds: PatchKinds, types: number, turned: number): TypeSizes {
  const sizes = {
    width: new Int32Array(types).fill(TOO_LARGE),
    height: new Int32Array(types).fill(TOO_LARGE),
  };
  for (let kind = 0; kind < kinds.count; kind++) {
    if (kinds.turned[kind] !== turned) continue;
    sizes.width[kinds.type[kind]!] = kinds.width[kind]!;
    sizes.height[kinds.type[kind]!] = kinds.height[kind]!;
  }
  return sizes;
}

/** A level with room for this many layouts. */
export function emptyLevel(room: number, types: number): BeamLevel {
  return {
    size: 0,
    remaining: new Uint16Array(room * types),
    top: new Int32Array(room),
    hash: new Int32Array(room),
    history: new Int32Array(room),
    waste: new Float64Array(room),
    area: new Float64Array(room),
  };
}

/** Adds a move and returns its index; the history grows as needed. */
export function recordMove(history: MoveHistory, parent: number, move: number): number {
  if (history.used >= history.parent.length) {
    const longer = (from: Int32Array) => {
      const to = new Int32Array(from.length * 2);
      to.set(from);
      return to;
    };
    history.parent = longer(history.parent);
    history.move = longer(history.move);
  }
  history.parent[history.used] = parent;
  history.move[history.used] = move;
  return history.used++;
}

/** The moves that led to `last`, first move first. */
export function movesUpTo(history: MoveHistory, last: number): number[] {
  const moves: number[] = [];
  for (let at = last; at !== NONE; at = history.parent[at]!) moves.push(history.move[at]!);
  return moves.reverse();
}
