import type { PatchType } from '#core/cutting/cut-plan';
import { createCuttingSearch } from '#core/cutting/cutting-search';
import { seededRandom } from '#core/cutting/seeded-random';
import type { BenchProblem } from './bench-problem';

const INCH = 8128;
const HALF_INCH = INCH / 2;
/** Cloth of 42 in between the selvages: common practice. */
const CLOTH_WIDTH = 42 * INCH;
const JOBS = 24;
const FIRST_SEED = 20_001;

/**
 * Seeded jobs like a maker's: cloth of 42 in, 5 to 12 sizes in half inches with many copies, every third job with a print
 * that may not turn, every fourth with a bias square. Their reference is the bound of the strip program, which no layout
 * in strips can reach below.
 */
export function fabricJobs(): BenchProblem[] {
  return Array.from({ length: JOBS }, (_, index) => {
    const patches = jobPatches(index, seededRandom(FIRST_SEED + index));
    const name = `fabric-${String(index + 1).padStart(2, '0')}`;
    return { name, stripWidth: CLOTH_WIDTH, patches, reference: stripBound(patches) };
  });
}

function jobPatches(index: number, random: () => number): PatchType[] {
  const between = (low: number, high: number) => low + Math.floor(random() * (high - low + 1));
  const mayTurn = index % 3 !== 2;
  const sizes = between(5, 12);
  const patches = new Map<string, PatchType>();
  while (patches.size < sizes) {
    const width = between(3, 26) * HALF_INCH;
    const height = random() < 0.3 ? width : between(3, 26) * HALF_INCH;
    const copies = between(2, 12);
    patches.set([width, height].sort((a, b) => a - b).join(), { width, height, copies, mayTurn });
  }
  const bias = between(24, 44) * HALF_INCH;
  return index % 4 === 3
    ? [...patches.values(), { width: bias, height: bias, copies: 1, mayTurn: true }]
    : [...patches.values()];
}

/** The bound of the strip program, solved to the end: a search for simple cuts is run until it has no news of it. */
function stripBound(patches: readonly PatchType[]): number {
  const search = createCuttingSearch(
    { stripWidth: CLOTH_WIDTH, patches },
    { rule: '2-stage', random: seededRandom(1) },
  );
  if (!search.ok) throw new Error('A fabric job holds a patch wider than its cloth.');
  let ticks = 0;
  search.value.step(() => ticks++, 4000);
  const answer = search.value.answer();
  if (answer === undefined) throw new Error('A fabric job has no bound yet.');
  return answer.lowerBound;
}
