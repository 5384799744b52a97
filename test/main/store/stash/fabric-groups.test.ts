import { describe, expect, test } from 'vitest';
import type { StashFilter, StashGroup } from '#core/domain/stash-filter';
import { fabricDetails, inches, openWorkshop, TODAY } from '#test/helpers/workshop';

type Details = Parameters<typeof fabricDetails>[0];

function shelf() {
  const workshop = openWorkshop();
  const add = (name: string, changes: Details, pieces: readonly string[] = []) => {
    const plain = { name, print: '', colorWords: '', place: '', supplier: '', ...changes };
    const { fabricId } = workshop.get('fabric:create', { details: fabricDetails(plain) });
    const size = { width: inches(42), length: inches(36) };
    const bought = { fabricId, kind: 'yardage', size, costMinor: 100, on: TODAY, note: '' } as const;
    return pieces.map((place) => workshop.get('ledger:buy', { ...bought, place }).pieceId);
  };
  /** Each group with the fabrics in its list, which must be as many as the group counts. */
  const groups = (by: StashGroup['by'], filter: StashFilter = {}, search = '') =>
    workshop.get('fabric:groups', { search, filter, by }).map(({ key, name, fabrics }) => {
      const { items, total } = workshop.get('fabric:list', { search, filter, inGroup: { by, key } });
      expect(total, `${by} ${name}`).toBe(fabrics);
      return `${name}: ${items.map(({ fabric }) => fabric.name).join(', ')}`;
    });
  return { workshop, add, groups };
}

describe('the stash in groups', () => {
  test('by place are sorted by room, have a fabric with a piece elsewhere in both, and end with no place', () => {
    const { add, groups } = shelf();
    add('Two', { place: 'Loft, shelf 2' }, ['', 'Hall']);
    add('Ten', { place: 'Loft, shelf 10' });
    add('Somewhere', {});
    expect(groups('place')).toEqual([
      'Hall: Two',
      'Loft, shelf 2: Two',
      'Loft, shelf 10: Ten',
      ': Somewhere',
    ]);
  });

  test('by color start with the most common and look only at the last word of a color', () => {
    const { add, groups } = shelf();
    add('Moss', { colorWords: 'moss green, white' });
    add('Juniper', { colorWords: 'Dark green' });
    add('Bare', {});
    expect(groups('color')).toEqual(['green: Juniper, Moss', 'white: Moss', ': Bare']);
  });

  test('by shop ignore case, and by kind leave out pieces that are used up', () => {
    const { workshop, add, groups } = shelf();
    const [pieceId] = add('Leaves', { supplier: 'The Tuesday wagon' }, ['']);
    add('Dots', { supplier: 'the tuesday WAGON' });
    expect(groups('supplier')).toEqual([expect.stringMatching(/^the tuesday wagon: Dots, Leaves$/i)]);
    expect(groups('kind')).toEqual(['yardage: Leaves', ': Dots']);
    workshop.get('ledger:discard', { pieceId: pieceId!, length: inches(36), on: TODAY, note: '' });
    expect(groups('kind')).toEqual([': Dots, Leaves']);
  });

  test('count only what is found', () => {
    const { add, groups } = shelf();
    add('Moss', { colorWords: 'green', place: 'Loft', direction: 'one-way' });
    add('Milk', { colorWords: 'white', place: 'Hall' });
    expect(groups('place', { direction: 'one-way' })).toEqual(['Loft: Moss']);
    expect(groups('color', {}, 'milk')).toEqual(['white: Milk']);
    expect(groups('supplier', { color: 'white' })).toEqual([': Milk']);
    expect(groups('kind', {}, 'nothing like it')).toEqual([]);
  });
});
