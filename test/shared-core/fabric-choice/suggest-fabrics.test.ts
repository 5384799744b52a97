import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastContrastOf } from '#core/fabric-choice/best-choice';
import type { Choice, ChoiceProblem, Suggestion } from '#core/fabric-choice/choice-problem';
import { jobOfRole, planRole } from '#core/fabric-choice/plan-role';
import { areaOf, candidatesFor, WEIGHTS } from '#core/fabric-choice/role-candidates';
import { suggestFabrics } from '#core/fabric-choice/suggest-fabrics';
import { lightnessOf } from '#core/units/screen-color';
import { faultsOf, placedCopies } from '#test/helpers/cutting-jobs';
import { anySmallChoice, choiceProblem, NO_WISHES, onShelf, role } from '#test/helpers/fabric-choices';

function suggestions(problem: ChoiceProblem, most = 50): readonly Suggestion[] {
  const search = suggestFabrics(problem);
  return Array.from({ length: most }, () => search.next()).filter((one) => one !== null);
}

/** The score of every choice that keeps the wishes, by trying all of them. */
function everyScore(problem: ChoiceProblem): readonly { readonly choice: Choice; readonly score: number }[] {
  const { roles, borders, fabrics, wishes } = problem;
  const whole = roles.reduce((sum, one) => sum + areaOf(one), 0);
  const seams = borders.reduce((sum, { length }) => sum + length, 0);
  const options = roles.map((one) => candidatesFor(problem, one, areaOf(one) / whole));
  const choices = options.reduce<(typeof options)[number][]>(
    (all, own) => all.flatMap((some) => own.map((option) => [...some, option])),
    [[]],
  );
  return choices.flatMap((chosen) => {
    const choice = chosen.map(({ fabric }) => fabric);
    const money = chosen.reduce(
      (sum, { minorToBuy }) => sum + (minorToBuy ?? (wishes.mostMoney === null ? 0 : Infinity)),
      0,
    );
    const apart = borders.map(({ roles: [one, other], length }) => ({
      length,
      by: Math.abs(lightnessOf(fabrics[choice[one]!]!.color) - lightnessOf(fabrics[choice[other]!]!.color)),
    }));
    const isKept =
      new Set(choice).size === choice.length &&
      wishes.contains.every((id) => choice.some((fabric) => fabrics[fabric]!.id === id)) &&
      money <= (wishes.mostMoney ?? Infinity) &&
      apart.every(({ by }) => by >= wishes.leastContrast);
    if (!isKept) return [];
    const contrast = apart.reduce((sum, { by, length }) => sum + (Math.min(1, by / 40) * length) / seams, 0);
    const own = chosen.reduce((sum, { score }) => sum + score, 0);
    return [{ choice, score: own + WEIGHTS.contrast * contrast }];
  });
}

describe('fabrics suggested for a top', () => {
  it('start with the best of all choices, and are none when none keeps the wishes', () => {
    fc.assert(
      fc.property(anySmallChoice, (problem) => {
        const best = Math.max(...everyScore(problem).map(({ score }) => score));
        const [first] = suggestions(problem, 1);
        if (first === undefined) expect(best).toBe(-Infinity);
        else expect(first.score).toBeCloseTo(best, 9);
      }),
      { numRuns: 30 },
    );
  });

  it('are all there are in the end, each once', () => {
    fc.assert(
      fc.property(anySmallChoice, (problem) => {
        const all = everyScore(problem);
        const found = suggestions(problem, all.length + 1);
        const written = ({ choice }: { readonly choice: Choice }) => choice.join();
        expect(found.map(written).toSorted()).toEqual(all.map(written).toSorted());
      }),
      { numRuns: 20 },
    );
  });

  it('keep every wish, and what they use can be cut', () => {
    fc.assert(
      fc.property(anySmallChoice, (problem) => {
        for (const suggestion of suggestions(problem, 6)) {
          const { wishes, fabrics, table } = problem;
          expect(leastContrastOf(problem, suggestion.choice)).toBe(suggestion.leastContrast);
          expect(suggestion.leastContrast).toBeGreaterThanOrEqual(wishes.leastContrast);
          if (wishes.buysNothing) expect(suggestion.toBuy).toEqual([]);
          suggestion.choice.forEach((index, place) => {
            const fabric = fabrics[index]!;
            const bought = suggestion.toBuy.find((one) => one.role === place);
            const asked = jobOfRole(
              problem.roles[place]!,
              { ...fabric, toBuy: bought === undefined ? undefined : fabric.toBuy },
              table,
            );
            const { plan, lengthToBuy } = planRole(asked)!;
            expect(lengthToBuy).toBe(bought?.length ?? 0);
            expect([...placedCopies(asked, plan).values()]).toEqual(
              asked.patches.map(({ copies }) => copies),
            );
            for (const cut of plan.pieces) expect(faultsOf(asked, plan, cut)).toEqual([]);
          });
        }
      }),
      { numRuns: 15 },
    );
  });

  const shelf = [
    onShelf('cream', [242, 232, 207], [42, 36]),
    onShelf('navy', [38, 50, 82], [42, 36]),
    onShelf('rust', [160, 80, 45], [42, 36]),
    onShelf('moss', [104, 114, 74], [20, 20], { isLeftover: true }),
    onShelf('teal', [58, 124, 126], [42, 6]),
  ];
  const two = {
    roles: [role('ground', 6, 12), role('star', 4, 6)],
    borders: [{ roles: [0, 1], length: 90 } as const],
  };
  const named = (problem: ChoiceProblem, suggestion: Suggestion | undefined) =>
    suggestion?.choice.map((index) => problem.fabrics[index]!.id);

  it('take the warm ones, the cool ones or the leftovers first, as wished', () => {
    const wishing = (wishes: Partial<typeof NO_WISHES>) => {
      const problem = choiceProblem({ ...two, fabrics: shelf, wishes: { ...NO_WISHES, ...wishes } });
      return named(problem, suggestions(problem, 1)[0]);
    };
    expect(wishing({ warmth: 'warm' })).toEqual(['rust', 'cream']);
    expect(wishing({ warmth: 'cool' })).toEqual(['navy', 'cream']);
    expect(wishing({ prefersLeftovers: true })).toContain('moss');
    expect(wishing({ contains: ['teal'] })).toContain('teal');
  });

  it('buy what is missing within the money, and not without a price when there is a limit', () => {
    const fabrics = [
      onShelf('cream', [242, 232, 207], [42, 36]),
      onShelf('navy', [38, 50, 82], [10, 4], { canBuy: true, price: 1_200 }),
      onShelf('plum', [92, 52, 80], [10, 4], { canBuy: true }),
    ];
    const asking = (wishes: Partial<typeof NO_WISHES>) => {
      const problem = choiceProblem({
        ...two,
        fabrics,
        wishes: { ...NO_WISHES, buysNothing: false, ...wishes },
      });
      return suggestions(problem);
    };
    expect(asking({}).length).toBeGreaterThan(1);
    const [only, ...more] = asking({ mostMoney: 500 });
    expect(more).toEqual([]);
    // Six squares of 4 in lie in one row of 42 in: 4 1/2 in of fabric 43 in wide, 1,200 a square yard of 1,296 sq in.
    expect(only?.toBuy).toEqual([
      { role: 1, length: 4.5 * 8128, minor: Math.round((1_200 * 4.5 * 43) / 1_296) },
    ]);
    expect(asking({ mostMoney: 100 })).toEqual([]);
    expect(asking({ buysNothing: true })).toEqual([]);
  });

  it('differ from each other in half of their roles as long as that goes', () => {
    const problem = choiceProblem({
      roles: [role('one', 4, 6), role('two', 4, 6), role('three', 4, 6), role('four', 4, 6)],
      borders: [],
      fabrics: Array.from({ length: 8 }, (_, index) =>
        onShelf(`f${String(index)}`, [30 * index, 40, 90], [42, 20]),
      ),
    });
    const found = suggestions(problem, 12).map(({ choice }) => choice);
    expect(found).toHaveLength(12);
    for (const [index, one] of found.entries())
      for (const other of found.slice(0, index))
        expect(one.filter((fabric, place) => fabric !== other[place]).length).toBeGreaterThanOrEqual(2);
  });
});
