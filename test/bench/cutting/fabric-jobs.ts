import type { PatchType } from '#core/cutting/tree/cut-plan';
import { patchesOnGrid, searchGrid } from '#core/cutting/search/search-grid';
import { seededRandom } from '#core/units/seeded-random';
import { knapsackOf } from '#core/cutting/strips/strip-knapsack';
import { stripModel } from '#core/cutting/strips/strip-model';
import { solveStripProgram, stripProgram } from '#core/cutting/strips/strip-program';
import type { BenchProblem } from './bench-problem';

const INCH = 8128;
const HALF_INCH = INCH / 2;
/** Fabric of 42 in between the selvages: common practice. */
const FABRIC_WIDTH = 42 * INCH;
const JOBS = 24;
const FIRST_SEED = 20_001;

/**
 * Seeded jobs like those of a maker: fabric of 42 in and 5 to 12 sizes in half inches with many copies. In every third job the
 * patches may not turn, and every fourth has a bias square. The reference is the bound of the strip program, which no layout in
 * strips can go below.
 */
export function fabricJobs(): BenchProblem[] {
  return Array.from({ length: JOBS }, (_, index) => {
    const patches = jobPatches(index, seededRandom(FIRST_SEED + index));
    const name = `fabric-${String(index + 1).padStart(2, '0')}`;
    return { name, stripWidth: FABRIC_WIDTH, patches, reference: stripBound(patches) };
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

/** The bound of the solved strip program. It counts fractions of strips, so all layouts with whole strips may be above it. */
function stripBound(patches: readonly PatchType[]): number {
  const grid = searchGrid(patches, FABRIC_WIDTH, FABRIC_WIDTH);
  const model = stripModel(patchesOnGrid(patches, grid, FABRIC_WIDTH), Math.floor(FABRIC_WIDTH / grid.x));
  const program = stripProgram(knapsackOf(model));
  const work = solveStripProgram(program);
  while (work.next().done !== true);
  return program.bound * grid.y;
}
