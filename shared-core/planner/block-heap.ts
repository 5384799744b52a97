/**
 * A heap of block numbers with the least value first, and of equal values the lower number. The value of a block must not
 * change while it is in the heap.
 */
export interface BlockHeap {
  readonly size: () => number;
  /** The first block, which stays in the heap. The heap must not be empty. */
  readonly first: () => number;
  readonly push: (block: number) => void;
  readonly pop: () => number;
}

export function makeBlockHeap(values: Float64Array): BlockHeap {
  const heap = new Int32Array(values.length);
  let size = 0;
  const isBefore = (one: number, other: number): boolean => {
    const difference = values[one]! - values[other]!;
    return difference < 0 || (difference === 0 && one < other);
  };
  const sink = (block: number): void => {
    let place = 0;
    for (;;) {
      let child = 2 * place + 1;
      if (child >= size) break;
      if (child + 1 < size && isBefore(heap[child + 1]!, heap[child]!)) child += 1;
      if (!isBefore(heap[child]!, block)) break;
      heap[place] = heap[child]!;
      place = child;
    }
    heap[place] = block;
  };
  return {
    size: () => size,
    first: () => heap[0]!,
    push: (block) => {
      let place = size;
      size += 1;
      while (place > 0) {
        const parent = (place - 1) >> 1;
        if (!isBefore(block, heap[parent]!)) break;
        heap[place] = heap[parent]!;
        place = parent;
      }
      heap[place] = block;
    },
    pop: () => {
      const least = heap[0]!;
      size -= 1;
      if (size > 0) sink(heap[size]!);
      return least;
    },
  };
}
