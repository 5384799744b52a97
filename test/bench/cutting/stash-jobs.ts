import type { FabricMargins, CuttingJob, JobPatch, JobPiece } from '#core/cutting/tree/cutting-job';
import { seededRandom } from '#core/units/seeded-random';

const INCH = 8128;
const HALF_INCH = INCH / 2;
const JOBS = 16;
const FIRST_SEED = 30_001;
const NO_MARGINS: FabricMargins = { leftSelvage: 0, rightSelvage: 0, straighten: 0 };
const BOLT_MARGINS: FabricMargins = {
  leftSelvage: HALF_INCH,
  rightSelvage: HALF_INCH,
  straighten: HALF_INCH,
};

/**
 * Seeded whole jobs with two fabrics, the second of them with a directional print in every other job. Each fabric has leftovers,
 * fat quarters (18 x 21 in), 10 in precuts and a length of bolt, and 43 in fabric with selvages to buy by the eighth of a yard.
 */
export function stashJobs(): { readonly name: string; readonly job: CuttingJob }[] {
  return Array.from({ length: JOBS }, (_, index) => {
    const random = seededRandom(FIRST_SEED + index);
    const between = (low: number, high: number) => low + Math.floor(random() * (high - low + 1));
    const fabrics = ['plain', 'print'].map((id) => ({
      id,
      isDirectional: id === 'print' && index % 2 === 1,
      pieces: stash(id, between),
      toBuy: { width: 43 * INCH, margins: BOLT_MARGINS, lengthStep: 4.5 * INCH },
    }));
    const patches = fabrics.flatMap(({ id }) => patchesOf(id, between));
    const job = {
      fabrics,
      patches,
      table: { rulerLength: 24 * INCH, matLength: 35 * INCH, mayFold: true },
      keep: { shortSide: 3 * INCH, longSide: 6 * INCH },
      wishes: [],
    };
    return { name: `stash-${String(index + 1).padStart(2, '0')}`, job };
  });
}

type Between = (low: number, high: number) => number;

function stash(fabric: string, between: Between): JobPiece[] {
  const pieces = (
    kind: string,
    count: number,
    size: () => { width: number; length: number },
    margins: FabricMargins,
  ) =>
    Array.from({ length: count }, (_, i): JobPiece => {
      const id = `${fabric} ${kind} ${i}`;
      return { id, ...size(), margins, sheetLength: undefined, printRuns: 'along', lockedParts: [] };
    });
  const leftover = () => ({ width: between(8, 60) * HALF_INCH, length: between(8, 60) * HALF_INCH });
  return [
    ...pieces('leftover', between(0, 3), leftover, NO_MARGINS),
    ...pieces('fat quarter', between(0, 3), () => ({ width: 21 * INCH, length: 18 * INCH }), NO_MARGINS),
    ...pieces('precut', between(0, 4), () => ({ width: 10 * INCH, length: 10 * INCH }), NO_MARGINS),
    ...pieces(
      'bolt',
      between(0, 1),
      () => ({ width: 43 * INCH, length: between(18, 54) * INCH }),
      BOLT_MARGINS,
    ),
  ];
}

function patchesOf(fabric: string, between: Between): JobPatch[] {
  const sizes = Array.from({ length: between(2, 5) }, (_, i): JobPatch => {
    const size = { width: between(3, 20) * HALF_INCH, length: between(3, 20) * HALF_INCH };
    return {
      id: `${fabric} ${i}`,
      fabric,
      ...size,
      copies: between(2, 16),
      mayTurn: true,
      isBiasSquare: false,
    };
  });
  const bias = between(24, 34) * HALF_INCH;
  const square = {
    id: `${fabric} bias`,
    fabric,
    width: bias,
    length: bias,
    copies: 1,
    mayTurn: true,
    isBiasSquare: true,
  };
  return between(0, 3) === 0 ? [...sizes, square] : sizes;
}
