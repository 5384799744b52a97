import { describe, expect, test } from 'vitest';
import type { ChannelInput } from '#core/contract/channels';
import type { ShoppingList } from '#core/contract/shopping';
import { lengthFromUnits } from '#core/units/length';
import {
  addStock,
  addProject,
  fabricDetails,
  inches,
  openWorkshop,
  type TestWorkshop,
  TODAY,
} from '#test/helpers/workshop';

/** A project with a saved answer on its stage of a kind. */
function ringWith(workshop: TestWorkshop, kind: string, calculator: string, name = 'Autumn ring') {
  const { projectId, stages } = addProject(workshop, { name });
  const stageId = stages.find((stage) => stage.kind === kind)?.id;
  if (stageId === undefined) throw new Error(`No ${kind}`);
  workshop.get('calculation:save', { stageId, calculator, ownInput: {} });
  return { projectId, stageId };
}

function onlyLine(list: ShoppingList): ShoppingList['lines'][number] {
  const [line, ...more] = list.lines;
  if (line === undefined || more.length > 0) throw new Error(`${String(list.lines.length)} lines`);
  return line;
}

/** What the dialog sends when a line is checked off unchanged. */
function asListed(line: ShoppingList['lines'][number]): ChannelInput<'shopping:buy'> {
  const [share] = line.shares;
  if (share === undefined) throw new Error('No share');
  const { projectId, source, name } = share.need;
  return {
    lineId: null,
    needs: [{ projectId, source, name }],
    fabric: { details: fabricDetails({ name: 'Fresh linen', width: line.width }) },
    kind: line.kind,
    kindId: null,
    size: { width: line.width, length: line.length },
    unitLength: null,
    place: '',
    costMinor: 2450,
    on: TODAY,
    note: '',
    holds: [{ projectId, length: share.length }],
  };
}

describe('the shopping list', () => {
  test('shows what a saved answer needs, with its extra for safety, in lengths that shops cut', () => {
    const workshop = openWorkshop();
    const { projectId } = ringWith(workshop, 'longarm', 'backing');
    const line = onlyLine(workshop.get('shopping:list', {}));
    expect(line).toMatchObject({ kind: 'backing', fabric: null, count: null, width: inches(42) });
    // Derived: a ring of 50 in with 4 in on every side takes two panels of 58 in from fabric 42 in wide, 5% more, rounded up to 1/8 yd.
    expect(line.exact).toBe(Math.ceil(2 * inches(58) * 1.05));
    expect(line.length).toBe(inches(126));
    expect(line.shares.map(({ need }) => need.projectId)).toEqual([projectId]);
  });

  test('turns a checked-off line into a piece that is set aside; one undo reverses all of it', () => {
    const workshop = openWorkshop();
    const { projectId } = ringWith(workshop, 'longarm', 'backing');
    const line = onlyLine(workshop.get('shopping:list', {}));
    const { fabricId } = workshop.get('shopping:buy', asListed(line));
    expect(workshop.get('shopping:list', {}).lines).toEqual([]);
    const { held, bookings } = workshop.get('ledger:of-project', { projectId });
    expect(held).toMatchObject([
      { fabric: { id: fabricId, name: 'Fresh linen' }, held: line.shares[0]?.length },
    ]);
    expect(bookings).toHaveLength(1);
    expect(workshop.get('fabric:open', { fabricId })).toMatchObject({
      value: { minor: 2450, unpricedArea: 0 },
    });
    workshop.get('change:undo', {});
    expect(onlyLine(workshop.get('shopping:list', {}))).toEqual(line);
    expect(workshop.fail('fabric:open', { fabricId })).toMatchObject({ code: 'not-found' });
    expect(workshop.get('ledger:of-project', { projectId }).held).toEqual([]);
    workshop.get('change:redo', {});
    expect(workshop.get('shopping:list', {}).lines).toEqual([]);
  });

  test('leaves out what is free or set aside of the chosen fabric, and shows the rest', () => {
    const workshop = openWorkshop();
    const { projectId } = ringWith(workshop, 'longarm', 'backing');
    const whole = onlyLine(workshop.get('shopping:list', {}));
    const need = whole.shares[0]?.need;
    if (need === undefined) throw new Error('No need');
    const { fabricId, pieceId } = addStock(workshop, { yards: 2 });
    const { source, name } = need;
    workshop.get('shopping:choose', { projectId, source, name, choice: { kind: 'fabric', fabricId } });
    // Derived: two yards give one of the two panels.
    const rest = onlyLine(workshop.get('shopping:list', {}));
    expect(rest).toMatchObject({ fabric: { id: fabricId, supplier: 'An invented shop' }, width: inches(42) });
    expect(rest.exact).toBe(Math.ceil(inches(58) * 1.05));
    const other = addProject(workshop, { name: 'Another' });
    const aside = { pieceId, projectId: other.projectId, length: inches(60), on: TODAY, note: '' };
    workshop.get('ledger:set-aside', aside);
    expect(onlyLine(workshop.get('shopping:list', {})).exact).toBe(whole.exact);
  });

  test('joins what several projects need of one fabric in one line and rounds it once', () => {
    const workshop = openWorkshop();
    const { fabricId } = workshop.get('fabric:create', { details: fabricDetails({ name: 'Binding' }) });
    ringWith(workshop, 'outer-binding', 'outer-binding', 'One');
    ringWith(workshop, 'outer-binding', 'outer-binding', 'Two');
    const line = onlyLine(workshop.get('shopping:list', {}));
    expect(line.fabric?.id).toBe(fabricId);
    expect(line.shares.map(({ need }) => need.projectName)).toEqual(['One', 'Two']);
    expect(line.exact).toBe(line.shares.reduce((sum, { length }) => sum + length, 0));
    expect(line.length - line.exact).toBeLessThan(inches(4.5));
  });

  test('drops a need that is left out until it is put back, and one whose stage is skipped', () => {
    const workshop = openWorkshop();
    const { projectId, stageId } = ringWith(workshop, 'longarm', 'backing');
    const need = onlyLine(workshop.get('shopping:list', {})).shares[0]?.need;
    const named = { projectId, source: need?.source ?? '', name: need?.name ?? '' };
    workshop.get('shopping:choose', { ...named, choice: { kind: 'leave-out' } });
    const list = workshop.get('shopping:list', {});
    expect([list.lines, list.leftOut.map(({ name }) => name)]).toEqual([[], ['Backing']]);
    workshop.get('shopping:choose', { ...named, choice: null });
    expect(workshop.get('shopping:list', {}).lines).toHaveLength(1);
    workshop.get('stage:move', { stageId, to: 'skipped' });
    expect(workshop.get('shopping:list', {})).toMatchObject({ lines: [], leftOut: [] });
  });

  test('has lines in the maker’s own words, which are checked off like the others', () => {
    const workshop = openWorkshop();
    const details = { words: 'Walking foot needles', howMuch: '2 packs', supplier: 'An invented shop' };
    const { lineId } = workshop.get('shopping:save-line', {
      lineId: null,
      details: { ...details, projectId: null },
    });
    expect(workshop.get('shopping:list', {}).own).toMatchObject([{ id: lineId, ...details }]);
    workshop.get('shopping:buy', {
      lineId,
      needs: [],
      holds: [],
      fabric: { details: fabricDetails({ name: details.words }) },
      kind: 'needles',
      kindId: null,
      size: { width: lengthFromUnits(320), length: lengthFromUnits(640) },
      unitLength: lengthFromUnits(320),
      place: '',
      costMinor: 900,
      on: TODAY,
      note: '',
    });
    expect(workshop.get('shopping:list', {}).own).toEqual([]);
    workshop.get('change:undo', {});
    expect(workshop.get('shopping:list', {}).own).toMatchObject([{ id: lineId, ...details }]);
    workshop.get('shopping:delete-line', { lineId });
    expect(workshop.fail('shopping:delete-line', { lineId })).toMatchObject({ code: 'not-found' });
  });

  test('refuses to set aside more than was bought, and books nothing', () => {
    const workshop = openWorkshop();
    ringWith(workshop, 'longarm', 'backing');
    const bought = asListed(onlyLine(workshop.get('shopping:list', {})));
    const [hold] = bought.holds;
    if (hold === undefined) throw new Error('No hold');
    const tooMuch = { ...bought, holds: [{ ...hold, length: inches(200) }] };
    expect(workshop.fail('shopping:buy', tooMuch)).toMatchObject({ code: 'short-of-fabric' });
    expect(workshop.get('fabric:list', { search: '' }).total).toBe(0);
  });
});

describe('fabrics for a need', () => {
  test('lists the best fit first, then what is short and by how much; the chosen one is set aside as one change', () => {
    const workshop = openWorkshop();
    const { projectId } = ringWith(workshop, 'longarm', 'backing');
    const need = onlyLine(workshop.get('shopping:list', {})).shares[0]?.need;
    const named = { projectId, source: need?.source ?? '', name: need?.name ?? '' };
    const addPiece = (name: string, length: number, width = 42) => {
      const { fabricId } = workshop.get('fabric:create', {
        details: fabricDetails({ name, width: inches(width) }),
      });
      const size = { width: inches(width), length: inches(length) };
      const bought = { fabricId, kind: 'backing', size, costMinor: 0, on: TODAY, note: '' } as const;
      workshop.get('ledger:buy', bought);
      return fabricId;
    };
    addPiece('Long', 300);
    addPiece('Short', 60);
    const best = addPiece('Just right', 120);
    addPiece('Narrow', 300, 30);
    const { fits } = workshop.get('shopping:fits', { ...named, search: '' });
    expect(fits.map(({ fabric, verdict, shortBy }) => [fabric.name, verdict, shortBy])).toEqual([
      ['Just right', 'one-piece', 0],
      ['Long', 'one-piece', 0],
      ['Short', 'short', inches(58)],
    ]);
    expect(fits[0]?.leftOver).toBe(inches(42) * inches(4));
    expect(workshop.get('shopping:fits', { ...named, search: 'lon' }).fits).toHaveLength(1);
    const takes = (fits[0]?.takes ?? []).map(({ pieceId, more }) => ({
      pieceId,
      length: lengthFromUnits(more),
    }));
    workshop.get('shopping:set-aside', { ...named, fabricId: best, takes, on: TODAY });
    expect(workshop.get('shopping:list', {}).lines).toEqual([]);
    expect(workshop.get('ledger:of-project', { projectId }).held).toMatchObject([{ held: inches(116) }]);
    expect(workshop.get('shopping:fits', { ...named, search: '' }).fits[0]).toMatchObject({
      isHeld: true,
      isChosen: true,
      takes: [{ more: 0 }],
    });
    workshop.get('change:undo', {});
    expect(workshop.get('shopping:list', {}).lines).toHaveLength(1);
    expect(workshop.get('ledger:of-project', { projectId }).held).toEqual([]);
  });

  test('never turns a directional print, except where it runs across the piece', () => {
    const workshop = openWorkshop();
    const { projectId } = ringWith(workshop, 'longarm', 'backing');
    const need = onlyLine(workshop.get('shopping:list', {})).shares[0]?.need;
    if (need?.amount.measure !== 'patches') throw new Error('A backing is patches');
    const [panel] = need.amount.patches;
    if (panel === undefined) throw new Error('A backing has a panel');
    const size = { width: lengthFromUnits(panel.length), length: lengthFromUnits(panel.width * panel.count) };
    const addPiece = (name: string, direction: 'any' | 'one-way', runs: 'along' | 'across') => {
      const { fabricId } = workshop.get('fabric:create', {
        details: fabricDetails({ name, direction, width: size.width }),
      });
      const bought = { fabricId, kind: 'backing', size, costMinor: 0, on: TODAY, note: '' } as const;
      const { pieceId } = workshop.get('ledger:buy', bought);
      if (runs === 'across') workshop.get('piece:set-print', { pieceId, runs });
    };
    addPiece('Along', 'one-way', 'along');
    addPiece('Across', 'one-way', 'across');
    const named = { projectId, source: need.source, name: need.name };
    const { fits } = workshop.get('shopping:fits', { ...named, search: '' });
    expect(fits.map(({ fabric, verdict }) => [fabric.name, verdict])).toEqual([
      ['Across', 'one-piece'],
      ['Along', 'short'],
    ]);
  });
});

describe('cord for piping', () => {
  test('is a line of its own with its length, and one item of it in the stash meets it', () => {
    const workshop = openWorkshop();
    const { projectId } = ringWith(workshop, 'outer-binding', 'piping');
    const isCord = ({ kind }: { readonly kind: string }) => kind === 'notions';
    const cord = workshop.get('shopping:list', {}).lines.find(isCord)!;
    // Derived: around 50 in, and 4 in to join the ends, in eighths of a yard.
    const needed = Math.PI * inches(50) + inches(4);
    expect(cord).toMatchObject({ count: null, exact: Math.ceil(needed), fabric: null });
    expect(cord.length).toBe(Math.ceil(needed / inches(4.5)) * inches(4.5));
    const [{ need }] = cord.shares as [(typeof cord.shares)[number]];
    const named = { projectId, source: need.source, name: need.name };
    expect(workshop.get('shopping:fits', { ...named, search: '' }).fits).toEqual([]);
    const oneItem = lengthFromUnits(320);
    workshop.get('shopping:buy', {
      ...asListed(cord),
      fabric: { details: fabricDetails({ name: 'Cotton cord' }) },
      size: { width: oneItem, length: oneItem },
      unitLength: oneItem,
      holds: [],
    });
    expect(workshop.get('shopping:list', {}).lines.filter(isCord)).toEqual([]);
    const { fits } = workshop.get('shopping:fits', { ...named, search: '' });
    expect(fits).toMatchObject([{ fabric: { name: 'Cotton cord' }, verdict: 'one-piece', isChosen: true }]);
  });
});
