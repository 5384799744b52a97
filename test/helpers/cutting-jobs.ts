import fc from 'fast-check';
import type {
  FabricMargins,
  CuttingJob,
  JobFabric,
  JobPatch,
  JobPiece,
  JobPlan,
  PiecePlan,
} from '#core/cutting/tree/cutting-job';
import { checkCutPlan, type CutFault } from '#core/cutting/check/check-cut-plan';
import type { JobAnswer } from '#core/cutting/search/plan-cutting';
import { planCutting } from '#core/cutting/search/plan-cutting';
import { seededRandom } from '#core/units/seeded-random';

export const INCH = 8128;
const NO_MARGINS: FabricMargins = { leftSelvage: 0, rightSelvage: 0, straighten: 0 };
export const BOLT_MARGINS: FabricMargins = {
  leftSelvage: INCH / 2,
  rightSelvage: INCH / 2,
  straighten: INCH / 4,
};

/** A piece of fabric, sizes in inches. */
export function piece(id: string, width: number, length: number, changes: Partial<JobPiece> = {}): JobPiece {
  return {
    id,
    width: width * INCH,
    length: length * INCH,
    margins: NO_MARGINS,
    sheetLength: undefined,
    printRuns: 'along',
    lockedParts: [],
    ...changes,
  };
}

/** Patches of the fabric `plain` unless `changes` says otherwise, sizes in inches. */
export function patch(
  id: string,
  [width, length]: readonly [number, number],
  copies: number,
  changes: Partial<JobPatch> = {},
): JobPatch {
  return {
    id,
    fabric: 'plain',
    width: width * INCH,
    length: length * INCH,
    copies,
    mayTurn: true,
    isBiasSquare: false,
    ...changes,
  };
}

export function fabric(pieces: readonly JobPiece[], changes: Partial<JobFabric> = {}): JobFabric {
  return { id: 'plain', isDirectional: false, pieces, toBuy: undefined, ...changes };
}

export const bolt42 = { width: 43 * INCH, margins: BOLT_MARGINS, lengthStep: 4.5 * INCH };

export function job(
  fabrics: readonly JobFabric[],
  patches: readonly JobPatch[],
  changes: Partial<CuttingJob> = {},
): CuttingJob {
  return {
    fabrics,
    patches,
    table: { rulerLength: 24 * INCH, matLength: 35 * INCH, mayFold: true },
    keep: { shortSide: 3 * INCH, longSide: 6 * INCH },
    wishes: [],
    ...changes,
  };
}

/** The plans after this many steps of all searches together, and after the first plans at the earliest. */
export function plansAfter(asked: CuttingJob, steps: number, seed = 1): JobAnswer {
  const search = planCutting(asked, seededRandom(seed));
  let done = 0;
  search.step(() => done++, steps);
  for (;;) {
    const answer = search.answer();
    if (answer !== undefined) return answer;
    search.step(() => 0, 0);
  }
}

/** The faults that the checker finds in one piece, with the patches turned as that piece allows. */
export function faultsOf(
  asked: CuttingJob,
  plan: JobPlan,
  cut: PiecePlan,
): readonly (CutFault | 'not whole sheets')[] {
  const material = asked.fabrics.find(({ id }) => id === cut.fabric)!;
  const source = material.pieces.find(({ id }) => id === cut.piece);
  const isOnItsSide = source?.printRuns === 'across';
  const patches = asked.patches.map(({ width, length, copies, mayTurn, fabric: of }) => ({
    width,
    height: length,
    copies: of === cut.fabric ? copies : 0,
    mayTurn: isOnItsSide || (mayTurn && !material.isDirectional),
  }));
  const rule = plan.rule === '2-stage' && !isOnItsSide ? '2-stage' : 'guillotine';
  const check = { width: cut.width, patches, rule, needsAllCopies: false } as const;
  if (cut.tree.kind !== 'sheets') return checkCutPlan(cut.tree, { ...check, height: cut.length });
  if (cut.width !== source!.width || cut.length % source!.sheetLength! !== 0 || cut.length > source!.length)
    return ['not whole sheets'];
  return cut.tree.parts.flatMap((sheet) => checkCutPlan(sheet, { ...check, height: source!.sheetLength! }));
}

/** The copies of each patch that a plan places, by the patch's id. */
export function placedCopies(asked: CuttingJob, plan: JobPlan): Map<string, number> {
  const counts = new Map(asked.patches.map(({ id }) => [id, 0]));
  for (const place of plan.pieces.flatMap(({ placed }) => placed)) {
    const { id } = asked.patches[place.patch]!;
    counts.set(id, counts.get(id)! + 1);
  }
  return counts;
}

const halfInches = (most: number) => fc.integer({ min: 2, max: most * 2 }).map((halves) => halves / 2);

const anyPiece = fc.record({
  width: halfInches(42),
  length: halfInches(60),
  hasMargins: fc.boolean(),
  printRuns: fc.constantFrom('along', 'across'),
  /** The number of sheets of a pack; `length` is then the length of one sheet. */
  sheets: fc.option(fc.integer({ min: 1, max: 6 }), { freq: 3, nil: undefined }),
} as const);

/** A job with one or two fabrics, each with some pieces and with or without fabric to buy. Patches may be too large. */
export const anyJob: fc.Arbitrary<CuttingJob> = fc
  .record({
    fabrics: fc.array(
      fc.record({
        pieces: fc.array(anyPiece, { maxLength: 4 }),
        isDirectional: fc.boolean(),
        canBuy: fc.boolean(),
      }),
      { minLength: 1, maxLength: 2 },
    ),
    patches: fc.array(
      fc.record({
        fabric: fc.nat(1),
        width: halfInches(16),
        length: halfInches(16),
        copies: fc.integer({ min: 1, max: 9 }),
        mayTurn: fc.boolean(),
      }),
      { maxLength: 5 },
    ),
    mayFold: fc.boolean(),
  })
  .map(({ fabrics, patches, mayFold }) =>
    job(
      fabrics.map(({ pieces, isDirectional, canBuy }, f) => ({
        id: `fabric ${f}`,
        isDirectional,
        toBuy: canBuy ? bolt42 : undefined,
        pieces: pieces.map(({ width, length, hasMargins, printRuns, sheets }, p) =>
          piece(`piece ${f}.${p}`, width, length * (sheets ?? 1), {
            printRuns,
            margins: hasMargins && sheets === undefined ? BOLT_MARGINS : NO_MARGINS,
            sheetLength: sheets === undefined ? undefined : length * INCH,
          }),
        ),
      })),
      patches.map(({ fabric: f, width, length, ...rest }, p) =>
        patch(`patch ${p}`, [width, length], rest.copies, {
          fabric: `fabric ${f % fabrics.length}`,
          mayTurn: rest.mayTurn,
        }),
      ),
      { table: { rulerLength: 24 * INCH, matLength: 35 * INCH, mayFold } },
    ),
  );
