import { describe, expect, test } from 'vitest';
import type { PrintRuns } from '#core/domain/stash';
import { addStock, addProject, inches, NO_SUCH_ID, openWorkshop, TODAY } from '#test/helpers/workshop';

/** Fabric 42 in wide of which 9 in are cut for a project, with these leftovers kept. */
function cutFrom(runs: PrintRuns, leftovers: readonly (readonly [number, number])[]) {
  const workshop = openWorkshop();
  const { fabricId, pieceId } = addStock(workshop);
  const { projectId } = addProject(workshop);
  workshop.get('piece:set-print', { pieceId, runs });
  workshop.get('ledger:cut', {
    pieceId,
    projectId,
    stageId: null,
    length: inches(9),
    knowingly: false,
    on: TODAY,
    note: '',
    leftovers: leftovers.map(([width, length]) => ({ width: inches(width), length: inches(length) })),
  });
  const prints = () =>
    workshop
      .get('fabric:open', { fabricId })
      .pieces.filter(({ kind }) => kind === 'leftover')
      .map(({ printRuns }) => printRuns);
  return { workshop, fabricId, prints };
}

describe('the print of a leftover', () => {
  test('runs as on the piece it was cut from', () => {
    expect(cutFrom('along', [[20, 9]]).prints()).toEqual(['along']);
    expect(cutFrom('across', [[20, 9]]).prints()).toEqual(['across']);
  });

  test('runs the other way in a leftover that is kept turned', () => {
    expect(
      cutFrom('along', [
        [9, 20],
        [8, 7],
      ]).prints(),
    ).toEqual(['across', 'along']);
    expect(cutFrom('across', [[9, 20]]).prints()).toEqual(['along']);
  });

  test('goes when the cut is undone and returns when it is redone', () => {
    const { workshop, prints } = cutFrom('along', [[9, 20]]);
    workshop.get('change:undo', {});
    expect(prints()).toEqual([]);
    workshop.get('change:redo', {});
    expect(prints()).toEqual(['across']);
  });
});

test('the print direction of a missing piece cannot be set', () => {
  const answer = openWorkshop().ask('piece:set-print', { pieceId: NO_SUCH_ID as never, runs: 'across' });
  expect(answer).toMatchObject({ ok: false, error: { code: 'not-found' } });
});
