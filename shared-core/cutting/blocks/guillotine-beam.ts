import type { BeamLevel, BeamContext } from './beam-context';
import {
  COLUMN,
  encodeMove,
  isAcrossFirst,
  kindOfMove,
  layMove,
  type MoveRest,
  ROOT_LEVEL,
  SINGLE,
  TRIMMED,
} from './beam-move';
import type { PatchKinds } from './patch-kinds';
import { emptyLevel, recordMove } from './beam-context';
import { clearHeap, offerCandidate, orderedCandidates } from './candidate-heap';
import { mixHash, NONE, type OpenRectangle, pushRectangle, stackEdge, stackHash } from './open-rectangles';

export interface BeamOrder {
  /** Copies to place of each type. */
  readonly copies: readonly number[];
  /** Rectangles to fill; the last one first. */
  readonly roots: readonly { readonly width: number; readonly height: number }[];
  readonly beamWidth: number;
  /** How much an edge of an open rectangle costs compared with waste, in mean patch sides. */
  readonly edgeWeight: number;
  /** True if every patch must be placed, so that hopeless layouts are dropped early; false to fill as much as possible. */
  readonly mustPlaceAll: boolean;
}

/** More candidates are kept than the beam is wide, because some turn out to be hopeless. */
const SPARE_CANDIDATES = 1.5;

export interface BeamOutcome {
  readonly isComplete: boolean;
  /** Area of the patches in the fullest layout found. */
  readonly area: number;
  /** Its last move in the history; NONE if no move was possible. */
  readonly last: number;
}

/**
 * One beam search: partial layouts grow a block at a time in the topmost open rectangle. Keeps the best `beamWidth` layouts
 * of each level, judged by waste and open edge per area placed. A layout is dropped when it wastes more than the roots can
 * spare.
 * Yields between layouts so that the caller can stop it.
 */
export function* searchBeam(context: BeamContext, order: BeamOrder): Generator<undefined, BeamOutcome> {
  const fabricArea = order.roots.reduce((sum, root) => sum + root.width * root.height, 0);
  const totalArea = order.copies.reduce((sum, count, type) => sum + count * context.areas[type]!, 0);
  const slack = order.mustPlaceAll ? fabricArea - totalArea : Infinity;
  const best = { area: 0, last: NONE };
  if (slack < 0) return { isComplete: false, ...best };
  startLevel(context, order);
  const edgePrice = order.edgeWeight * context.kinds.meanSide;
  for (;;) {
    const [level] = context.levels;
    clearHeap(context.heap, order.beamWidth === 1 ? 1 : Math.floor(order.beamWidth * SPARE_CANDIDATES) + 2);
    for (let node = 0; node < level.size; node++) {
      const isOpen = settleTop(context, level, node);
      if (level.area[node]! > best.area) {
        best.area = level.area[node]!;
        best.last = level.history[node]!;
      }
      if (isOpen && level.waste[node]! <= slack) expandNode(context, node, slack, edgePrice);
      yield;
    }
    if (context.heap.size === 0) return { isComplete: false, ...best };
    const complete = keepBest(context, order, totalArea, best);
    if (complete !== NONE) return { isComplete: true, area: totalArea, last: complete };
  }
}

function startLevel(context: BeamContext, order: BeamOrder): void {
  const { kinds, store, areas } = context;
  if (context.levels[0].top.length < order.beamWidth) {
    context.levels = [emptyLevel(order.beamWidth, areas.length), emptyLevel(order.beamWidth, areas.length)];
  }
  const [level] = context.levels;
  store.used = 0;
  context.history.used = 0;
  level.size = 1;
  level.remaining.set(order.copies);
  level.hash[0] = 0;
  level.history[0] = NONE;
  level.area[0] = 0;
  let top = NONE;
  let waste = 0;
  for (const root of order.roots) {
    const width = kinds.usableWidth[root.width]!;
    const height = kinds.usableHeight[root.height]!;
    waste += root.width * root.height - width * height;
    top = pushRectangle(store, { width, height, level: ROOT_LEVEL }, top);
  }
  level.top[0] = top;
  level.waste[0] = waste;
}

/** Drops open rectangles that no remaining patch fits; false if none is left. */
function settleTop(context: BeamContext, level: BeamLevel, node: number): boolean {
  const { store } = context;
  let top = level.top[node]!;
  let waste = level.waste[node]!;
  while (top !== NONE && !hasFitting(context, level, node, top)) {
    waste += store.width[top]! * store.height[top]!;
    top = store.below[top]!;
  }
  level.top[node] = top;
  level.waste[node] = waste;
  return top !== NONE;
}

/** Whether one of the remaining patches fits the open rectangle. */
function hasFitting(context: BeamContext, level: BeamLevel, node: number, open: number): boolean {
  const { kinds, areas, store } = context;
  const width = store.width[open]!;
  const height = store.height[open]!;
  const offset = node * areas.length;
  for (let kind = 0; kind < kinds.count; kind++) {
    if (kinds.width[kind]! > width || kinds.height[kind]! > height) continue;
    if (level.remaining[offset + kinds.type[kind]!]! > 0) return true;
  }
  return false;
}

/**
 * Offers every block that fits the topmost rectangle: one patch, a full row or a full column, each with both first cuts.
 */
function expandNode(context: BeamContext, node: number, slack: number, edgePrice: number): void {
  const { kinds, store, heap, laid, place, candidate, typeHash } = context;
  const level = context.levels[0];
  const offset = node * context.areas.length;
  const top = level.top[node]!;
  place.width = store.width[top]!;
  place.height = store.height[top]!;
  place.level = store.level[top]!;
  const below = store.below[top]!;
  const rests = { waste: 0, edge: 0, hash: 0 };
  candidate.node = node;
  for (let kind = 0; kind < kinds.count; kind++) {
    const type = kinds.type[kind]!;
    place.remaining = level.remaining[offset + type]!;
    const fits = kinds.width[kind]! <= place.width && kinds.height[kind]! <= place.height;
    if (place.remaining === 0 || !fits) continue;
    const last = encodeMove(kind, place.remaining > 1 ? COLUMN : SINGLE, true);
    for (let move = encodeMove(kind, SINGLE, false); move <= last; move++) {
      if (!layMove(laid, context, move, place)) continue;
      // A block that fills a side leaves one rest, and both first cuts are the same.
      const fillsSide = laid.width === place.width || laid.height === place.height;
      if (fillsSide && isAcrossFirst(move)) continue;
      rests.waste = level.waste[node]!;
      rests.edge = stackEdge(store, below);
      rests.hash = stackHash(store, below);
      addRest(rests, kinds, laid.outer);
      addRest(rests, kinds, laid.inner);
      if (rests.waste > slack) continue;
      const area = level.area[node]! + kinds.area[kind]! * laid.copies;
      const typesHash = (level.hash[node]! + Math.imul(typeHash[type]!, laid.copies)) | 0;
      candidate.guide = (rests.waste + edgePrice * rests.edge) / area;
      candidate.waste = rests.waste;
      candidate.move = move;
      candidate.hash = (rests.hash ^ typesHash) | 0;
      offerCandidate(heap, candidate);
    }
  }
}

/** Open edge and waste of a layout. */
interface RestSums {
  waste: number;
  edge: number;
  hash: number;
}

/** Adds the usable part of a rest as open edge and the other part as waste. */
function addRest(sums: RestSums, kinds: PatchKinds, rest: MoveRest): void {
  if (rest.width === 0 || rest.height === 0) return;
  sums.waste += rest.width * rest.height;
  if (!isUsable(kinds, rest)) return;
  const open = usablePart(kinds, rest);
  sums.waste -= open.width * open.height;
  sums.edge += open.width + open.height;
  sums.hash = mixHash(sums.hash, open);
}

/** Whether a patch fits the usable part of a rest. */
function isUsable(kinds: PatchKinds, { width, height, level }: MoveRest): boolean {
  if (width === 0 || height === 0 || level === TRIMMED) return false;
  return kinds.leastHeight[kinds.usableWidth[width]!]! <= kinds.usableHeight[height]!;
}

/** Makes the best candidates the next level; returns the history of a layout that places everything, otherwise NONE. */
function keepBest(
  context: BeamContext,
  order: BeamOrder,
  totalArea: number,
  best: { area: number; last: number },
): number {
  const { heap, kinds, store, history, laid, place, areas } = context;
  const [level, next] = context.levels;
  const seen = new Set<number>();
  const types = areas.length;
  next.size = 0;
  for (const entry of orderedCandidates(heap)) {
    if (next.size >= order.beamWidth) break;
    if (seen.has(heap.hash[entry]!)) continue;
    seen.add(heap.hash[entry]!);
    const node = heap.node[entry]!;
    const move = heap.move[entry]!;
    const kind = kindOfMove(move);
    const type = kinds.type[kind]!;
    const top = level.top[node]!;
    const remaining = level.remaining[node * types + type]!;
    place.width = store.width[top]!;
    place.height = store.height[top]!;
    place.level = store.level[top]!;
    place.remaining = remaining;
    layMove(laid, context, move, place);
    const area = level.area[node]! + kinds.area[kind]! * laid.copies;
    const last = recordMove(history, level.history[node]!, move);
    if (area >= totalArea) return last;
    const offset = next.size * types;
    for (let t = 0; t < types; t++) next.remaining[offset + t] = level.remaining[node * types + t]!;
    next.remaining[offset + type] = remaining - laid.copies;
    const newTop = pushRests(context, store.below[top]!);
    if (order.mustPlaceAll && !allCanFit(context, next, offset, newTop)) {
      if (area > best.area) {
        best.area = area;
        best.last = last;
      }
      continue;
    }
    next.top[next.size] = newTop;
    next.waste[next.size] = heap.waste[entry]!;
    next.area[next.size] = area;
    next.hash[next.size] = (level.hash[node]! + Math.imul(context.typeHash[type]!, laid.copies)) | 0;
    next.history[next.size] = last;
    next.size++;
  }
  context.levels = [next, level];
  return NONE;
}

/** Puts the outer and then the inner rest of the move on the stack, if any patch can use them. */
function pushRests({ kinds, store, laid }: BeamContext, below: number): number {
  let top = below;
  for (const rest of [laid.outer, laid.inner]) {
    if (isUsable(kinds, rest)) top = pushRectangle(store, usablePart(kinds, rest), top);
  }
  return top;
}

function usablePart(kinds: PatchKinds, { width, height, level }: MoveRest): OpenRectangle {
  return { width: kinds.usableWidth[width]!, height: kinds.usableHeight[height]!, level };
}

/** Whether every remaining type fits at least one open rectangle by itself. */
function allCanFit(context: BeamContext, level: BeamLevel, offset: number, top: number): boolean {
  const types = context.areas.length;
  for (let type = 0; type < types; type++) {
    if (level.remaining[offset + type]! > 0 && !fitsSomewhere(context, type, top)) return false;
  }
  return true;
}

function fitsSomewhere({ store, straight, turned }: BeamContext, type: number, top: number): boolean {
  const width = straight.width[type]!;
  const height = straight.height[type]!;
  const turnedWidth = turned.width[type]!;
  const turnedHeight = turned.height[type]!;
  for (let open = top; open !== NONE; open = store.below[open]!) {
    const w = store.width[open]!;
    const h = store.height[open]!;
    if ((width <= w && height <= h) || (turnedWidth <= w && turnedHeight <= h)) return true;
  }
  return false;
}
