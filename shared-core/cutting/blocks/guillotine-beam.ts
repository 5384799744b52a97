import type { BeamLevel, BeamWorkshop } from './beam-context';
import { ROOT_LEVEL, TRIMMED, layMove } from './beam-move';
import { emptyLevel, recordMove } from './beam-context';
import { clearHeap, offerCandidate, orderedCandidates } from './candidate-heap';
import { NONE, mixHash, pushRectangle, stackEdge, stackHash } from './open-rectangles';

export interface BeamOrder {
  /** Copies to lay of each type. */
  readonly copies: readonly number[];
  /** Rectangles to fill; the last one first. */
  readonly roots: readonly { readonly width: number; readonly height: number }[];
  readonly beamWidth: number;
  /** What an edge of an open rectangle costs against waste, in mean patch sides. */
  readonly edgeWeight: number;
  /** True if every patch has to find its place (hopeless layouts are dropped early), false to fill as much as possible. */
  readonly mustPlaceAll: boolean;
}

export interface BeamOutcome {
  readonly isComplete: boolean;
  /** Area of the patches laid in the fullest layout met. */
  readonly area: number;
  /** Its last move in the history, NONE if none was possible. */
  readonly last: number;
}

/**
 * One beam search: partial layouts grow a block at a time in the topmost open rectangle; of each level the best
 * `beamWidth` live on, judged by waste and open edge per area laid. Waste beyond what the roots can spare ends a layout.
 * Yields between layouts so that the caller can stop it.
 */
export function* searchBeam(shop: BeamWorkshop, order: BeamOrder): Generator<undefined, BeamOutcome> {
  const fabricArea = order.roots.reduce((sum, root) => sum + root.width * root.height, 0);
  const totalArea = order.copies.reduce((sum, count, type) => sum + count * shop.areas[type]!, 0);
  const slack = order.mustPlaceAll ? fabricArea - totalArea : Infinity;
  const best = { area: 0, last: NONE };
  if (slack < 0) return { isComplete: false, ...best };
  startLevel(shop, order);
  const edgePrice = order.edgeWeight * shop.kinds.meanSide;
  for (;;) {
    const [level] = shop.levels;
    clearHeap(shop.heap, order.beamWidth === 1 ? 1 : order.beamWidth + (order.beamWidth >> 1) + 2);
    for (let node = 0; node < level.size; node++) {
      const isOpen = settleTop(shop, level, node);
      if (level.area[node]! > best.area) {
        best.area = level.area[node]!;
        best.last = level.history[node]!;
      }
      if (isOpen && level.waste[node]! <= slack) expandNode(shop, node, slack, edgePrice);
      yield;
    }
    if (shop.heap.size === 0) return { isComplete: false, ...best };
    const complete = keepBest(shop, order, totalArea, best);
    if (complete !== NONE) return { isComplete: true, area: totalArea, last: complete };
  }
}

function startLevel(shop: BeamWorkshop, order: BeamOrder): void {
  const { kinds, store, areas } = shop;
  if (shop.levels[0].top.length < order.beamWidth) {
    shop.levels = [emptyLevel(order.beamWidth, areas.length), emptyLevel(order.beamWidth, areas.length)];
  }
  const [level] = shop.levels;
  store.used = 0;
  shop.history.used = 0;
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
    top = pushRectangle(store, width, height, ROOT_LEVEL, top);
  }
  level.top[0] = top;
  level.waste[0] = waste;
}

/** Drops open rectangles that no remaining patch fits; false if none is left. */
function settleTop(shop: BeamWorkshop, level: BeamLevel, node: number): boolean {
  const { store } = shop;
  let top = level.top[node]!;
  let waste = level.waste[node]!;
  while (top !== NONE && !hasFitting(shop, level, node, store.width[top]!, store.height[top]!)) {
    waste += store.width[top]! * store.height[top]!;
    top = store.below[top]!;
  }
  level.top[node] = top;
  level.waste[node] = waste;
  return top !== NONE;
}

function hasFitting(
  shop: BeamWorkshop,
  level: BeamLevel,
  node: number,
  width: number,
  height: number,
): boolean {
  const { kinds, areas } = shop;
  const offset = node * areas.length;
  for (let kind = 0; kind < kinds.count; kind++) {
    if (kinds.width[kind]! > width || kinds.height[kind]! > height) continue;
    if (level.remaining[offset + kinds.type[kind]!]! > 0) return true;
  }
  return false;
}

/** Offers every block that fits the topmost rectangle, one patch, a full row or a full column, with both first cuts. */
function expandNode(shop: BeamWorkshop, node: number, slack: number, edgePrice: number): void {
  const { kinds, store, heap, laid, limits, typeHash } = shop;
  const { leastHeight, usableWidth, usableHeight } = kinds;
  const level = shop.levels[0];
  const offset = node * shop.areas.length;
  const top = level.top[node]!;
  const width = store.width[top]!;
  const height = store.height[top]!;
  const rectangleLevel = store.level[top]!;
  const below = store.below[top]!;
  const edgeBelow = stackEdge(store, below);
  const hashBelow = stackHash(store, below);
  const wasteBefore = level.waste[node]!;
  const areaBefore = level.area[node]!;
  const hashBefore = level.hash[node]!;
  for (let kind = 0; kind < kinds.count; kind++) {
    const type = kinds.type[kind]!;
    const remaining = level.remaining[offset + type]!;
    if (remaining === 0 || kinds.width[kind]! > width || kinds.height[kind]! > height) continue;
    const lastMove = kind * 6 + (remaining > 1 ? 5 : 1);
    for (let move = kind * 6; move <= lastMove; move++) {
      if (!layMove(laid, kinds, move, remaining, width, height, rectangleLevel, limits)) continue;
      if ((move & 1) === 1 && (laid.width === width || laid.height === height)) continue;
      let waste = wasteBefore;
      let edge = edgeBelow;
      let hash = hashBelow;
      if (laid.outerWidth > 0 && laid.outerHeight > 0) {
        const w = usableWidth[laid.outerWidth]!;
        const h = usableHeight[laid.outerHeight]!;
        waste += laid.outerWidth * laid.outerHeight;
        if (leastHeight[w]! <= h) {
          waste -= w * h;
          edge += w + h;
          hash = mixHash(hash, w, h, laid.outerLevel);
        }
      }
      if (laid.innerWidth > 0 && laid.innerHeight > 0) {
        const w = usableWidth[laid.innerWidth]!;
        const h = usableHeight[laid.innerHeight]!;
        waste += laid.innerWidth * laid.innerHeight;
        if (leastHeight[w]! <= h && laid.innerLevel !== TRIMMED) {
          waste -= w * h;
          edge += w + h;
          hash = mixHash(hash, w, h, laid.innerLevel);
        }
      }
      if (waste > slack) continue;
      const guide = (waste + edgePrice * edge) / (areaBefore + kinds.area[kind]! * laid.copies);
      const typesHash = (hashBefore + Math.imul(typeHash[type]!, laid.copies)) | 0;
      offerCandidate(heap, guide, waste, node, move, (hash ^ typesHash) | 0);
    }
  }
}

/** Makes the best candidates the next level; gives the history of a layout that places everything, else NONE. */
function keepBest(
  shop: BeamWorkshop,
  order: BeamOrder,
  totalArea: number,
  best: { area: number; last: number },
): number {
  const { heap, kinds, store, history, laid, areas } = shop;
  const [level, next] = shop.levels;
  const seen = new Set<number>();
  const types = areas.length;
  next.size = 0;
  for (const entry of orderedCandidates(heap)) {
    if (next.size >= order.beamWidth) break;
    if (seen.has(heap.hash[entry]!)) continue;
    seen.add(heap.hash[entry]!);
    const node = heap.node[entry]!;
    const move = heap.move[entry]!;
    const kind = (move / 6) | 0;
    const type = kinds.type[kind]!;
    const top = level.top[node]!;
    const remaining = level.remaining[node * types + type]!;
    layMove(
      laid,
      kinds,
      move,
      remaining,
      store.width[top]!,
      store.height[top]!,
      store.level[top]!,
      shop.limits,
    );
    const area = level.area[node]! + kinds.area[kind]! * laid.copies;
    const last = recordMove(history, level.history[node]!, move);
    if (area >= totalArea) return last;
    const offset = next.size * types;
    for (let t = 0; t < types; t++) next.remaining[offset + t] = level.remaining[node * types + t]!;
    next.remaining[offset + type] = remaining - laid.copies;
    const newTop = pushRests(shop, store.below[top]!);
    if (order.mustPlaceAll && !allCanFit(shop, next, offset, newTop)) {
      if (area > best.area) {
        best.area = area;
        best.last = last;
      }
      continue;
    }
    next.top[next.size] = newTop;
    next.waste[next.size] = heap.waste[entry]!;
    next.area[next.size] = area;
    next.hash[next.size] = (level.hash[node]! + Math.imul(shop.typeHash[type]!, laid.copies)) | 0;
    next.history[next.size] = last;
    next.size++;
  }
  shop.levels = [next, level];
  return NONE;
}

/** Puts the outer and then the inner rest of the move just laid on the stack, as far as any patch could use them. */
function pushRests({ kinds, store, laid }: BeamWorkshop, below: number): number {
  let top = below;
  if (laid.outerWidth > 0 && laid.outerHeight > 0) {
    const width = kinds.usableWidth[laid.outerWidth]!;
    const height = kinds.usableHeight[laid.outerHeight]!;
    if (kinds.leastHeight[width]! <= height) top = pushRectangle(store, width, height, laid.outerLevel, top);
  }
  if (laid.innerWidth > 0 && laid.innerHeight > 0 && laid.innerLevel !== TRIMMED) {
    const width = kinds.usableWidth[laid.innerWidth]!;
    const height = kinds.usableHeight[laid.innerHeight]!;
    if (kinds.leastHeight[width]! <= height) top = pushRectangle(store, width, height, laid.innerLevel, top);
  }
  return top;
}

/** Whether every type still to be laid fits at least one open rectangle by itself. */
function allCanFit(shop: BeamWorkshop, level: BeamLevel, offset: number, top: number): boolean {
  const types = shop.areas.length;
  for (let type = 0; type < types; type++) {
    if (level.remaining[offset + type]! > 0 && !fitsSomewhere(shop, type, top)) return false;
  }
  return true;
}

function fitsSomewhere({ store, straight, turned }: BeamWorkshop, type: number, top: number): boolean {
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
