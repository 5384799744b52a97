import { describe, expect, test } from 'vitest';
import type { FabricPieceId } from '#core/domain/ids';
import { calendarDate } from '#core/units/calendar-date';
import type { PartialDate } from '#core/units/partial-date';
import { addProject, fabricDetails, inches, openWorkshop, TODAY } from '#test/helpers/workshop';

const known = (minor: number) => ({ minor, unpricedArea: 0 });

function shelf() {
  const workshop = openWorkshop();
  const { projectId } = addProject(workshop);
  const buy = (name: string, on: string | null, costMinor: number | null) => {
    const { fabricId } = workshop.get('fabric:create', { details: fabricDetails({ name }) });
    const size = { width: inches(40), length: inches(100) };
    const bought = { fabricId, kind: 'yardage', size, costMinor, on: on as PartialDate, note: '' } as const;
    return workshop.get('ledger:buy', bought).pieceId;
  };
  const cut = (pieceId: FabricPieceId, on: string, leftover = inches(4)) =>
    workshop.get('ledger:cut', {
      pieceId,
      projectId,
      stageId: null,
      length: inches(20),
      knowingly: false,
      note: '',
      leftovers: [{ width: inches(40), length: leftover }],
      on: calendarDate(on),
    });
  const numbers = () => workshop.get('stash:numbers', {});
  const month = (name: string) => numbers().months.find((one) => one.month === name);
  return { workshop, projectId, buy, cut, numbers, month };
}

describe('the stash as a whole', () => {
  test('is worth nothing and has a year of empty months at first', () => {
    const { numbers } = shelf();
    expect(numbers()).toMatchObject({
      value: known(0),
      areaThere: 0,
      longest: [],
      projects: [],
      leftovers: [],
    });
    expect(numbers().months).toHaveLength(12);
    expect(numbers().months.at(-1)?.month).toBe('2027-02');
  });

  test('shows what was bought and used in each month, a cut less its leftovers, and the value left', () => {
    const { buy, cut, month, numbers } = shelf();
    cut(buy('Leaves', '2026-12-05', 1_000), '2027-01-20');
    // Derived: 20 of 100 in are cut and 4 of those kept, so a fifth of 10.00 leaves the piece and a fifth of that stays.
    expect(month('2026-12')).toMatchObject({ bought: known(1_000), used: known(0), value: known(1_000) });
    expect(month('2027-01')).toMatchObject({ bought: known(0), used: known(160), value: known(840) });
    expect(month('2027-01')?.usedArea).toBe(inches(40) * inches(16));
    expect(numbers()).toMatchObject({ value: known(840), areaThere: inches(40) * inches(84) });
  });

  test('subtracts what was undone from the month it was booked in, also when that is redone', () => {
    const { workshop, buy, cut, month, numbers } = shelf();
    const { bookingId } = cut(buy('Leaves', '2026-12-05', 1_000), '2027-01-20');
    const before = numbers();
    workshop.get('ledger:undo', { bookingId, on: TODAY });
    expect(month('2027-01')).toMatchObject({ used: known(0), usedArea: 0, value: known(1_000) });
    expect(month('2027-02')).toMatchObject({ used: known(0), bought: known(0), value: known(1_000) });
    expect(numbers()).toMatchObject({ leftovers: [], projects: [], projectCount: 0 });
    workshop.get('change:undo', {});
    expect(numbers()).toEqual(before);
  });

  test('lists the fabrics unmoved the longest, by the day they were last bought or cut, if any is left', () => {
    const { workshop, buy, cut, numbers } = shelf();
    const old = buy('Old', '2025-01-01', 100);
    buy('Older still, but bought again', '2024-01-01', 100);
    const gone = buy('Gone', '2023-01-01', 100);
    workshop.get('ledger:discard', { pieceId: gone, length: inches(100), on: TODAY, note: '' });
    const names = () => numbers().longest.map(({ name, since }) => `${name} ${since}`);
    expect(names()).toEqual(['Older still, but bought again 2024-01-01', 'Old 2025-01-01']);
    cut(old, '2027-02-01');
    expect(names()).toEqual(['Older still, but bought again 2024-01-01', 'Old 2027-02-01']);
  });

  test('says how much has no price, and counts what was bought on no known day', () => {
    const { workshop, buy, cut, numbers, month, projectId } = shelf();
    buy('Priced', '2027-01-05', 1_000);
    const old = buy('Old', null, null);
    buy('Of a year', '2024', 300);
    const strip = inches(40) * inches(1);
    expect(numbers()).toMatchObject({
      value: { minor: 1_300, unpricedArea: 100 * strip },
      unmovedForUnknown: 1,
    });
    expect(numbers().longest.map(({ name, since }) => `${name} ${since}`)).toEqual([
      'Of a year 2024',
      'Priced 2027-01-05',
    ]);
    expect(numbers().months[0]?.value).toEqual({ minor: 300, unpricedArea: 100 * strip });
    expect(month('2027-01')).toMatchObject({ bought: known(1_000), boughtArea: 100 * strip });
    cut(old, '2027-01-20');
    const used = { minor: 0, unpricedArea: 16 * strip };
    expect(month('2027-01')).toMatchObject({ used, value: { minor: 1_300, unpricedArea: 84 * strip } });
    expect(numbers().projects).toMatchObject([{ projectId, cost: used, area: 16 * strip }]);
    // The cut, and of two fabrics the purchase and the fabric.
    for (let undone = 0; undone < 5; undone += 1) workshop.get('change:undo', {});
    expect(numbers()).toMatchObject({ value: known(1_000), unmovedForUnknown: 0, projects: [] });
  });

  test('shows what each project used and its cost, and leftovers by their shorter side', () => {
    const { buy, cut, numbers, projectId } = shelf();
    const pieceId = buy('Leaves', '2026-12-05', 1_000);
    cut(pieceId, '2027-01-20');
    cut(pieceId, '2027-01-21');
    const area = inches(40) * inches(4);
    expect(numbers().leftovers).toEqual([{ side: inches(4), pieces: 2, area: 2 * area }]);
    expect(numbers().projects).toMatchObject([{ projectId, cost: known(320), area: 8 * area }]);
  });
});
