import type { UnmovedFabric, UsedFabric, StashNumbers } from '#core/contract/stash-numbers';
import type { LeftoversOfSide } from '#core/domain/stash-numbers';
import type { FabricId, ProjectId } from '#core/domain/ids';
import { type MonthSums, stashMonths } from '#core/stash/stash-months';
import type { PartialDate } from '#core/units/partial-date';
import { allRows, oneNumber, oneRow, type ReadableStore, type Row } from '../base/handles';
import { idOf, numberOf, partialDateOrNullOf, textOf, UnreadableRow } from '../base/rows';
import { updateDigest } from './stash-digest';

const MONTHS = 12;
const SHOWN_AT_MOST = 15;

/** Sums over the whole stash, from the digest of the ledger. */
export function stashNumbers(store: ReadableStore): StashNumbers {
  updateDigest(store);
  const there =
    oneRow(
      store,
      `SELECT coalesce(sum(value_minor), 0) AS value, coalesce(sum(area_there), 0) AS area,
        coalesce(sum(unpriced_area), 0) AS unpriced FROM fabric_digest`,
    ) ?? {};
  return {
    value: { minor: numberOf(there, 'value'), unpricedArea: numberOf(there, 'unpriced') },
    areaThere: numberOf(there, 'area'),
    months: stashMonths(monthSums(store), store.clockAndIds.today(), MONTHS),
    longest: longestUnmoved(store),
    unmovedForUnknown: oneNumber(
      store,
      'SELECT count(*) FROM fabric_digest WHERE area_there > 0 AND last_moved IS NULL',
    ),
    projects: costliestProjects(store),
    projectCount: oneNumber(store, `SELECT count(*) FROM ${USED_ANY}`),
    leftovers: leftoversBySide(store),
  };
}

function monthSums(store: ReadableStore): readonly MonthSums[] {
  return allRows(store, 'SELECT * FROM month_digest').map((row) => ({
    month: textOf(row, 'month'),
    bought: { minor: numberOf(row, 'bought_minor'), unpricedArea: numberOf(row, 'bought_unpriced') },
    boughtArea: numberOf(row, 'bought_area'),
    used: { minor: numberOf(row, 'used_minor'), unpricedArea: numberOf(row, 'used_unpriced') },
    usedArea: numberOf(row, 'used_area'),
    change: { minor: numberOf(row, 'value_change'), unpricedArea: numberOf(row, 'unpriced_change') },
  }));
}

function longestUnmoved(store: ReadableStore): readonly UnmovedFabric[] {
  const sql = `SELECT id, name, last_moved, area_there, value_minor, unpriced_area
    FROM fabric_digest JOIN fabric ON fabric.seq = fabric_seq
    WHERE area_there > 0 AND last_moved IS NOT NULL ORDER BY last_moved, fabric_seq LIMIT ?`;
  return allRows(store, sql, SHOWN_AT_MOST).map((row) => ({
    fabricId: idOf<FabricId>(row, 'id'),
    name: textOf(row, 'name'),
    since: sinceOf(row),
    areaThere: numberOf(row, 'area_there'),
    value: { minor: numberOf(row, 'value_minor'), unpricedArea: numberOf(row, 'unpriced_area') },
  }));
}

/** The query leaves out fabrics without a day. */
function sinceOf(row: Row): PartialDate {
  const since = partialDateOrNullOf(row, 'last_moved');
  if (since === null) throw new UnreadableRow('last_moved', 'no day');
  return since;
}

const USED_ANY = 'project_digest WHERE area > 0 OR cost_minor > 0';

function costliestProjects(store: ReadableStore): readonly UsedFabric[] {
  const sql = `SELECT id, name, used.* FROM (SELECT * FROM ${USED_ANY}
      ORDER BY cost_minor DESC, area DESC, project_seq LIMIT ?) AS used
    JOIN project ON project.seq = used.project_seq ORDER BY cost_minor DESC, area DESC, project_seq`;
  return allRows(store, sql, SHOWN_AT_MOST).map((row) => ({
    projectId: idOf<ProjectId>(row, 'id'),
    name: textOf(row, 'name'),
    area: numberOf(row, 'area'),
    cost: { minor: numberOf(row, 'cost_minor'), unpricedArea: numberOf(row, 'unpriced_area') },
  }));
}

function leftoversBySide(store: ReadableStore): readonly LeftoversOfSide[] {
  const sql = `SELECT side, count(*) AS pieces, sum(area) AS area FROM leftover_digest GROUP BY side ORDER BY side`;
  return allRows(store, sql).map((row) => ({
    side: numberOf(row, 'side'),
    pieces: numberOf(row, 'pieces'),
    area: numberOf(row, 'area'),
  }));
}
