import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { StashFilter, StashOrder } from '#core/domain/stash-filter';
import type { PieceKind } from '#core/domain/stash';
import { cutFrom, isNothing } from '#core/stash/shopping/fill-rows';
import { calendarDate, type CalendarDate } from '#core/units/calendar-date';
import { addProject, fabricDetails, inches, openWorkshop, TODAY } from '#test/helpers/workshop';

type Details = Parameters<typeof fabricDetails>[0];

interface Bought {
  readonly kind?: PieceKind;
  readonly size?: readonly [number, number];
  readonly unit?: number;
  readonly place?: string;
  readonly costMinor?: number | null;
  readonly on?: CalendarDate | null;
}

function shelf() {
  const workshop = openWorkshop();
  const add = (name: string, bought: Bought = {}, changes: Details = {}) => {
    const { fabricId } = workshop.get('fabric:create', {
      details: fabricDetails({ name, print: '', colorWords: '', place: '', ...changes }),
    });
    const { kind = 'yardage', size = [42, 36], unit, place = '', costMinor = 100, on = TODAY } = bought;
    const { pieceId } = workshop.get('ledger:buy', {
      fabricId,
      kind,
      size: { width: inches(size[0]), length: inches(size[1]) },
      place,
      unitLength: unit === undefined ? null : inches(unit),
      costMinor,
      on,
      note: '',
    });
    return { fabricId, pieceId };
  };
  const found = (filter: StashFilter, search = '', order: StashOrder = 'name') => {
    const { items, total } = workshop.get('fabric:list', { search, filter, order });
    expect(total).toBe(items.length);
    return items.map(({ fabric }) => fabric.name);
  };
  return { workshop, add, found };
}

describe('filtering the stash', () => {
  test('by kind finds fabrics with a piece of it that is not used up', () => {
    const { workshop, add, found } = shelf();
    add('Roll');
    const { pieceId } = add('Quarter', { kind: 'fat-quarter', size: [22, 18] });
    expect(found({ kind: 'fat-quarter' })).toEqual(['Quarter']);
    workshop.get('ledger:count', { pieceId, there: inches(0), on: TODAY, note: '' });
    expect(found({ kind: 'fat-quarter' })).toEqual([]);
    workshop.get('change:undo', {});
    expect(found({ kind: 'fat-quarter' })).toEqual(['Quarter']);
  });

  test('works by print direction, by a word of the color, and together with a search', () => {
    const { add, found } = shelf();
    add('Leaves', {}, { direction: 'one-way', colorWords: 'rust, brown' });
    add('Dots', {}, { colorWords: 'dark blue' });
    expect(found({ direction: 'one-way' })).toEqual(['Leaves']);
    expect(found({ color: 'blue' })).toEqual(['Dots']);
    expect(found({ color: 'brown', direction: 'any' })).toEqual([]);
    expect(found({ color: 'brown' }, 'lea')).toEqual(['Leaves']);
  });

  test('by place finds fabrics stored in it or inside it, whole or with one piece', () => {
    const { workshop, add, found } = shelf();
    add('Whole', {}, { place: 'Loft, shelf 1' });
    add('Part', { place: 'Loft, shelf 2, bin' }, { place: 'Hall' });
    add('Other', {}, { place: 'Hall' });
    const id = (path: string) => workshop.get('place:list', {}).find((place) => place.path === path)!.id;
    expect(found({ placeId: id('Loft') })).toEqual(['Part', 'Whole']);
    expect(found({ placeId: id('Loft, shelf 2') })).toEqual(['Part']);
    expect(found({ placeId: id('Hall') })).toEqual(['Other', 'Part']);
  });

  test('by free length does not count what is set aside', () => {
    const { workshop, add, found } = shelf();
    const { pieceId } = add('Long', { size: [42, 72] });
    add('Short', { size: [42, 20] });
    expect(found({ freeAtLeast: inches(60) })).toEqual(['Long']);
    const { projectId } = addProject(workshop);
    workshop.get('ledger:set-aside', { pieceId, projectId, length: inches(30), on: TODAY, note: '' });
    expect(found({ freeAtLeast: inches(60) })).toEqual([]);
    expect(found({ freeAtLeast: inches(42) })).toEqual(['Long']);
  });

  test('by patches finds a piece large enough for them, cut in strips across it', () => {
    const { add, found } = shelf();
    add('Yard', { size: [42, 36] });
    add('Quarter', { kind: 'fat-quarter', size: [22, 18] });
    add('Squares', { kind: 'precut-squares', size: [5, 200], unit: 5 });
    const patch = (width: number, length: number, count = 1) => ({
      width: inches(width),
      length: inches(length),
      count,
    });
    expect(found({ fits: [patch(20, 18)] })).toEqual(['Quarter', 'Yard']);
    expect(found({ fits: [patch(22.25, 10)] })).toEqual(['Yard']);
    // Derived: ten patches of 4 in side by side across 42 in, so 90 take nine strips of 4 in, all 36 in. One more does not fit.
    expect(found({ fits: [patch(4, 4, 90)] })).toEqual(['Yard']);
    expect(found({ fits: [patch(4, 4, 91)] })).toEqual([]);
    expect(found({ fits: [patch(4, 4, 50), patch(21, 16, 2)] })).toEqual(['Yard']);
    expect(found({ fits: [patch(4, 4, 51), patch(21, 16, 2)] })).toEqual([]);
    // Precut squares give no strip, however long they are together.
    expect(found({ fits: [patch(5, 40)] })).not.toContain('Squares');
  });

  test('by patches agrees with the shopping list: what it finds gives every patch, cut in rows', () => {
    const { add, found } = shelf();
    const sizes = [
      [22, 18],
      [30, 24],
      [42, 36],
    ] as const;
    for (const size of sizes) add(size.join(' × '), { size });
    const side = fc.integer({ min: 2, max: 80 }).map((quarters) => inches(quarters / 4));
    const patch = fc.record({ width: side, length: side, count: fc.integer({ min: 1, max: 30 }) });
    let finds = 0;
    fc.assert(
      fc.property(fc.array(patch, { minLength: 1, maxLength: 4 }), (patches) => {
        const names = found({ fits: patches });
        for (const [width, length] of sizes) {
          if (!names.includes(`${String(width)} × ${String(length)}`)) continue;
          finds += 1;
          const amount = {
            measure: 'patches',
            patches: patches.map((one) => ({ ...one, mayTurn: false })),
          } as const;
          const { left } = cutFrom(amount, {
            width: inches(width),
            length: inches(length),
            turning: 'along',
          });
          expect(isNothing(left)).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
    expect(finds).toBeGreaterThan(10);
  });

  test('sorts in the order asked for', () => {
    const { add, found } = shelf();
    add('B', { size: [42, 36] });
    add('C', { size: [42, 90] });
    add('A', { size: [42, 50] });
    expect(found({})).toEqual(['A', 'B', 'C']);
    expect(found({}, '', 'oldest')).toEqual(['B', 'C', 'A']);
    expect(found({}, '', 'newest')).toEqual(['A', 'C', 'B']);
    expect(found({}, '', 'most-free')).toEqual(['C', 'A', 'B']);
  });

  test('leaves out a deleted fabric until that is undone', () => {
    const { workshop, found } = shelf();
    const { fabricId } = workshop.get('fabric:create', { details: fabricDetails({ name: 'Gone' }) });
    workshop.get('fabric:delete', { fabricId });
    expect(found({ direction: 'any' })).toEqual([]);
    workshop.get('change:undo', {});
    expect(found({ direction: 'any' })).toEqual(['Gone']);
  });
});

test('fabric bought in a month or year is found by any day of it, and by no day if it is not known', () => {
  const { add, found } = shelf();
  const on = (text: string) => text as CalendarDate;
  add('Of a month', { on: on('2024-03') });
  add('Of a year', { on: on('2024') });
  add('Of no day', { on: null });
  expect(found({ boughtFrom: on('2024-04-01') })).toEqual(['Of a year']);
  expect(found({ boughtFrom: on('2024-03-31') })).toEqual(['Of a month', 'Of a year']);
  expect(found({ boughtUntil: on('2024-02-01') })).toEqual(['Of a year']);
  expect(found({ boughtUntil: on('2024-03-01') })).toEqual(['Of a month', 'Of a year']);
  expect(found({})).toHaveLength(3);
});

test('the price paid counts only the pieces whose cost is known', () => {
  const { workshop, add, found } = shelf();
  const { fabricId } = add('Rust', { size: [42, 36], costMinor: 900 });
  const size = { width: inches(42), length: inches(360) };
  workshop.get('ledger:buy', { fabricId, kind: 'yardage', size, costMinor: null, on: null, note: '' });
  add('Unknown', { costMinor: null });
  const paid = (atMost: number) => found({ price: { counted: 'paid', length: inches(36), atMost } });
  expect(paid(900)).toEqual(['Rust']);
  expect(paid(899)).toEqual([]);
});

describe('a typing slip', () => {
  test.each(['kettel', 'ketle', 'kettlle', 'kattle', 'ettle', 'kettel bleu', 'Kétlle', 'kettle blux'])(
    'as in “%s” still finds Kettle blue',
    (search) => {
      const { add, found } = shelf();
      add('Kettle blue');
      add('Oat straw');
      expect(found({}, search)).toEqual(['Kettle blue']);
    },
  );

  test('is considered only if no word begins as typed, and never in a short word', () => {
    const { add, found } = shelf();
    add('Plum');
    add('Plumb line');
    add('Slum');
    expect(found({}, 'plum')).toEqual(['Plum', 'Plumb line']);
    expect(found({}, 'slam')).toEqual(['Slum']);
    expect(found({}, 'sam')).toEqual([]);
  });

  test('is compared with words added after the first search, those of places too', () => {
    const { add, found } = shelf();
    add('Oat straw');
    expect(found({}, 'loftt')).toEqual([]);
    add('Rye', { place: 'Loft' });
    expect(found({}, 'lofft')).toEqual(['Rye']);
  });
});

test('the shelf agrees with the ledger and the fabrics after changes and undo', () => {
  const { workshop, add } = shelf();
  const { pieceId, fabricId } = add('Roll', { size: [42, 72] });
  const { projectId } = addProject(workshop);
  const steps = [
    () => workshop.get('ledger:set-aside', { pieceId, projectId, length: inches(9), on: TODAY, note: '' }),
    () => workshop.get('fabric:change', { fabricId, details: fabricDetails({ direction: 'two-way' }) }),
    () => workshop.get('ledger:discard', { pieceId, length: inches(3), on: TODAY, note: '' }),
    () => workshop.get('change:undo', {}),
    () => workshop.get('change:undo', {}),
  ];
  for (const step of steps) {
    step();
    const line = workshop.context.store.database.prepare('SELECT * FROM shelf').get();
    const { fabric, areaFree, pieces } = workshop.get('fabric:open', { fabricId });
    const [piece] = pieces;
    expect(line).toMatchObject({
      direction: fabric.direction,
      kinds: 1,
      area_free: areaFree,
      widest: inches(42),
      longest_free: piece!.there - piece!.held,
    });
  }
});

describe('filtering the stash by price and by day', () => {
  const yard = inches(36);
  const on = (day: string) => ({ on: calendarDate(day) });

  test('by day finds fabric bought from or until it; fabric never bought counts from the day it was added', () => {
    const { add, found, workshop } = shelf();
    add('Old', on('2020-05-01'));
    const { fabricId } = add('Both', on('2020-05-01'));
    const size = { width: inches(42), length: yard };
    workshop.get('ledger:buy', {
      fabricId,
      kind: 'yardage',
      size,
      costMinor: 1,
      note: '',
      ...on('2026-05-01'),
    });
    workshop.get('fabric:create', { details: fabricDetails({ name: 'Never bought' }) });
    expect(found({ boughtUntil: calendarDate('2020-05-01') })).toEqual(['Both', 'Old']);
    expect(found({ boughtUntil: calendarDate('2020-04-30') })).toEqual([]);
    expect(found({ boughtFrom: calendarDate('2026-05-01') })).toEqual(['Both', 'Never bought']);
    workshop.get('change:undo', {});
    workshop.get('change:undo', {});
    expect(found({ boughtFrom: calendarDate('2026-05-01') })).toEqual([]);
  });

  test('by price uses the maker’s own price or the last one paid, or what the fabric cost', () => {
    const { add, found, workshop } = shelf();
    add('Ten a yard', { costMinor: 1_000 });
    const { fabricId } = add('Was cheap', { costMinor: 400 });
    const price = (counted: 'again' | 'paid', atLeast: number, atMost: number): StashFilter => ({
      price: { counted, length: yard, atLeast, atMost },
    });
    expect(found(price('again', 500, 1_000))).toEqual(['Ten a yard']);
    workshop.get('fabric:set-price', { fabricId, price: { minor: 1_800, length: inches(72) } });
    expect(found(price('again', 500, 1_000))).toEqual(['Ten a yard', 'Was cheap']);
    expect(found(price('paid', 400, 400))).toEqual(['Was cheap']);
    expect(found({ price: { counted: 'again', length: yard, atMost: 899 } })).toEqual([]);
    expect(found({ price: { counted: 'again', length: yard, atLeast: 901 } })).toEqual(['Ten a yard']);
  });

  test('by price does not take a purchase that was undone and redone for the last one', () => {
    const { add, found, workshop } = shelf();
    const { fabricId } = add('Twice bought', { costMinor: 400 });
    const { ledger } = workshop.get('fabric:open', { fabricId });
    const size = { width: inches(42), length: yard };
    workshop.get('ledger:buy', { fabricId, kind: 'yardage', size, costMinor: 900, on: TODAY, note: '' });
    workshop.get('ledger:undo', { bookingId: ledger[0]!.id, on: TODAY });
    workshop.get('change:undo', {});
    expect(workshop.get('fabric:open', { fabricId }).price).toMatchObject({ minor: 900 });
    expect(found({ price: { counted: 'again', length: yard, atLeast: 900 } })).toEqual(['Twice bought']);
  });

  test('by free length in all counts all pieces together, at the width of the widest', () => {
    const { add, found, workshop } = shelf();
    const { fabricId } = add('In two', { size: [42, 18] });
    expect(found({ freeInAll: inches(18) })).toEqual(['In two']);
    expect(found({ freeInAll: yard })).toEqual([]);
    workshop.get('ledger:buy', {
      fabricId,
      kind: 'leftover',
      size: { width: inches(21), length: yard },
      costMinor: 0,
      on: TODAY,
      note: '',
    });
    expect(found({ freeInAll: yard })).toEqual(['In two']);
  });
});
