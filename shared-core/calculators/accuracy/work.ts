import type { AccuracyInput } from './input';
import { type Errors, seamOffForLikely, seamOffForWorst, type Spread, spreadOf } from './spread';

/** A width to measure on the way: what it should be as sewn, and between which limits it may lie. */
export interface CheckSize extends Spread {
  readonly label: string;
  /** With the seam allowance on both outer sides, in 1/320 mm as all here. */
  readonly size: number;
}

export interface AccuracyDetails {
  readonly block: Spread;
  readonly row: Spread;
  readonly column: Spread;
  /** By how much two rows may differ from each other. */
  readonly rowsApart: Spread;
  readonly checks: readonly CheckSize[];
  /** The seam error that keeps a block within the tolerance; null where a block has no seam. */
  readonly seamOffForWorst: number | null;
  readonly seamOffForLikely: number | null;
}

export function workOutAccuracy(input: AccuracyInput): AccuracyDetails {
  const inBlock = errorsOf(input, input.patchesAcross);
  const row = spreadOfBlocks(input, input.blocksAcross);
  const twice = { worst: 2 * row.worst, likely: Math.SQRT2 * row.likely };
  return {
    block: spreadOf(inBlock),
    row,
    column: spreadOfBlocks(input, input.blocksDown),
    rowsApart: twice,
    checks: checksOf(input),
    seamOffForWorst: seamOffForWorst(inBlock, input.tolerance),
    seamOffForLikely: seamOffForLikely(inBlock, input.tolerance),
  };
}

function errorsOf({ cutOff, seamOff }: AccuracyInput, patches: number): Errors {
  return { cuts: patches, cutOff, seams: patches - 1, seamOff };
}

/** Trimming sets every block back to the error of one cut; otherwise all its patches and seams count. */
function spreadOfBlocks(input: AccuracyInput, blocks: number): Spread {
  return spreadOf(errorsOf(input, input.trimsBlocks ? blocks : blocks * input.patchesAcross));
}

/** After every seam of a block, then after one, two, half and all blocks of a row. */
function checksOf(input: AccuracyInput): readonly CheckSize[] {
  const { blockSize, patchesAcross, blocksAcross, seamAllowance } = input;
  const seams = 2 * seamAllowance;
  const patches = Array.from({ length: patchesAcross }, (_, index) => index + 1).map((count) => ({
    label: count === 1 ? 'One patch, cut' : `${String(count)} patches`,
    size: (blockSize * count) / patchesAcross + seams,
    ...spreadOf(errorsOf(input, count)),
  }));
  const half = (blocksAcross - (blocksAcross % 2)) / 2;
  const counts = [...new Set([1, 2, half, blocksAcross])].filter(
    (count) => count >= 1 && count <= blocksAcross,
  );
  const blocks = counts.map((count) => ({
    label: count === 1 ? 'One block, trimmed' : `${String(count)} blocks`,
    size: blockSize * count + seams,
    ...spreadOfBlocks(input, count),
  }));
  return [...patches, ...blocks];
}
