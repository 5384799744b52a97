import { describe, expect, test } from 'vitest';
import type { KeptPlan } from '#core/domain/cutting-plan';
import { planOnTwoYards } from '#test/helpers/kept-plans';
import { addStock, addProject, inches, NO_SUCH_ID, openWorkshop, TODAY } from '#test/helpers/workshop';

/** A kept plan whose two yards have to be bought first: of a fabric of the stash, or of one that is in no stash yet. */
function planToBuy(isInStash: boolean) {
  const workshop = openWorkshop();
  const { fabricId, pieceId } = addStock(workshop, { yards: 1, costMinor: 1000 });
  const { projectId, stages } = addProject(workshop);
  const stageId = stages.find(({ kind }) => kind === 'piecing')!.id;
  const made = planOnTwoYards({ projects: [projectId], stageId, fabricId, pieceId });
  const fabric = isInStash ? fabricId : `new ${projectId} Rust`;
  const plan: KeptPlan = {
    ...made,
    setup: { ...made.setup, fabricChoices: isInStash ? made.setup.fabricChoices : [] },
    pieces: made.pieces.map((piece) => ({ ...piece, pieceId: null, fabric })),
    purchases: [
      {
        ...{ fabric, width: inches(42), length: inches(72) },
        ...{ exactLength: inches(70), leastLength: inches(69) },
      },
    ],
    plannedWith: [],
  };
  workshop.get('cutting:keep', { projectId, plan });
  const buy = () => workshop.ask('cutting:buy', { projectId, fabric, costMinor: 2400, on: TODAY });
  const kept = () => workshop.get('cutting:open', { projectId })!.plan;
  /** What the list over all projects takes from the kept plan. */
  const toBuy = () =>
    workshop.get('shopping:list', {}).lines.flatMap(({ fabric: known, length, shares }) =>
      shares
        .filter(({ need }) => need.source === 'cutting-plan')
        .map(({ need }) => ({
          ...{ projectId: need.projectId, fabricId: known?.id ?? null, name: need.name },
          ...{ width: need.fabricWidth, length },
        })),
    );
  return { workshop, projectId, fabricId, fabric, buy, kept, toBuy };
}

describe('what a kept plan says to buy', () => {
  test('is told over all projects, by its fabric of the stash or by the name of the list', () => {
    const inStash = planToBuy(true);
    expect(inStash.toBuy()).toMatchObject([
      { projectId: inStash.projectId, fabricId: inStash.fabricId, width: inches(42), length: inches(72) },
    ]);
    expect(planToBuy(false).toBuy()).toMatchObject([{ fabricId: null, name: 'Rust', length: inches(72) }]);
  });

  test('is not told of a project that was put away', () => {
    const { workshop, projectId, toBuy } = planToBuy(true);
    workshop.get('project:archive', { projectId, archived: true });
    expect(toBuy()).toEqual([]);
  });
});

describe('fabric bought for a plan', () => {
  test('lies on the shelf, set aside for the project, and is what the plan cuts', () => {
    const { workshop, projectId, fabricId, buy, kept, toBuy } = planToBuy(true);
    expect(buy()).toMatchObject({ ok: true });
    const bought = workshop.get('fabric:open', { fabricId }).pieces.at(-1)!;
    expect(bought).toMatchObject({
      ...{ kind: 'yardage', width: inches(42), there: inches(72), held: inches(72), valueMinor: 2400 },
    });
    expect(kept().pieces).toMatchObject([{ pieceId: bought.id, fabric: fabricId }]);
    expect(kept()).toMatchObject({ purchases: [], plannedWith: [{ pieceId: bought.id }] });
    expect(toBuy()).toEqual([]);
    const step = { projectId, pieceId: bought.id, place: 0, knowingly: false, on: TODAY };
    expect(workshop.ask('cutting:tick', step)).toMatchObject({ ok: true });
    expect(
      workshop.ask('cutting:buy', { projectId, fabric: fabricId, costMinor: 0, on: TODAY }),
    ).toMatchObject({
      ok: false,
      error: { code: 'changed-since' },
    });
  });

  test('from the shopping list is what the plan cuts where it is just what the plan says to buy', () => {
    for (const [isInStash, yards, left] of [
      [true, 2, 0],
      [true, 3, 1],
      [false, 2, 0],
    ] as const) {
      const { workshop, projectId, fabricId, kept } = planToBuy(isInStash);
      const bought = workshop.get('shopping:buy', {
        ...{
          lineId: null,
          needs: [{ projectId, source: 'cutting-plan', name: 'Rust' }],
          fabric: { fabricId },
        },
        ...{
          kind: 'yardage',
          kindId: null,
          unitLength: null,
          costMinor: 2400,
          on: TODAY,
          note: '',
          place: '',
        },
        size: { width: inches(42), length: inches(36 * yards) },
        holds: [{ projectId, length: inches(72) }],
      });
      expect(kept().purchases).toHaveLength(left);
      expect(kept().pieces).toMatchObject([{ pieceId: left === 0 ? bought.pieceId : null }]);
      if (left > 0) continue;
      const step = { projectId, pieceId: bought.pieceId, place: 0, knowingly: false, on: TODAY };
      expect(workshop.ask('cutting:tick', step)).toMatchObject({ ok: true });
      workshop.get('change:undo', {});
      workshop.get('change:undo', {});
      expect(kept().purchases).toHaveLength(1);
    }
  });

  test('becomes a fabric called as in the list where it is in no stash yet', () => {
    const { workshop, buy, kept } = planToBuy(false);
    buy();
    const { items } = workshop.get('fabric:list', { search: 'rust', limit: 50 });
    const made = items.find(({ fabric }) => fabric.name === 'Rust')!;
    expect(made).toMatchObject({ fabric: { width: inches(42) }, pieces: [{ there: inches(72) }] });
    expect(kept().setup.fabricChoices).toMatchObject([{ fabric: 'Rust', fabricId: made.fabric.id }]);
    expect(kept().pieces).toMatchObject([{ fabric: made.fabric.id, pieceId: made.pieces[0]!.id }]);
  });

  test('is taken back with one undo, and there again with one redo', () => {
    for (const isInStash of [true, false]) {
      const { workshop, fabric, buy, kept, toBuy } = planToBuy(isInStash);
      const before = toBuy();
      buy();
      workshop.get('change:undo', {});
      expect(toBuy()).toEqual(before);
      expect(kept().pieces).toMatchObject([{ pieceId: null, fabric }]);
      workshop.get('change:redo', {});
      expect(toBuy()).toEqual([]);
      expect(kept()).toMatchObject({ purchases: [] });
    }
  });

  test('is refused for a project, a plan or a fabric that is not there', () => {
    const { workshop, projectId } = planToBuy(true);
    const order = { projectId, fabric: 'silk', costMinor: 0, on: TODAY };
    expect(workshop.fail('cutting:buy', order).code).toBe('changed-since');
    expect(workshop.fail('cutting:buy', { ...order, projectId: NO_SUCH_ID as never }).code).toBe('not-found');
    workshop.get('cutting:remove', { projectId });
    expect(workshop.fail('cutting:buy', order).code).toBe('not-found');
  });
});
