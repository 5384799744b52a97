import { describe, expect, it } from 'vitest';
import { fittingPlans } from '#core/domain/fitting-plans';
import { stageKindRecord } from '#core/domain/stage-kinds';
import { STARTING_PLANS } from '#core/domain/starting-plans';

const namesFor = (hasHole: boolean, hasSlit: boolean) =>
  fittingPlans(STARTING_PLANS, { hasHole, hasSlit }).map(({ name }) => name);

describe('the plans that fit a project', () => {
  it('follow from its hole and slit', () => {
    expect(namesFor(false, false)).toEqual(['Runner', 'Throw', 'Small mat']);
    expect(namesFor(true, false)).toEqual(['Tree skirt, closed ring', 'Table topper with a hole']);
    expect(namesFor(true, true)).toEqual(['Tree skirt', 'Tree skirt, bound before the cut']);
  });

  it('cut a hole where there is one, and nowhere else', () => {
    for (const hasHole of [false, true]) {
      for (const { name, stages } of fittingPlans(STARTING_PLANS, { hasHole, hasSlit: false })) {
        expect(
          stages.some(({ kind }) => stageKindRecord(kind).isIrreversible),
          name,
        ).toBe(hasHole);
      }
    }
  });

  it('are of the maker’s own by whether their stages cut a hole', () => {
    const own = STARTING_PLANS.map((plan) => ({ ...plan, piece: null }));
    const rings = fittingPlans(own, { hasHole: true, hasSlit: true }).map(({ name }) => name);
    expect(rings).toEqual([...namesFor(true, true), ...namesFor(true, false)]);
    expect(fittingPlans(own, { hasHole: false, hasSlit: false })).toHaveLength(3);
  });
});
