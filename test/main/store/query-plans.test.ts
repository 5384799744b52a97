import { expect, test } from 'vitest';
import type { ChannelInput, StoreChannelName } from '#core/contract/channels';
import { codeOfPiece } from '#core/stash/piece-code';
import { calendarDate } from '#core/units/calendar-date';
import { addStock, addProject, inches, openWorkshop, TODAY } from '#test/helpers/workshop';

/**
 * Tables that grow over the years. A page's call may search them by an index, but never scan them. The history is not one of them: it keeps
 * five hundred changes.
 */
const GROWING = [
  'booking',
  'ledger_entry',
  'entry',
  'fabric_piece',
  'piece_sum',
  'piece_hold',
  'project_use',
  'fabric',
  'stage',
  'checklist_item',
  'calculation',
  'stage_event',
  'trip',
  'photo',
  'change_row',
  'work',
];

test('no page’s call scans a table that grows over the years', () => {
  const workshop = openWorkshop();
  const { context, get } = workshop;
  const { projectId, stages } = addProject(workshop);
  const { fabricId, pieceId } = addStock(workshop);
  context.store.statements.clear();
  const ask = <Name extends StoreChannelName>(name: Name, input: ChannelInput<Name>) => get(name, input);
  ask('project:list', { archived: false });
  ask('project:list', { archived: true, limit: 50 });
  ask('project:open', { projectId });
  ask('ledger:of-project', { projectId });
  ask('calculation:list', { stageId: stages[0]?.id as never });
  ask('fabric:open', { fabricId });
  ask('piece:find', { code: codeOfPiece(pieceId) });
  ask('change:state', {});
  for (const order of ['name', 'newest', 'oldest', 'most-free'] as const) {
    for (const search of ['', 'rust']) ask('fabric:list', { search, order, limit: 100 });
    ask('fabric:list', {
      search: '',
      order,
      limit: 100,
      filter: {
        kind: 'yardage',
        direction: 'any',
        freeAtLeast: inches(3),
        fits: [{ width: inches(2), length: inches(3), count: 2 }],
      },
    });
  }
  ask('stash:numbers', {});
  for (const by of ['place', 'kind', 'color', 'supplier'] as const) {
    ask('fabric:groups', { search: '', by });
    ask('fabric:groups', { search: 'rust', filter: { direction: 'any' }, by });
    for (const key of ['', 'brown']) ask('fabric:list', { search: '', inGroup: { by, key }, limit: 100 });
  }
  const dated = { boughtFrom: calendarDate('2026-01-01'), boughtUntil: calendarDate('2027-01-01') };
  for (const counted of ['again', 'paid'] as const) {
    const price = { counted, length: inches(36), atMost: 1_000 };
    ask('fabric:list', { search: '', filter: { ...dated, price, freeInAll: inches(9) }, limit: 100 });
  }
  ask('workshop:opening', {});
  ask('workshop:seam-checks', {});
  ask('search:list', {});
  ask('place:list', {});
  ask('kind:list', {});
  ask('shopping:list', {});
  ask('dates:plan', { on: TODAY, moves: { dues: [], promises: [] } });
  ask('dates:days-to-remember', { on: TODAY });
  const plans = [...context.store.statements.keys()].flatMap((sql) => {
    const parameters = [...sql.matchAll(/\?/g)].map(() => null);
    const rows = context.store.database.prepare(`EXPLAIN QUERY PLAN ${sql}`).all(...parameters);
    return rows.map((row) => ({ sql, detail: String((row as { detail: unknown }).detail) }));
  });
  expect(plans.length).toBeGreaterThan(30);
  const wholeTable = new RegExp(`^SCAN (${GROWING.join('|')})(?! USING)(?= |$)`);
  // Almost no booking undoes another, so this index would scan the whole ledger.
  const allBookings = 'SEARCH booking USING INDEX sqlite_autoindex_booking_2';
  const slow = plans.filter(({ detail }) => wholeTable.test(detail) || detail.startsWith(allBookings));
  expect(slow).toEqual([]);
});
