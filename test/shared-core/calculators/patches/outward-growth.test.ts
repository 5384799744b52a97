import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planUnit } from '#core/calculators/patches/patch-units';
import { polygonPerimeter } from '#core/geometry/polygon';
import { anySeam, anySizesOf, areCongruent, finishedByPatch, TINY, unitKinds } from './any-unit';
import { areaOnlyIn, offsetByClipper } from './clipper-reference';

// The independent reference is clipper-lib: the calculators never grow a polygon, they use formulas.
describe.each(unitKinds)('the cut patches of %s', (kind) => {
  it('are the finished ones grown by the seam on every side, for 200 random sizes', () => {
    fc.assert(
      fc.property(anySizesOf(kind), anySeam, (sizes, seam) => {
        const plan = planUnit(sizes, seam);
        const finished = finishedByPatch(plan);
        plan.patches.forEach((patch, index) => {
          const [place] = finished[index]!;
          expect(place, patch.name).toBeDefined();
          for (const { cut, finished: seamLines } of patch.shape.patches) {
            if (seamLines === null) {
              expect(areCongruent(cut, offsetByClipper(place!, seam)), patch.name).toBe(true);
              continue;
            }
            // Sewn and trimmed: every seam line has its full allowance, and no point sticks out past the miter.
            expect(areCongruent(seamLines, place!), patch.name).toBe(true);
            const slack = polygonPerimeter(cut) * TINY;
            expect(areaOnlyIn([offsetByClipper(seamLines, seam, 'round')], [cut])).toBeLessThan(slack);
            expect(areaOnlyIn([cut], [offsetByClipper(seamLines, seam)])).toBeLessThan(slack);
          }
        });
      }),
      { numRuns: 200 },
    );
  });

  it('are as many as the unit has finished patches', () => {
    fc.assert(
      fc.property(anySizesOf(kind), (sizes) => {
        const plan = planUnit(sizes, 2_032);
        const finished = finishedByPatch(plan);
        plan.patches.forEach((patch, index) => {
          const given = patch.takes * patch.shape.patches.length;
          const used = finished[index]!.length * patch.makes;
          expect(given, patch.name).toBeGreaterThanOrEqual(used);
          expect(given - used, patch.name).toBeLessThan(patch.shape.patches.length);
        });
      }),
    );
  });
});
