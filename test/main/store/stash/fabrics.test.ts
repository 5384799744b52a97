import { describe, expect, test } from 'vitest';
import { searchQuery } from '#main/store/stash/fabric-search';
import { addStock, fabricDetails, openWorkshop, TINY_PNG, TODAY } from '#test/helpers/workshop';

function stash() {
  const workshop = openWorkshop();
  const add = (name: string, changes: Parameters<typeof fabricDetails>[0] = {}) =>
    workshop.get('fabric:create', { details: fabricDetails({ name, ...changes }) }).fabricId;
  const found = (search: string, page = {}) =>
    workshop.get('fabric:list', { search, ...page }).items.map(({ fabric }) => fabric.name);
  return { workshop, add, found };
}

describe('a fabric', () => {
  test('reads back as it was written, and as it was changed', () => {
    const { workshop, add } = stash();
    const fabricId = add('Night sky', { notes: 'For “stars” – 100 % näht sich gut' });
    expect(workshop.get('fabric:open', { fabricId }).fabric).toMatchObject(
      fabricDetails({ name: 'Night sky', notes: 'For “stars” – 100 % näht sich gut' }),
    );
    const details = fabricDetails({ name: 'Day sky', isWashed: false, direction: 'one-way' });
    workshop.get('fabric:change', { fabricId, details });
    expect(workshop.get('fabric:open', { fabricId }).fabric).toMatchObject(details);
  });

  test('can be deleted only when all its bookings are undone', () => {
    const workshop = openWorkshop();
    const { fabricId } = addStock(workshop);
    expect(workshop.fail('fabric:delete', { fabricId })).toEqual({
      code: 'in-use',
      kind: 'fabric',
      name: 'Rust leaves',
    });
    const [bought] = workshop.get('fabric:open', { fabricId }).ledger;
    workshop.get('ledger:undo', { bookingId: bought!.id, on: TODAY });
    workshop.get('fabric:delete', { fabricId });
    expect(workshop.fail('fabric:open', { fabricId })).toEqual({ code: 'not-found', kind: 'fabric' });
    expect(workshop.get('fabric:list', { search: '' }).total).toBe(0);
    expect(workshop.get('fabric:list', { search: 'rust' }).total).toBe(0);
    workshop.get('change:undo', {});
    expect(workshop.get('fabric:list', { search: 'rust' }).total).toBe(1);
  });

  test('has its photo set, replaced and removed; undo restores each', () => {
    const { workshop, add } = stash();
    const fabricId = add('Night sky');
    const photo = () => workshop.get('fabric:open', { fabricId }).fabric.photoId;
    workshop.get('fabric:set-photo', { fabricId, bytes: TINY_PNG });
    const first = photo();
    expect(first).not.toBeNull();
    workshop.get('fabric:set-photo', { fabricId, bytes: TINY_PNG });
    expect(photo()).not.toBe(first);
    workshop.get('fabric:set-photo', { fabricId, bytes: null });
    expect(photo()).toBeNull();
    workshop.get('change:undo', {});
    workshop.get('change:undo', {});
    expect(photo()).toBe(first);
  });
});

describe('searching the stash', () => {
  test('finds fabrics by how their words begin, all of which must match, sorted by name', () => {
    const { add, found } = stash();
    add('rust leaves', { colorWords: 'rust, brown' });
    add('Acorns', { colorWords: 'rust', place: 'Blue box', print: '' });
    add('Sky', { colorWords: 'blue', print: 'Clouds', place: '' });
    expect(found('')).toEqual(['Acorns', 'rust leaves', 'Sky']);
    expect(found('ru')).toEqual(['Acorns', 'rust leaves']);
    expect(found('blue')).toEqual(['Acorns', 'Sky']);
    expect(found('blu RUS')).toEqual(['Acorns']);
    expect(found('aves')).toEqual([]);
    expect(found('clou sk')).toEqual(['Sky']);
  });

  test('ignores accents and marks between words', () => {
    const { add, found } = stash();
    add('Crème brûlée', { print: 'dots-and-lines' });
    for (const search of ['creme', 'CRÈME', 'brul', 'dots lines', 'and-li', 'crème, brûlée!']) {
      expect(found(search), search).toEqual(['Crème brûlée']);
    }
  });

  test.each([
    '"',
    '""',
    '*',
    'rust*',
    'NOT',
    'rust OR sky',
    'rust AND',
    'name:rust',
    '{rust}',
    '^rust',
    'NEAR(rust sky)',
    '(',
    ')',
    '-',
    '--',
    "'; DROP TABLE fabric; --",
    '%',
    '_',
    '\\',
    '🧵',
    '\u0301',
    'a'.repeat(200),
    '"rust" NOT "leaves"',
  ])('takes %j for words, never for an operator', (search) => {
    const { workshop, add } = stash();
    add('Rust leaves');
    expect(workshop.ask('fabric:list', { search })).toMatchObject({ ok: true });
    expect(workshop.get('fabric:list', { search: '' }).total).toBe(1);
  });

  test('lists everything if there is nothing to search for', () => {
    expect(searchQuery('  - , “” ', '')).toBeNull();
    expect(searchQuery('re-dyed “blue”', 'navy')).toBe('"re"* AND "dyed"* AND "blue"* AND "navy"*');
  });

  test('gives consecutive pages, for few hits and for many', () => {
    const { workshop, add, found } = stash();
    workshop.context.store.database.pragma('synchronous = OFF');
    const names = Array.from({ length: 450 }, (_one, index) => `Fabric ${String(index).padStart(3, '0')}`);
    for (const name of [...names].reverse()) add(name, { colorWords: name.endsWith('7') ? 'teal' : 'grey' });
    for (const search of ['', 'fabric', 'teal']) {
      const all = found(search);
      expect(all).toEqual([...all].sort());
      const pages = [0, 20, 40].flatMap((offset) => found(search, { offset, limit: 20 }));
      expect(pages).toEqual(all.slice(0, 60));
      expect(workshop.get('fabric:list', { search, limit: 1 }).total).toBe(all.length);
    }
    expect(found('fabric')).toHaveLength(450);
  }, 30_000);
});
