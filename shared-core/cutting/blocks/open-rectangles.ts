/**
 * Rectangles still to fill, as stacks that share their lower parts. An entry never changes, so thousands of partial layouts
 * can point into one store. Fields are parallel arrays; `NONE` is the bottom of a stack.
 */
export interface OpenRectangles {
  width: Int32Array;
  height: Int32Array;
  /** The next entry down. */
  below: Int32Array;
  /** Level of the cuts that lead to it. */
  level: Uint8Array;
  /** Hash of the whole stack from here down. */
  hash: Int32Array;
  /** Sum of the widths and heights of the whole stack from here down, which measures the open edge. */
  edge: Float64Array;
  used: number;
}

export const NONE = -1;
const EMPTY_STACK_HASH = 7;

export function emptyRectangles(room = 2 ** 11): OpenRectangles {
  return {
    width: new Int32Array(room),
    height: new Int32Array(room),
    below: new Int32Array(room),
    level: new Uint8Array(room),
    hash: new Int32Array(room),
    edge: new Float64Array(room),
    used: 0,
  };
}

/** A rectangle that patches can still use, with the level of the cuts that lead to it. */
export interface OpenRectangle {
  readonly width: number;
  readonly height: number;
  readonly level: number;
}

/** Puts a rectangle on top of the stack `below` and returns the new top; the store grows as needed. */
export function pushRectangle(store: OpenRectangles, rectangle: OpenRectangle, below: number): number {
  const { width, height, level } = rectangle;
  if (store.used >= store.width.length) grow(store);
  const top = store.used++;
  store.width[top] = width;
  store.height[top] = height;
  store.below[top] = below;
  store.level[top] = level;
  store.hash[top] = mixHash(stackHash(store, below), rectangle);
  store.edge[top] = stackEdge(store, below) + width + height;
  return top;
}

export function stackHash(store: OpenRectangles, top: number): number {
  return top === NONE ? EMPTY_STACK_HASH : store.hash[top]!;
}

export function stackEdge(store: OpenRectangles, top: number): number {
  return top === NONE ? 0 : store.edge[top]!;
}

/** Hash of a stack after a rectangle is added; the constants are odd numbers without a pattern. */
export function mixHash(hash: number, { width, height, level }: OpenRectangle): number {
  let mixed = Math.imul(hash ^ Math.imul(width, 0x9e3779b1), 0x85ebca6b);
  mixed ^= mixed >>> 13;
  mixed = Math.imul(mixed ^ Math.imul(height + (level << 24), 0xc2b2ae35), 0x27d4eb2f);
  return mixed ^ (mixed >>> 15);
}

function grow(store: OpenRectangles): void {
  const room = store.width.length * 2;
  store.width = longer(new Int32Array(room), store.width);
  store.height = longer(new Int32Array(room), store.height);
  store.below = longer(new Int32Array(room), store.below);
  store.level = longer(new Uint8Array(room), store.level);
  store.hash = longer(new Int32Array(room), store.hash);
  store.edge = longer(new Float64Array(room), store.edge);
}

function longer<Values extends Int32Array | Uint8Array | Float64Array>(to: Values, from: Values): Values {
  to.set(from);
  return to;
}
