import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addCosts } from '#core/units/known-cost';
import { deedsOf, doDeed } from '#test/helpers/random-work';
import { openWorkshop, type TestWorkshop } from '#test/helpers/workshop';

interface Totals {
  readonly areaBought: number;
  readonly areaThere: number;
  readonly areaUsed: number;
  readonly areaLost: number;
  readonly paid: number;
  readonly valueThere: number;
  readonly costOfProjects: number;
  readonly writtenOff: number;
  /** Of each kind of entry the area whose cost is not known. */
  readonly unpricedBought: number;
  readonly unpricedThere: number;
  readonly unpricedUsed: number;
  readonly unpricedLost: number;
}

/** From the entries alone; an undone entry counts as the kind that it undoes. */
function totals({ context }: TestWorkshop): Totals {
  const sums = context.store.database
    .prepare<[], { kind: string; area: number; value: number; unpriced: number }>(
      `SELECT coalesce(was.kind, entry.kind) AS kind,
        sum(entry.length_change * width) AS area, total(entry.value_change) AS value,
        coalesce(sum(entry.length_change * width) FILTER (WHERE entry.value_change IS NULL), 0) AS unpriced
      FROM ledger_entry AS entry LEFT JOIN ledger_entry AS was ON was.seq = entry.reverses
      JOIN fabric_piece ON fabric_piece.seq = entry.piece_seq GROUP BY 1`,
    )
    .all();
  const of = (kinds: readonly string[], what: 'area' | 'value' | 'unpriced'): number =>
    sums.filter(({ kind }) => kinds.includes(kind)).reduce((sum, row) => sum + row[what], 0);
  const glance = context.store.database
    .prepare<[], { area: number | null; value: number | null; unpriced: number | null }>(
      `SELECT sum(there * width) AS area, sum(value_minor) AS value,
        sum(there * width) FILTER (WHERE value_minor IS NULL) AS unpriced
      FROM piece_sum JOIN fabric_piece ON fabric_piece.seq = piece_seq`,
    )
    .get();
  return {
    areaBought: of(['bought'], 'area'),
    areaThere: glance?.area ?? 0,
    areaUsed: 0 - of(['cut', 'leftover'], 'area'),
    areaLost: 0 - of(['discarded', 'counted'], 'area'),
    paid: of(['bought'], 'value'),
    valueThere: glance?.value ?? 0,
    costOfProjects: 0 - of(['cut', 'leftover'], 'value'),
    writtenOff: 0 - of(['discarded', 'counted'], 'value'),
    unpricedBought: of(['bought'], 'unpriced'),
    unpricedThere: glance?.unpriced ?? 0,
    unpricedUsed: 0 - of(['cut', 'leftover'], 'unpriced'),
    unpricedLost: 0 - of(['discarded', 'counted'], 'unpriced'),
  };
}

const isFabricWork = (name: string): boolean =>
  name.startsWith('ledger:') ||
  name === 'project:delete' ||
  name === 'fabric:create' ||
  name === 'project:create';

test('fabric and money add up to the last unit, whatever is bought, cut, kept, thrown out and undone', () => {
  let [done, unpriced] = [0, 0];
  fc.assert(
    fc.property(deedsOf(isFabricWork, 80), fc.array(fc.boolean(), { maxLength: 20 }), (deeds, turns) => {
      const workshop = openWorkshop();
      workshop.context.store.database.pragma('synchronous = OFF');
      for (const deed of deeds) if (doDeed(workshop, deed)) done += 1;
      for (const isUndo of turns) workshop.ask(isUndo ? 'change:undo' : 'change:redo', {});
      const now = totals(workshop);
      expect(now.areaBought).toBe(now.areaThere + now.areaUsed + now.areaLost);
      expect(now.paid).toBe(now.valueThere + now.costOfProjects + now.writtenOff);
      expect(now.unpricedBought).toBe(now.unpricedThere + now.unpricedUsed + now.unpricedLost);
      unpriced += now.unpricedUsed;
      expectSumsToAgree(workshop);
      expectProjectsToAddUp(workshop, now);
      workshop.context.store.database.close();
    }),
    { numRuns: 15, endOnFailure: true },
  );
  expect(done).toBeGreaterThan(15 * 20);
  expect(unpriced).toBeGreaterThan(0);
}, 120_000);

/** The stored sums equal a new sum over the whole ledger. */
function expectSumsToAgree({ context }: TestWorkshop): void {
  const all = (sql: string): unknown[] => context.store.database.prepare(sql).all();
  const entries =
    'FROM ledger_entry JOIN booking ON booking.seq = booking_seq JOIN fabric_piece ON fabric_piece.seq = piece_seq';
  expect(all('SELECT piece_seq, there, held, value_minor FROM piece_sum ORDER BY 1')).toEqual(
    all(`SELECT piece_seq, sum(length_change) AS there, sum(held_change) AS held,
      CASE WHEN max(value_change IS NULL) = 0 THEN sum(value_change) END AS value_minor
      ${entries} GROUP BY 1 ORDER BY 1`),
  );
  expect(all('SELECT project_seq, piece_seq, held FROM piece_hold WHERE held > 0 ORDER BY 1, 2')).toEqual(
    all(`SELECT project_seq, piece_seq, sum(held_change) AS held ${entries}
      WHERE project_seq IS NOT NULL GROUP BY 1, 2 HAVING sum(held_change) > 0 ORDER BY 1, 2`),
  );
  expect(
    all(
      `SELECT project_seq, fabric_seq, area, cost_minor, unpriced_area FROM project_use
      WHERE area <> 0 OR cost_minor <> 0 OR unpriced_area <> 0 ORDER BY 1, 2`,
    ),
  ).toEqual(
    all(`SELECT project_seq, booking.fabric_seq, -sum(length_change * width) AS area,
      coalesce(-sum(value_change), 0) AS cost_minor,
      coalesce(-sum(length_change * width) FILTER (WHERE value_change IS NULL), 0) AS unpriced_area
      ${entries} WHERE project_seq IS NOT NULL GROUP BY 1, 2
      HAVING area <> 0 OR cost_minor <> 0 OR unpriced_area <> 0 ORDER BY 1, 2`),
  );
}

/** The pages of the projects add up to what was used and its cost. */
function expectProjectsToAddUp(workshop: TestWorkshop, now: Totals): void {
  const projects = workshop.context.store.database
    .prepare<[], { id: string; isDeleted: number }>(
      'SELECT id, deleted_at IS NOT NULL AS isDeleted FROM project',
    )
    .all();
  if (projects.some(({ isDeleted }) => isDeleted === 1)) return;
  const pages = projects.map(({ id }) => workshop.get('ledger:of-project', { projectId: id as never }));
  const sum = (of: (page: (typeof pages)[number]) => number): number =>
    pages.reduce((total, page) => total + of(page), 0);
  expect(sum(({ usedArea }) => usedArea)).toBe(now.areaUsed);
  expect(sum(({ paid }) => paid.minor)).toBe(now.costOfProjects);
  expect(sum(({ paid }) => paid.unpricedArea)).toBe(now.unpricedUsed);
  for (const page of pages) {
    expect(page.bookings.reduce((total, { usedArea }) => total + usedArea, 0)).toBe(page.usedArea);
    expect(addCosts(page.bookings.map(({ cost }) => cost))).toEqual(page.paid);
  }
}
