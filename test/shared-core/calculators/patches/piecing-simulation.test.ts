import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planUnit } from '#core/calculators/patches/patch-units';
import { polygonArea, polygonPerimeter } from '#core/geometry/polygon';
import { anySeam, anySizesOf, areCongruent, TINY, unitKinds } from './any-unit';
import { areaOnlyIn, offsetByClipper } from './clipper-reference';

describe.each(unitKinds)('sewing %s from its cut patches', (kind) => {
  it('covers the finished unit exactly once, for 200 random sizes', () => {
    fc.assert(
      fc.property(anySizesOf(kind), anySeam, (sizes, seam) => {
        const plan = planUnit(sizes, seam);
        const sewn = plan.patches.map(({ shape }) =>
          shape.patches.map(({ cut }) => offsetByClipper(cut, -1 * seam)),
        );
        for (const { patch, polygon } of plan.finishedPatches) {
          for (const piece of sewn[patch]!) expect(areCongruent(piece, polygon)).toBe(true);
        }
        const places = plan.finishedPatches.map((piece) => piece.polygon);
        const slack = TINY * places.reduce((sum, place) => sum + polygonPerimeter(place), 0);
        const covered = places.reduce((sum, place) => sum + polygonArea(place), 0);
        expect(Math.abs(covered - polygonArea(plan.outline))).toBeLessThan(slack);
        expect(areaOnlyIn([plan.outline], places)).toBeLessThan(slack);
        expect(areaOnlyIn(places, [plan.outline])).toBeLessThan(slack);
      }),
      { numRuns: 200 },
    );
  });
});
