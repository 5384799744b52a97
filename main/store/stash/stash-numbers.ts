import type { UnmovedFabric, UsedFabric, StashNumbers } from '#core/contract/stash-numbers';
import type { LeftoversOfSide } from '#core/domain/stash-numbers';
import type { FabricId, ProjectId } from '#core/domain/ids';
import { type MonthSums, stashMonths } from '#core/stash/stash-months';
import { allRows, oneNumber, oneRow, type ReadableStore } from '../base/handles';
import { dateOf, idOf, numberOf, textOf } from '../base/rows';
import { updateDigest } from './stash-digest';

const MONTHS = 12;
const SHOWN_AT_MOST = 15;

/** Sums over the whole stash, from the digest of the ledger. */
export function stashNumbers(store: ReadableStore): StashNumbers {
  updateDigest(store);
  const there =
    oneRow(
      store,
      `SELECT coalesce(sum(value_minor), 0) AS value, coalesce(sum(area_there), 0) AS area FROM fabric_digest`,
    ) ?? {};
  return {
    valueMinor: numberOf(there, 'value'),
    areaThere: numberOf(there, 'area'),
    months: stashMonths(monthSums(store), store.clockAndIds.today(), MONTHS),
    longest: longestUnmoved(store),
    projects: costliestProjects(store),
    projectCount: oneNumber(store, `SELECT count(*) FROM ${USED_ANY}`),
    leftovers: leftoversBySide(store),
  };
}

function monthSums(store: ReadableStore): readonly MonthSums[] {
  return allRows(store, 'SELECT * FROM month_digest').map((row) => ({
    month: textOf(row, 'month'),
    boughtMinor: numberOf(row, 'bought_minor'),
    boughtArea: numberOf(row, 'bought_area'),
    usedMinor: numberOf(row, 'used_minor'),
    usedArea: numberOf(row, 'used_area'),
    valueChange: numberOf(row, 'value_change'),
  }));
}

function longestUnmoved(store: ReadableStore): readonly UnmovedFabric[] {
  const sql = `SELECT id, name, last_moved, area_there, value_minor
    FROM fabric_digest JOIN fabric ON fabric.seq = fabric_seq
    WHERE area_there > 0 AND last_moved IS NOT NULL ORDER BY last_moved, fabric_seq LIMIT ?`;
  return allRows(store, sql, SHOWN_AT_MOST).map((row) => ({
    fabricId: idOf<FabricId>(row, 'id'),
    name: textOf(row, 'name'),
    since: dateOf(row, 'last_moved'),
    areaThere: numberOf(row, 'area_there'),
    valueMinor: numberOf(row, 'value_minor'),
  }));
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
    costMinor: numberOf(row, 'cost_minor'),
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
