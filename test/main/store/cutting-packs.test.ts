import { describe, expect, test } from 'vitest';
import type { KeptPlan, CutTree } from '#core/domain/cutting-plan';
import { STARTING_TABLE } from '#core/domain/cutting-setup';
import { dumpOf } from '#test/helpers/dump';
import { addProject, fabricDetails, inches, openWorkshop, TODAY } from '#test/helpers/workshop';

const SIDE = inches(10);

/** A square of 10 in cut into two patches of 5 × 10 in, or into one of 6 × 10 in and a leftover. */
const square = (...parts: readonly CutTree[]): CutTree => ({
  kind: 'split',
  direction: 'along',
  width: SIDE,
  height: SIDE,
  parts,
});
const patch = (index: number, width: number): CutTree => ({
  kind: 'patch',
  width: inches(width),
  height: SIDE,
  patch: index,
  turned: false,
});
const HALVED = square(patch(0, 5), patch(0, 5));
const TRIMMED = square(patch(1, 6), {
  kind: 'rest',
  width: inches(4),
  height: SIDE,
  use: 'leftover',
});

/** A pack of 42 squares for 42 dollars, and a plan for seven of them. */
function table() {
  const workshop = openWorkshop();
  const { fabricId } = workshop.get('fabric:create', { details: fabricDetails() });
  const { pieceId } = workshop.get('ledger:buy', {
    fabricId,
    kind: 'precut-squares',
    unitLength: SIDE,
    on: TODAY,
    note: '',
    size: { width: SIDE, length: inches(420) },
    costMinor: 4200,
  });
  const { projectId, stages } = addProject(workshop);
  const stageId = stages.find(({ kind }) => kind === 'piecing')!.id;
  const line = (id: string, width: number, count: number) => ({
    id,
    projectId,
    source: { stageId, calculator: 'top' },
    fabric: 'Rust',
    mayTurn: true,
    width: inches(width),
    length: SIDE,
    count,
  });
  const parts = [HALVED, HALVED, HALVED, HALVED, HALVED, TRIMMED, TRIMMED];
  const plan: KeptPlan = {
    setup: {
      projects: [projectId],
      taken: [],
      leftOut: [],
      table: STARTING_TABLE,
      lines: [line('a', 5, 10), line('b', 6, 2)],
      fabricChoices: [{ projectId, fabric: 'Rust', fabricId }],
    },
    rule: '2-stage',
    pieces: [{ pieceId, fabric: fabricId, tree: { kind: 'sheets', width: SIDE, height: inches(70), parts } }],
    purchases: [],
    unplaced: [],
    plannedWith: [{ pieceId, width: SIDE, length: inches(420) }],
  };
  workshop.get('cutting:save', { projectId, plan });
  const at = (place: number) => ({ projectId, pieceId, place, on: TODAY });
  return {
    workshop,
    plan,
    projectId,
    tick: (place: number) => workshop.get('cutting:tick', { ...at(place), knowingly: false }),
    untick: (place: number) => workshop.get('cutting:untick', at(place)),
    pieces: () =>
      workshop
        .get('fabric:open', { fabricId })
        .pieces.map(({ kind, width, there }) => [kind, width / inches(1), there / inches(1)]),
    used: () => workshop.get('ledger:of-project', { projectId }),
    ticked: () => workshop.get('cutting:open', { projectId })?.ticked ?? [],
  };
}

describe('a plan that cuts a pack', () => {
  test('is read back as saved, with its cuts', () => {
    const { workshop, plan, projectId, tick, ticked } = table();
    tick(0);
    expect(workshop.get('cutting:open', { projectId })?.plan).toEqual(plan);
    expect(ticked()).toMatchObject([{ place: 0, parts: 4, isBooked: true }]);
  });

  test('books the sheets of the stack that was checked off, and the rest of each as a leftover', () => {
    const { tick, pieces, used } = table();
    tick(0);
    expect(pieces()).toEqual([['precut-squares', 10, 380]]);
    expect(used()).toMatchObject({ usedArea: 4 * SIDE * SIDE, paid: { minor: 400, unpricedArea: 0 } });
    tick(1);
    tick(2);
    expect(pieces()).toEqual([
      ['precut-squares', 10, 350],
      ['leftover', 4, 10],
      ['leftover', 4, 10],
    ]);
    expect(used()).toMatchObject({
      usedArea: 5 * SIDE * SIDE + 2 * inches(6) * SIDE,
      paid: { minor: 620, unpricedArea: 0 },
    });
  });

  test('restores the sheets when a cut is undone', () => {
    const { workshop, tick, untick, pieces } = table();
    const before = dumpOf(workshop);
    for (const place of [0, 1, 2]) tick(place);
    const after = dumpOf(workshop);
    workshop.get('change:undo', {});
    expect(pieces()).toEqual([['precut-squares', 10, 370]]);
    workshop.get('change:redo', {});
    expect(dumpOf(workshop)).toBe(after);
    for (const place of [2, 1, 0]) untick(place);
    expect(dumpOf(workshop)).toBe(before);
  });

  test('can be replaced only by a plan that starts with the sheets already cut', () => {
    const { workshop, plan, projectId, tick } = table();
    tick(0);
    const [piece] = plan.pieces;
    if (piece?.tree.kind !== 'sheets') throw new Error('No sheets');
    const keep = (parts: readonly CutTree[]) =>
      workshop.ask('cutting:save', {
        projectId,
        plan: { ...plan, pieces: [{ ...piece, tree: { ...piece.tree, parts } }] } as KeptPlan,
      });
    expect(keep([HALVED, HALVED, HALVED, HALVED, TRIMMED])).toMatchObject({ ok: true });
    expect(keep([HALVED, HALVED, HALVED])).toMatchObject({ ok: false, error: { code: 'plan-changed' } });
  });
});
