import { describe, expect, it } from 'vitest';
import type { LengthDisplay } from '#core/units/unit-system';
import { bookingWords } from '#renderer/features/stash/fabric/booking-words';
import { holdsOf } from '#renderer/features/stash/fabric/holds';
import { addStock, addProject, inches, openWorkshop, TODAY } from '#test/helpers/workshop';

const display: LengthDisplay = { system: 'inch', inchStep: 8 };
const on = { on: TODAY, note: '' };

/** A real ledger: two yards bought, some set aside for a project and cut. */
function workedWith() {
  const workshop = openWorkshop();
  const { fabricId, pieceId } = addStock(workshop);
  const { projectId, stages } = addProject(workshop);
  const stageId = stages[0]?.id ?? null;
  const read = () => {
    const { ledger } = workshop.get('fabric:open', { fabricId });
    return { ledger, words: ledger.map((booking) => bookingWords(booking, ledger, display)) };
  };
  return { workshop, fabricId, pieceId, projectId, stageId, read };
}

describe('the ledger of a fabric in words', () => {
  it('describes each kind of booking, the newest first', () => {
    const { workshop, fabricId, pieceId, projectId, stageId, read } = workedWith();
    workshop.get('ledger:set-aside', { pieceId, projectId, length: inches(36), ...on });
    workshop.get('ledger:release', { pieceId, projectId, length: inches(4.5), ...on });
    const leftovers = [{ width: inches(12), length: inches(10) }];
    const cut = { pieceId, projectId, stageId, length: inches(10), leftovers, knowingly: false, ...on };
    workshop.get('ledger:cut', cut);
    workshop.get('ledger:count', { pieceId, there: inches(61), ...on });
    workshop.get('ledger:discard', { pieceId, length: inches(3), ...on });
    const gift = { fabricId, kind: 'fat-quarter', costMinor: 0, ...on } as const;
    workshop.get('ledger:buy', { ...gift, size: { width: inches(22), length: inches(18) } });
    expect(read().words.map(({ before, after }) => `${before}|${after}`)).toEqual([
      'Added a fat quarter, 22 × 18 in|',
      'Threw out 3 in|',
      'Counted: 1 in less than recorded|',
      'Cut 10 in for|kept 1 leftover, 12 × 10 in',
      'Released 4½ in from|',
      'Set 1 yd aside for|',
      'Bought 2 yd|',
    ]);
  });

  it('describes an undo by what it undoes, even if nothing is left of the piece', () => {
    const { workshop, fabricId, read } = workedWith();
    const size = { width: inches(22), length: inches(18) };
    workshop.get('ledger:buy', { fabricId, kind: 'fat-quarter', size, costMinor: 400, ...on });
    const bookingId = read().ledger[0]!.id;
    workshop.get('ledger:undo', { bookingId, on: TODAY });
    expect(read().words[0]).toEqual({
      before: 'Undone: bought a fat quarter, 22 × 18 in',
      after: '',
      isUndo: true,
    });
  });
});

describe('what is set aside of a piece', () => {
  it('is the sum of the ledger for each project, as in the store', () => {
    const { workshop, pieceId, projectId, read } = workedWith();
    const second = addProject(workshop, { name: 'Winter ring' }).projectId;
    workshop.get('ledger:set-aside', { pieceId, projectId, length: inches(20), ...on });
    workshop.get('ledger:set-aside', { pieceId, projectId: second, length: inches(10), ...on });
    workshop.get('ledger:release', { pieceId, projectId, length: inches(5), ...on });
    expect(holdsOf(read().ledger, pieceId)).toEqual([
      { projectId, projectName: 'Autumn ring', held: inches(15) },
      { projectId: second, projectName: 'Winter ring', held: inches(10) },
    ]);
    workshop.get('ledger:release', { pieceId, projectId, length: inches(15), ...on });
    expect(holdsOf(read().ledger, pieceId)).toHaveLength(1);
  });
});
