import { describe, expect, test } from 'vitest';
import type { KeptPlan } from '#core/domain/cutting-plan';
import { planOnTwoYards } from '#test/helpers/kept-plans';
import { addStock, addProject, inches, NO_SUCH_ID, openWorkshop, TODAY } from '#test/helpers/workshop';

/** A saved plan whose two yards must be bought first: of a fabric in the stash, or of a new one. */
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
        fabric,
        width: inches(42),
        length: inches(72),
        exactLength: inches(70),
        leastLength: inches(69),
      },
    ],
    plannedWith: [],
  };
  workshop.get('cutting:save', { projectId, plan });
  const buy = () => workshop.ask('cutting:buy', { projectId, fabric, costMinor: 2400, on: TODAY });
  const saved = () => workshop.get('cutting:open', { projectId })!.plan;
  /** What the shopping list takes from the saved plan. */
  const toBuy = () =>
    workshop.get('shopping:list', {}).lines.flatMap(({ fabric: inStash, length, shares }) =>
      shares
        .filter(({ need }) => need.source === 'cutting-plan')
        .map(({ need }) => ({
          projectId: need.projectId,
          fabricId: inStash?.id ?? null,
          name: need.name,
          width: need.fabricWidth,
          length,
        })),
    );
  return { workshop, projectId, fabricId, fabric, buy, saved, toBuy };
}

describe('what a saved plan asks to buy', () => {
  test('is on the shopping list, under its fabric of the stash or its name in the cut list', () => {
    const inStash = planToBuy(true);
    expect(inStash.toBuy()).toMatchObject([
      { projectId: inStash.projectId, fabricId: inStash.fabricId, width: inches(42), length: inches(72) },
    ]);
    expect(planToBuy(false).toBuy()).toMatchObject([{ fabricId: null, name: 'Rust', length: inches(72) }]);
  });

  test('is left out for an archived project', () => {
    const { workshop, projectId, toBuy } = planToBuy(true);
    workshop.get('project:archive', { projectId, archived: true });
    expect(toBuy()).toEqual([]);
  });
});

describe('fabric bought for a plan', () => {
  test('is in the stash and cut by the plan, which sets aside what it cuts', () => {
    const { workshop, projectId, fabricId, buy, saved, toBuy } = planToBuy(true);
    expect(buy()).toMatchObject({ ok: true });
    const bought = workshop.get('fabric:open', { fabricId }).pieces.at(-1)!;
    expect(bought).toMatchObject({
      kind: 'yardage',
      width: inches(42),
      there: inches(72),
      held: inches(7.5),
      valueMinor: 2400,
    });
    expect(saved().pieces).toMatchObject([{ pieceId: bought.id, fabric: fabricId }]);
    expect(saved()).toMatchObject({ purchases: [], plannedWith: [{ pieceId: bought.id }] });
    expect(toBuy()).toEqual([]);
    const step = { projectId, pieceId: bought.id, place: 0, knowingly: false, on: TODAY };
    expect(workshop.ask('cutting:tick', step)).toMatchObject({ ok: true });
    expect(
      workshop.ask('cutting:buy', { projectId, fabric: fabricId, costMinor: 0, on: TODAY }),
    ).toMatchObject({
      ok: false,
      error: { code: 'plan-changed' },
    });
  });

  test('from the shopping list is cut by the plan if it is of the size the plan asks for', () => {
    for (const [isInStash, yards, left] of [
      [true, 2, 0],
      [true, 3, 1],
      [false, 2, 0],
    ] as const) {
      const { workshop, projectId, fabricId, saved } = planToBuy(isInStash);
      const bought = workshop.get('shopping:buy', {
        lineId: null,
        needs: [{ projectId, source: 'cutting-plan', name: 'Rust' }],
        fabric: { fabricId },

        kind: 'yardage',
        kindId: null,
        unitLength: null,
        costMinor: 2400,
        on: TODAY,
        note: '',
        place: '',

        size: { width: inches(42), length: inches(36 * yards) },
        holds: [{ projectId, length: inches(72) }],
      });
      expect(saved().purchases).toHaveLength(left);
      expect(saved().pieces).toMatchObject([{ pieceId: left === 0 ? bought.pieceId : null }]);
      if (left > 0) continue;
      const step = { projectId, pieceId: bought.pieceId, place: 0, knowingly: false, on: TODAY };
      expect(workshop.ask('cutting:tick', step)).toMatchObject({ ok: true });
      workshop.get('change:undo', {});
      workshop.get('change:undo', {});
      expect(saved().purchases).toHaveLength(1);
    }
  });

  test('becomes a new fabric with the name in the cut list', () => {
    const { workshop, buy, saved } = planToBuy(false);
    buy();
    const { items } = workshop.get('fabric:list', { search: 'rust', limit: 50 });
    const made = items.find(({ fabric }) => fabric.name === 'Rust')!;
    expect(made).toMatchObject({ fabric: { width: inches(42) }, pieces: [{ there: inches(72) }] });
    expect(saved().setup.fabricChoices).toMatchObject([{ fabric: 'Rust', fabricId: made.fabric.id }]);
    expect(saved().pieces).toMatchObject([{ fabric: made.fabric.id, pieceId: made.pieces[0]!.id }]);
  });

  test('is undone with one undo and redone with one redo', () => {
    for (const isInStash of [true, false]) {
      const { workshop, fabric, buy, saved, toBuy } = planToBuy(isInStash);
      const before = toBuy();
      buy();
      workshop.get('change:undo', {});
      expect(toBuy()).toEqual(before);
      expect(saved().pieces).toMatchObject([{ pieceId: null, fabric }]);
      workshop.get('change:redo', {});
      expect(toBuy()).toEqual([]);
      expect(saved()).toMatchObject({ purchases: [] });
    }
  });

  test('is refused for a missing project, plan or fabric', () => {
    const { workshop, projectId } = planToBuy(true);
    const order = { projectId, fabric: 'silk', costMinor: 0, on: TODAY };
    expect(workshop.fail('cutting:buy', order).code).toBe('plan-changed');
    expect(workshop.fail('cutting:buy', { ...order, projectId: NO_SUCH_ID as never }).code).toBe('not-found');
    workshop.get('cutting:delete', { projectId });
    expect(workshop.fail('cutting:buy', order).code).toBe('not-found');
  });
});
