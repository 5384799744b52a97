import type { AccuracyInput } from './input';
import { type Errors, seamOffForLikely, seamOffForWorst, type Spread, spreadOf } from './spread';

/** A width to measure along the way: its size as sewn and how far it may be off. */
interface CheckSize extends Spread {
  readonly label: string;
  /** With the seam allowance on both outer sides, in 1/320 mm. */
  readonly size: number;
}

export interface AccuracyDetails {
  readonly block: Spread;
  readonly row: Spread;
  readonly column: Spread;
  /** How much two rows may differ from each other. */
  readonly rowsApart: Spread;
  readonly checks: readonly CheckSize[];
  /** The seam error that keeps a block within the tolerance; null if a block has no seam or no seam is enough. */
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

/** A trimmed block is off by one cut only; otherwise the errors of all its patches and seams count. */
function spreadOfBlocks(input: AccuracyInput, blocks: number): Spread {
  return spreadOf(errorsOf(input, input.trimsBlocks ? blocks : blocks * input.patchesAcross));
}

/** After each seam of a block, then after one, two, half and all blocks of a row. */
function checksOf(input: AccuracyInput): readonly CheckSize[] {
  const { blockSize, patchesAcross, blocksAcross, seamAllowance, trimsBlocks } = input;
  const oneBlock = trimsBlocks ? 'One block, trimmed' : 'One block';
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
    label: count === 1 ? oneBlock : `${String(count)} blocks`,
    size: blockSize * count + seams,
    ...spreadOfBlocks(input, count),
  }));
  return [...patches, ...blocks];
}
