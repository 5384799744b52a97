import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CuttingJob, JobPlan } from '#core/cutting/tree/cutting-job';
import { isBetter } from '#core/cutting/tree/job-totals';
import { planCutting } from '#core/cutting/search/plan-cutting';
import { seededRandom } from '#core/units/seeded-random';
import {
  BOLT_MARGINS,
  INCH,
  anyJob,
  bolt42,
  fabric,
  faultsOf,
  job,
  patch,
  piece,
  placedCopies,
  plansAfter,
} from '#test/helpers/cutting-jobs';

describe('plans for any job', () => {
  const forAllPlans = (check: (asked: CuttingJob, plan: JobPlan) => void, seed: number) => {
    fc.assert(
      fc.property(anyJob, (asked) => {
        const { leastFabric, simplestCuts } = plansAfter(asked, 120);
        check(asked, leastFabric);
        check(asked, simplestCuts);
      }),
      { numRuns: 120, seed },
    );
  };

  it('can be cut, piece by piece', () => {
    forAllPlans((asked, plan) => {
      for (const cut of plan.pieces) expect(faultsOf(asked, plan, cut)).toEqual([]);
    }, 21);
  });

  it('place every copy or list it as not placed', () => {
    forAllPlans((asked, plan) => {
      const placed = placedCopies(asked, plan);
      for (const { id, copies } of asked.patches) {
        const missing = plan.unplaced
          .filter((entry) => entry.patch === id)
          .reduce((sum, entry) => sum + entry.copies, 0);
        expect(placed.get(id)! + missing).toBe(copies);
      }
    }, 22);
  });

  it('turn no patch against a directional print', () => {
    forAllPlans((asked, plan) => {
      for (const cut of plan.pieces) {
        const material = asked.fabrics.find(({ id }) => id === cut.fabric)!;
        const isOnItsSide = material.pieces.some(
          ({ id, printRuns }) => id === cut.piece && printRuns === 'across',
        );
        for (const place of cut.placed) {
          const { width, length, mayTurn } = asked.patches[place.patch]!;
          const mustNotTurn = width !== length && (material.isDirectional || !mayTurn);
          if (mustNotTurn) expect(place.turned).toBe(isOnItsSide);
        }
      }
    }, 23);
  });

  it('account for the whole area of each piece, and keep patches off the selvages and the straightening margin', () => {
    forAllPlans((asked, plan) => {
      for (const cut of plan.pieces) {
        const { areas } = cut;
        expect(areas.patches + areas.leftovers + areas.scrap + areas.margins).toBe(cut.width * cut.length);
        expect(areas.piece).toBe(cut.width * cut.length);
        const material = asked.fabrics.find(({ id }) => id === cut.fabric)!;
        const { margins } = material.pieces.find(({ id }) => id === cut.piece) ?? material.toBuy!;
        for (const place of cut.placed) {
          expect(place.x).toBeGreaterThanOrEqual(margins.leftSelvage);
          expect(place.x + place.width).toBeLessThanOrEqual(cut.width - margins.rightSelvage);
          expect(place.y).toBeGreaterThanOrEqual(margins.straighten);
        }
      }
    }, 24);
  });

  it('count as leftovers only rests that are worth keeping', () => {
    forAllPlans((asked, plan) => {
      for (const { width, length } of plan.pieces.flatMap(({ leftovers }) => leftovers)) {
        expect(Math.min(width, length)).toBeGreaterThanOrEqual(asked.keep.shortSide);
        expect(Math.max(width, length)).toBeGreaterThanOrEqual(asked.keep.longSide);
      }
    }, 25);
  });

  it('never get worse while the search runs, and least fabric is never worse than simple cuts', () => {
    fc.assert(
      fc.property(anyJob, (asked) => {
        const early = plansAfter(asked, 40);
        const late = plansAfter(asked, 400);
        expect(isBetter(early.leastFabric.totals, late.leastFabric.totals, [])).toBe(false);
        if (asked.fabrics.length === 1) {
          expect(isBetter(late.simplestCuts.totals, late.leastFabric.totals, [])).toBe(false);
        }
      }),
      { numRuns: 40, seed: 26 },
    );
  });
});

describe('the fabric that a plan uses', () => {
  it('buys nothing if the stash is enough, even to the last inch', () => {
    const quarters = fabric([piece('one', 21, 18), piece('two', 21, 18)], { toBuy: bolt42 });
    const { leastFabric, simplestCuts } = plansAfter(job([quarters], [patch('square', [3, 3], 84)]), 400);
    expect(leastFabric.purchases).toEqual([]);
    expect(simplestCuts.purchases).toEqual([]);
    expect(leastFabric.totals).toMatchObject({ unplaced: 0, boughtArea: 0, pieces: 2 });
    expect(leastFabric.gap).toBe(0);
  });

  it('buys a length that is sold, and gives the exact length and a proven least length', () => {
    const { simplestCuts } = plansAfter(
      job([fabric([], { toBuy: bolt42 })], [patch('strip', [42, 2.5], 5)]),
      400,
    );
    expect(simplestCuts.purchases).toEqual([
      {
        fabric: 'plain',
        width: 43 * INCH,
        exactLength: 12.75 * INCH,
        length: 13.5 * INCH,
        leastLength: 12.5 * INCH,
      },
    ]);
  });

  it('places squares correctly where sizes across and along have different common steps', () => {
    const patches = [patch('strip', [3.5, 1], 1, { mayTurn: false }), patch('square', [15, 15], 3)];
    const asked = job([fabric([], { toBuy: bolt42 })], patches);
    const { leastFabric } = plansAfter(asked, 200);
    expect(leastFabric.pieces.flatMap((cut) => faultsOf(asked, leastFabric, cut))).toEqual([]);
    expect(leastFabric.purchases[0]?.exactLength).toBe(30.25 * INCH);
  });

  it('lists the copies that are not placed when the stash is used up and nothing can be bought', () => {
    const { leastFabric } = plansAfter(
      job([fabric([piece('scrap', 10, 10)])], [patch('square', [5, 5], 7)]),
      200,
    );
    expect(leastFabric.unplaced).toEqual([
      { patch: 'square', copies: 3, reason: 'stash-used-up', helps: [] },
    ]);
  });

  it('follows the wishes in their order', () => {
    const stash = fabric([piece('small', 10.5, 10.5), piece('bolt', 42, 40)]);
    const patches = [patch('a', [5, 5], 4), patch('b', [14, 7], 3)];
    const least = plansAfter(job([stash], patches, { wishes: ['least-fabric'] }), 600).leastFabric;
    const fewest = plansAfter(job([stash], patches, { wishes: ['fewest-pieces'] }), 600).leastFabric;
    expect(fewest.totals.pieces).toBe(1);
    expect(least.totals.usedArea).toBeLessThanOrEqual(fewest.totals.usedArea);
  });

  it('places bias squares on the same piece as other patches', () => {
    const patches = [patch('bias', [18, 18], 1, { isBiasSquare: true }), patch('strip', [3, 18], 1)];
    const { leastFabric } = plansAfter(job([fabric([piece('quarter', 21, 18)])], patches), 300);
    expect(leastFabric.totals.unplaced).toBe(0);
  });
});

describe('patches that fit no fabric', () => {
  const unplaced = (asked: CuttingJob) => plansAfter(asked, 50).leastFabric.unplaced;

  it('are listed with the reason and what would help', () => {
    const asked = job(
      [fabric([piece('bolt', 42, 30)])],
      [patch('wide', [50, 44], 1), patch('long', [20, 60], 2, { mayTurn: false })],
    );
    expect(unplaced(asked)).toEqual([
      {
        patch: 'wide',
        copies: 1,
        reason: 'wider-than-any-fabric',
        helps: [{ code: 'piece-it' }, { code: 'wider-fabric', width: 44 * INCH }],
      },
      {
        patch: 'long',
        copies: 2,
        reason: 'longer-than-any-fabric',
        helps: [{ code: 'piece-it' }, { code: 'longer-fabric', length: 60 * INCH }],
      },
    ]);
  });

  it('have the advice to turn them where that alone is enough', () => {
    const asked = job([fabric([piece('bolt', 42, 90)])], [patch('border', [60, 6], 2, { mayTurn: false })]);
    expect(unplaced(asked)[0]?.helps[0]).toEqual({ code: 'turn-it' });
  });

  it('do not prevent the others from being planned', () => {
    const asked = job(
      [fabric([piece('bolt', 42, 30)])],
      [patch('wide', [50, 44], 1), patch('square', [5, 5], 8)],
    );
    const { leastFabric } = plansAfter(asked, 100);
    expect(placedCopies(asked, leastFabric).get('square')).toBe(8);
  });

  it('have the reason "no fabric" where there is no piece and nothing to buy', () => {
    expect(unplaced(job([fabric([])], [patch('square', [5, 5], 1)]))[0]?.reason).toBe('no-fabric');
  });
});

describe('a plan with strips that are already cut', () => {
  it('keeps them as they are and plans the rest beyond them', () => {
    const margins = BOLT_MARGINS;
    const patches = [patch('a', [5, 5], 20), patch('b', [9, 3.5], 14)];
    const first = job([fabric([piece('bolt', 43, 60, { margins })])], patches);
    const [before] = plansAfter(first, 300).simplestCuts.pieces;
    const parts = before!.tree.kind === 'split' ? before!.tree.parts : [];
    const lockedParts = parts.slice(0, 3);
    const second = job([fabric([piece('bolt', 43, 60, { margins, lockedParts })])], patches);
    const { simplestCuts } = plansAfter(second, 300);
    const [after] = simplestCuts.pieces;
    expect(after!.tree.kind === 'split' && after!.tree.parts.slice(0, 3)).toEqual(lockedParts);
    expect(simplestCuts.totals.unplaced).toBe(0);
    expect(placedCopies(second, simplestCuts)).toEqual(
      new Map([
        ['a', 20],
        ['b', 14],
      ]),
    );
    expect(after!.cuts.filter(({ isDone }) => isDone).length).toBeGreaterThanOrEqual(3);
    expect(faultsOf(second, simplestCuts, after!)).toEqual([]);
  });

  it('keeps a piece in the plan when its locked strips hold all patches', () => {
    const patches = [patch('a', [5, 5], 4)];
    const first = job([fabric([piece('bolt', 42, 30)])], patches);
    const [before] = plansAfter(first, 200).simplestCuts.pieces;
    const lockedParts = before!.tree.kind === 'split' ? before!.tree.parts.slice(0, 1) : [];
    const second = job([fabric([piece('bolt', 42, 30, { lockedParts })])], patches);
    expect(placedCopies(second, plansAfter(second, 200).simplestCuts).get('a')).toBe(4);
  });
});

describe('a job search', () => {
  it('finds the same plans from the same seed, in slices or in one run', () => {
    const asked = job(
      [fabric([piece('one', 21, 18)], { toBuy: bolt42 })],
      [patch('a', [5, 3], 40), patch('b', [7, 4], 12)],
    );
    const sliced = planCutting(asked, seededRandom(9));
    const whole = planCutting(asked, seededRandom(9));
    for (let slice = 0; slice < 640; slice++) sliced.step(() => 1, 1);
    let done = 0;
    whole.step(() => ++done, 640);
    expect(sliced.answer()).toEqual(whole.answer());
  });

  it('is finished at once when there are no patches', () => {
    const search = planCutting(job([fabric([piece('one', 21, 18)])], []), seededRandom(1));
    search.step(() => 0, 1);
    expect(search.isFinished()).toBe(true);
    expect(search.answer()?.leastFabric).toMatchObject({ pieces: [], purchases: [], unplaced: [], gap: 0 });
  });
});
