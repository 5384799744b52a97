import { describe, expect, test } from 'vitest';
import type { FabricPieceId } from '#core/domain/ids';
import { calendarDate } from '#core/units/calendar-date';
import { addProject, fabricDetails, inches, openWorkshop, TODAY } from '#test/helpers/workshop';

function shelf() {
  const workshop = openWorkshop();
  const { projectId } = addProject(workshop);
  const buy = (name: string, on: string, costMinor: number) => {
    const { fabricId } = workshop.get('fabric:create', { details: fabricDetails({ name }) });
    const size = { width: inches(40), length: inches(100) };
    const bought = { fabricId, kind: 'yardage', size, costMinor, on: calendarDate(on), note: '' } as const;
    return workshop.get('ledger:buy', bought).pieceId;
  };
  const cut = (pieceId: FabricPieceId, on: string, leftover = inches(4)) =>
    workshop.get('ledger:cut', {
      ...{ pieceId, projectId, stageId: null, length: inches(20), knowingly: false, note: '' },
      leftovers: [{ width: inches(40), length: leftover }],
      on: calendarDate(on),
    });
  const insight = () => workshop.get('stash:insight', {});
  const month = (name: string) => insight().months.find((one) => one.month === name);
  return { workshop, projectId, buy, cut, insight, month };
}

describe('the stash as a whole', () => {
  test('is worth nothing and has a year of quiet months while it is empty', () => {
    const { insight } = shelf();
    expect(insight()).toMatchObject({
      valueMinor: 0,
      areaThere: 0,
      longest: [],
      projects: [],
      leftovers: [],
    });
    expect(insight().months).toHaveLength(12);
    expect(insight().months.at(-1)?.month).toBe('2027-02');
  });

  test('tells what was bought and used in each month, a cut less its leftovers, and the value that is left', () => {
    const { buy, cut, month, insight } = shelf();
    cut(buy('Leaves', '2026-12-05', 1_000), '2027-01-20');
    // 20 of 100 in cut, 4 of them kept: a fifth of 10.00 left the piece, and a fifth of that stayed (arithmetic).
    expect(month('2026-12')).toMatchObject({ boughtMinor: 1_000, usedMinor: 0, valueMinor: 1_000 });
    expect(month('2027-01')).toMatchObject({ boughtMinor: 0, usedMinor: 160, valueMinor: 840 });
    expect(month('2027-01')?.usedArea).toBe(inches(40) * inches(16));
    expect(insight()).toMatchObject({ valueMinor: 840, areaThere: inches(40) * inches(84) });
  });

  test('takes what was taken back off the month it was booked in, as it does what was undone and done again', () => {
    const { workshop, buy, cut, month, insight } = shelf();
    const { bookingId } = cut(buy('Leaves', '2026-12-05', 1_000), '2027-01-20');
    const before = insight();
    workshop.get('ledger:take-back', { bookingId, on: TODAY });
    expect(month('2027-01')).toMatchObject({ usedMinor: 0, usedArea: 0, valueMinor: 1_000 });
    expect(month('2027-02')).toMatchObject({ usedMinor: 0, boughtMinor: 0, valueMinor: 1_000 });
    expect(insight()).toMatchObject({ leftovers: [], projects: [], projectCount: 0 });
    workshop.get('change:undo', {});
    expect(insight()).toEqual(before);
  });

  test('lists what has lain longest first: by the day it was last bought or cut, and only while some is there', () => {
    const { workshop, buy, cut, insight } = shelf();
    const old = buy('Old', '2025-01-01', 100);
    buy('Older still, but bought again', '2024-01-01', 100);
    const gone = buy('Gone', '2023-01-01', 100);
    workshop.get('ledger:discard', { pieceId: gone, length: inches(100), on: TODAY, note: '' });
    const names = () => insight().longest.map(({ name, since }) => `${name} ${since}`);
    expect(names()).toEqual(['Older still, but bought again 2024-01-01', 'Old 2025-01-01']);
    cut(old, '2027-02-01');
    expect(names()).toEqual(['Older still, but bought again 2024-01-01', 'Old 2027-02-01']);
  });

  test('tells what each piece used and cost, and its leftovers by the shorter side', () => {
    const { buy, cut, insight, projectId } = shelf();
    const pieceId = buy('Leaves', '2026-12-05', 1_000);
    cut(pieceId, '2027-01-20');
    cut(pieceId, '2027-01-21');
    const area = inches(40) * inches(4);
    expect(insight().leftovers).toEqual([{ side: inches(4), pieces: 2, area: 2 * area }]);
    expect(insight().projects).toMatchObject([{ projectId, costMinor: 320, area: 8 * area }]);
  });
});
