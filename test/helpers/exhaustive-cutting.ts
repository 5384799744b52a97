import type { StripProblem } from '#core/cutting/tree/cut-plan';

interface Box {
  readonly w: number;
  readonly h: number;
}

function patchesOf({
  patches,
}: StripProblem): { readonly w: number; readonly h: number; readonly mayTurn: boolean }[] {
  return patches.flatMap(({ width, height, copies, mayTurn }) =>
    Array.from({ length: copies }, () => ({ w: width, h: height, mayTurn })),
  );
}

/** The boxes for which no other box is at most as wide and at most as high. */
function smallest(boxes: readonly Box[]): Box[] {
  const kept: Box[] = [];
  for (const box of [...boxes].sort((a, b) => a.w - b.w || a.h - b.h)) {
    if (box.h < (kept.at(-1)?.h ?? Infinity)) kept.push(box);
  }
  return kept;
}

/**
 * The least height of any guillotine layout, found by trying all of them. The first cut of a layout divides its patches into
 * two sets, so the smallest boxes of every set follow from those of its parts. Works up to about eight patches.
 */
export function leastGuillotineHeight(problem: StripProblem): number {
  const all = patchesOf(problem);
  const boxes: Box[][] = [[]];
  for (let set = 1; set < 1 << all.length; set++) {
    const found: Box[] = [];
    for (const [index, { w, h, mayTurn }] of all.entries()) {
      if (set === 1 << index) found.push({ w, h }, ...(mayTurn ? [{ w: h, h: w }] : []));
    }
    for (let part = (set - 1) & set; part > set >> 1; part = (part - 1) & set) {
      for (const a of boxes[part]!) {
        for (const b of boxes[set ^ part]!) {
          found.push({ w: a.w + b.w, h: Math.max(a.h, b.h) }, { w: Math.max(a.w, b.w), h: a.h + b.h });
        }
      }
    }
    boxes.push(smallest(found.filter((box) => box.w <= problem.stripWidth)));
  }
  return boxes.at(-1)!.reduce((least, box) => Math.min(least, box.h), all.length === 0 ? 0 : Infinity);
}

/** The least height of any layout in strips with one patch to a cell, found by trying all sets and turnings. */
export function leastStripHeight(problem: StripProblem): number {
  const all = patchesOf(problem);
  const sets = 1 << all.length;
  const strip = Array.from({ length: sets }, (_, set) =>
    oneStrip(
      all.filter((_patch, i) => set & (1 << i)),
      problem.stripWidth,
    ),
  );
  const least = [0];
  for (let set = 1; set < sets; set++) {
    let best = strip[set]!;
    for (let part = (set - 1) & set; part > 0; part = (part - 1) & set) {
      best = Math.min(best, strip[part]! + least[set ^ part]!);
    }
    least.push(best);
  }
  return least.at(-1)!;
}

function oneStrip(patches: ReturnType<typeof patchesOf>, width: number): number {
  let best = Infinity;
  for (let turns = 0; turns < 1 << patches.length; turns++) {
    const laid = patches.map(({ w, h, mayTurn }, i) =>
      turns & (1 << i) && mayTurn ? { w: h, h: w } : { w, h },
    );
    const used = laid.reduce((sum, box) => sum + box.w, 0);
    if (used <= width)
      best = Math.min(
        best,
        laid.reduce((most, box) => Math.max(most, box.h), 0),
      );
  }
  return best;
}
