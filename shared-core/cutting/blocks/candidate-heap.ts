/**
 * The best `capacity` moves from one level of the beam, as a heap with the worst on top, so that one comparison rejects most
 * candidates. A table of hashes keeps the better of two candidates that lead to the same partial layout.
 */
export interface CandidateHeap {
  size: number;
  capacity: number;
  guide: Float64Array;
  waste: Float64Array;
  node: Int32Array;
  move: Int32Array;
  hash: Int32Array;
  /** Stamp of the current level: entries of the table with an older stamp are empty. */
  stamp: number;
  seenStamp: Int32Array;
  seenHash: Int32Array;
  seenGuide: Float64Array;
}

/** The table of hashes: its smallest and largest size, entries per candidate, and slots looked at before giving up. */
const LEAST_SEEN = 2 ** 11;
const MOST_SEEN = 2 ** 17;
const SEEN_PER_CANDIDATE = 64;
const PROBES = 8;

export function emptyHeap(): CandidateHeap {
  return {
    size: 0,
    capacity: 0,
    guide: new Float64Array(0),
    waste: new Float64Array(0),
    node: new Int32Array(0),
    move: new Int32Array(0),
    hash: new Int32Array(0),
    stamp: 0,
    seenStamp: new Int32Array(LEAST_SEEN),
    seenHash: new Int32Array(LEAST_SEEN),
    seenGuide: new Float64Array(LEAST_SEEN),
  };
}

/** Empties the heap for a new level of at most `capacity` candidates. */
export function clearHeap(heap: CandidateHeap, capacity: number): void {
  if (heap.guide.length < capacity) {
    heap.guide = new Float64Array(capacity);
    heap.waste = new Float64Array(capacity);
    heap.node = new Int32Array(capacity);
    heap.move = new Int32Array(capacity);
    heap.hash = new Int32Array(capacity);
  }
  const seen = heap.seenHash.length;
  if (seen < MOST_SEEN && seen < capacity * SEEN_PER_CANDIDATE) {
    heap.seenStamp = new Int32Array(seen * 4);
    heap.seenHash = new Int32Array(seen * 4);
    heap.seenGuide = new Float64Array(seen * 4);
  }
  heap.capacity = capacity;
  heap.size = 0;
  heap.stamp++;
}

/** A move from one partial layout to the next. A smaller guide is better; `hash` belongs to the layout that results. */
export interface Candidate {
  guide: number;
  waste: number;
  node: number;
  move: number;
  hash: number;
}

/** Keeps a candidate unless it is a duplicate, or the heap is full and all its candidates are better. */
export function offerCandidate(heap: CandidateHeap, candidate: Candidate): void {
  const { guide } = candidate;
  const guides = heap.guide;
  if (heap.size >= heap.capacity && guide >= guides[0]!) return;
  if (isDuplicate(heap, guide, candidate.hash)) return;
  let place: number;
  if (heap.size < heap.capacity) {
    place = heap.size++;
    while (place > 0) {
      const parent = (place - 1) >> 1;
      if (guides[parent]! >= guide) break;
      moveEntry(heap, parent, place);
      place = parent;
    }
  } else {
    place = 0;
    for (;;) {
      let child = 2 * place + 1;
      if (child >= heap.size) break;
      if (child + 1 < heap.size && guides[child + 1]! > guides[child]!) child++;
      if (guides[child]! <= guide) break;
      moveEntry(heap, child, place);
      place = child;
    }
  }
  guides[place] = guide;
  heap.waste[place] = candidate.waste;
  heap.node[place] = candidate.node;
  heap.move[place] = candidate.move;
  heap.hash[place] = candidate.hash;
}

/** Indexes of all candidates, best first. */
export function orderedCandidates(heap: CandidateHeap): Int32Array {
  const order = new Int32Array(heap.size);
  for (let i = 0; i < order.length; i++) order[i] = i;
  return order.sort((a, b) => heap.guide[a]! - heap.guide[b]!);
}

function moveEntry(heap: CandidateHeap, from: number, to: number): void {
  heap.guide[to] = heap.guide[from]!;
  heap.waste[to] = heap.waste[from]!;
  heap.node[to] = heap.node[from]!;
  heap.move[to] = heap.move[from]!;
  heap.hash[to] = heap.hash[from]!;
}

function isDuplicate(heap: CandidateHeap, guide: number, hash: number): boolean {
  const last = heap.seenHash.length - 1;
  let slot = (hash ^ (hash >>> 16)) & last;
  for (let probe = 0; probe < PROBES; probe++) {
    if (heap.seenStamp[slot] !== heap.stamp) {
      heap.seenStamp[slot] = heap.stamp;
      heap.seenHash[slot] = hash;
      heap.seenGuide[slot] = guide;
      return false;
    }
    if (heap.seenHash[slot] === hash) {
      if (heap.seenGuide[slot]! <= guide) return true;
      heap.seenGuide[slot] = guide;
      return false;
    }
    slot = (slot + 1) & last;
  }
  return false;
}
