import { expect, test } from 'vitest';
import type { FabricPieceId } from '#core/domain/ids';
import { codeOfPiece } from '#core/stash/piece-code';
import { addStock, inches, openWorkshop, TODAY } from '#test/helpers/workshop';

/** A workshop in which ids begin differently, as random ones do. */
function workshopWithIds(beginningOf: (count: number) => string) {
  const workshop = openWorkshop();
  let ids = 0;
  Object.assign(workshop.context.store.clockAndIds, {
    newId: () => `${beginningOf((ids += 1))}-4000-8000-${ids.toString(16).padStart(12, '0')}`,
  });
  return workshop;
}

const apart = (count: number) => `${(count * 7_919).toString(16).padStart(8, '0')}-0000`;

test('a piece is found by its code, with its fabric and length, and no other piece', () => {
  const { get, ...workshop } = workshopWithIds(apart);
  const [first, second] = [addStock({ get, ...workshop }), addStock({ get, ...workshop })];
  const found = get('piece:find', { code: codeOfPiece(second.pieceId) });
  expect(found).toMatchObject([
    {
      piece: { id: second.pieceId, there: inches(72) },
      fabric: { id: second.fabricId, name: 'Rust leaves' },
    },
  ]);
  expect(get('piece:find', { code: codeOfPiece(first.pieceId) })[0]?.piece.id).toBe(first.pieceId);
});

test('a used-up piece is found by its code; a piece that never existed is not', () => {
  const workshop = workshopWithIds(apart);
  const { pieceId } = addStock(workshop);
  workshop.get('ledger:discard', { pieceId, length: inches(72), on: TODAY, note: '' });
  expect(workshop.get('piece:find', { code: codeOfPiece(pieceId) })).toMatchObject([{ piece: { there: 0 } }]);
  const never = codeOfPiece('fedcba98-7654-4000-8000-000000000000' as FabricPieceId);
  expect(workshop.get('piece:find', { code: never })).toEqual([]);
});

test('pieces that share a code are all found, except those of a deleted fabric', () => {
  const workshop = workshopWithIds(() => '7f3a0c5b-91d2');
  const [first, second] = [addStock(workshop), addStock(workshop)];
  const code = codeOfPiece(first.pieceId);
  const ids = () => workshop.get('piece:find', { code }).map(({ piece }) => piece.id);
  expect(ids()).toEqual([first.pieceId, second.pieceId]);
  const { ledger } = workshop.get('fabric:open', { fabricId: first.fabricId });
  workshop.get('ledger:undo', { bookingId: ledger[0]?.id as never, on: TODAY });
  workshop.get('fabric:delete', { fabricId: first.fabricId });
  expect(ids()).toEqual([second.pieceId]);
});

test('text that is not a code is refused', () => {
  const code = codeOfPiece('7f3a0c5b-91d2-4000-8000-000000000000' as FabricPieceId);
  for (const wrong of ['', code.toLowerCase(), `${code}0`, `${code.slice(0, 8)}U`, '000000001']) {
    expect(openWorkshop().fail('piece:find', { code: wrong as never }).code).toBe('invalid-input');
  }
});
