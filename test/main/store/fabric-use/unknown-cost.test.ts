import { describe, expect, test } from 'vitest';
import type { FabricPieceId } from '#core/domain/ids';
import type { PartialDate } from '#core/units/partial-date';
import { addProject, addStock, fabricDetails, inches, openWorkshop, TODAY } from '#test/helpers/workshop';

const known = (minor: number) => ({ minor, unpricedArea: 0 });

function bench(costMinor: number | null) {
  const workshop = openWorkshop();
  const { projectId } = addProject(workshop);
  const stock = addStock(workshop, { costMinor });
  const cut = (pieceId: FabricPieceId, length: number, leftoverWidth?: number) =>
    workshop.get('ledger:cut', {
      pieceId,
      projectId,
      stageId: null,
      length: inches(length),
      leftovers:
        leftoverWidth === undefined ? [] : [{ width: inches(leftoverWidth), length: inches(length) }],
      knowingly: false,
      on: TODAY,
      note: '',
    });
  const pieces = () =>
    workshop
      .get('fabric:open', { fabricId: stock.fabricId })
      .pieces.map(({ there, valueMinor }) => [there, valueMinor]);
  const project = () => workshop.get('ledger:of-project', { projectId });
  return { workshop, ...stock, cut, pieces, project };
}

describe('fabric whose cost and day bought are not known', () => {
  test('stays so in its cuts, leftovers and project; what is priced is added up beside it', () => {
    const { workshop, pieceId, cut, pieces, project } = bench(null);
    cut(pieceId, 24, 6);
    expect(pieces()).toEqual([
      [inches(48), null],
      [inches(24), null],
    ]);
    const unpricedArea = inches(36) * inches(24);
    expect(project()).toMatchObject({
      paid: { minor: 0, unpricedArea },
      cost: { firstIn: { minor: 0, unpricedArea }, replacementMinor: null },
    });
    cut(addStock(workshop).pieceId, 36);
    expect(project().paid).toEqual({ minor: 1000, unpricedArea });
    // The cut, the purchase and the fabric, then the first cut.
    for (let undone = 0; undone < 4; undone += 1) workshop.get('change:undo', {});
    expect(project().paid).toEqual(known(0));
    expect(pieces()).toEqual([[inches(72), null]]);
    workshop.get('change:undo', {});
    expect(pieces()).toEqual([]);
    workshop.get('change:redo', {});
    expect(pieces()).toEqual([[inches(72), null]]);
  });

  test('is not the same as fabric that was free', () => {
    const { workshop, fabricId } = bench(0);
    expect(workshop.get('fabric:open', { fabricId }).value).toEqual(known(0));
  });

  test('can be thrown out and measured again', () => {
    const { workshop, pieceId, pieces } = bench(null);
    workshop.get('ledger:discard', { pieceId, length: inches(2), on: TODAY, note: '' });
    workshop.get('ledger:count', { pieceId, there: inches(60), on: TODAY, note: '' });
    expect(pieces()).toEqual([[inches(60), null]]);
    workshop.get('ledger:count', { pieceId, there: 0, on: TODAY, note: '' });
    expect(pieces()).toEqual([]);
  });

  test('keeps a month, a year or no day through undo and redo', () => {
    const workshop = openWorkshop();
    const { fabricId } = workshop.get('fabric:create', { details: fabricDetails() });
    const size = { width: inches(42), length: inches(36) };
    const bought = { fabricId, kind: 'yardage', size, costMinor: null, note: '' } as const;
    for (const on of ['2024-03', '1999', null] as readonly (PartialDate | null)[]) {
      workshop.get('ledger:buy', { ...bought, on });
      workshop.get('change:undo', {});
      workshop.get('change:redo', {});
      expect(workshop.get('fabric:open', { fabricId }).ledger[0]).toMatchObject({ on });
    }
    expect(workshop.fail('ledger:buy', { ...bought, on: '2024-13' as PartialDate })).toMatchObject({
      code: 'invalid-input',
    });
  });
});
