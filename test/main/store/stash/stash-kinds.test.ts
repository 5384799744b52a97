import { describe, expect, test } from 'vitest';
import { COMMON_PACKAGES } from '#core/calculators/batting/input';
import { ONE_THING, type StashKindDetails } from '#core/domain/stash-kind';
import { lengthFromUnits } from '#core/units/length';
import { addStock, inches, NO_SUCH_ID, openWorkshop, TODAY } from '#test/helpers/workshop';

const EIGHTS: StashKindDetails = {
  form: 'precut-squares',
  name: 'Squares, 8 in',
  width: inches(8),
  length: inches(8),
  count: 30,
  isHidden: false,
};

describe('the list of kinds', () => {
  test('starts with the packages of batting that the calculator proposes', () => {
    const kinds = openWorkshop()
      .get('kind:list', {})
      .filter(({ form }) => form === 'batting-package')
      .map(({ name, width, length }) => [name, width, length]);
    expect(kinds).toEqual(
      COMMON_PACKAGES.map(({ name, width, length }) => [
        `Batting, ${name.toLowerCase()} package`,
        width,
        length,
      ]),
    );
  });

  test('starts with every form, and a kind can be added, hidden, deleted and restored', () => {
    const workshop = openWorkshop();
    const names = () => workshop.get('kind:list', {}).map(({ name }) => name);
    const forms = new Set(workshop.get('kind:list', {}).map(({ form }) => form));
    expect([...forms].sort()).toEqual(
      [
        'backing',
        'batting',
        'batting-package',
        'bias-made-up',
        'fat-eighth',
        'fat-quarter',
        'leftover',
        'needles',
        'notions',
        'panel',
        'precut-squares',
        'precut-strips',
        'thread',
        'wide-backing',
        'yardage',
      ].sort(),
    );
    const before = names();
    const { kindId } = workshop.get('kind:save', { kindId: null, details: EIGHTS });
    expect(names()).toEqual([...before, 'Squares, 8 in']);
    workshop.get('kind:save', { kindId, details: { ...EIGHTS, name: 'Eights', isHidden: true } });
    expect(workshop.get('kind:list', {}).at(-1)).toMatchObject({
      name: 'Eights',
      isHidden: true,
      width: inches(8),
    });
    workshop.get('kind:delete', { kindId });
    expect(names()).toEqual(before);
    workshop.get('change:undo', {});
    expect(names()).toEqual([...before, 'Eights']);
    expect(workshop.fail('kind:save', { kindId: NO_SUCH_ID as never, details: EIGHTS }).code).toBe(
      'not-found',
    );
  });
});

describe('fabric counted in items', () => {
  function withSpools() {
    const workshop = openWorkshop();
    const { fabricId } = addStock(workshop);
    const buy = (changes: object) => ({
      fabricId,
      kind: 'thread',
      costMinor: 1500,
      on: TODAY,
      note: '',
      unitLength: ONE_THING,
      size: { width: ONE_THING, length: lengthFromUnits(5 * ONE_THING) },
      ...changes,
    });
    return { workshop, fabricId, buy };
  }

  test('is bought and used in whole items and in parts, and its cost is shared to the last cent', () => {
    const { workshop, fabricId, buy } = withSpools();
    const { pieceId } = workshop.get('ledger:buy', buy({}) as never);
    const piece = () => workshop.get('fabric:open', { fabricId }).pieces.find(({ id }) => id === pieceId);
    const some = (spools: number) => ({
      pieceId,
      length: lengthFromUnits(spools * ONE_THING),
      on: TODAY,
      note: '',
    });
    workshop.get('ledger:discard', some(1));
    workshop.get('ledger:discard', some(0.5));
    expect(piece()).toMatchObject({ there: 3.5 * ONE_THING, unitLength: ONE_THING, valueMinor: 1050 });
    expect(workshop.fail('ledger:discard', some(4)).code).toBe('short-of-fabric');
  });

  test('is bought only in a whole number of items', () => {
    const { workshop, buy } = withSpools();
    const odd = {
      size: { width: inches(5), length: inches(12) },
      unitLength: inches(5),
      kind: 'precut-squares',
    };
    expect(workshop.fail('ledger:buy', buy(odd) as never).code).toBe('uneven-count');
  });

  test('keeps the maker’s own kind, even when that is deleted', () => {
    const { workshop, fabricId, buy } = withSpools();
    const { kindId } = workshop.get('kind:save', { kindId: null, details: EIGHTS });
    workshop.get('ledger:buy', buy({ kind: 'precut-squares', kindId }) as never);
    workshop.get('kind:delete', { kindId });
    expect(workshop.get('fabric:open', { fabricId }).pieces.at(-1)).toMatchObject({
      kind: 'precut-squares',
      kindId,
    });
  });
});
