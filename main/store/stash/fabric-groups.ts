import type { ChannelInput } from '#core/contract/channels';
import type { FabricGroup } from '#core/contract/stash';
import { pieceKindSchema } from '#core/domain/stash';
import type { StashGroup } from '#core/domain/stash-filter';
import { colorGroups } from '#core/stash/color-groups';
import type { Condition } from './fabric-filter';
import { fabricHits } from './fabric-search';
import { allRows, oneNumber, type ReadableStore, type Value } from '../base/handles';
import { hasKind } from './piece-kind-bits';
import { comparePaths } from './places';
import { numberOf, textOf } from '../base/rows';

/** How many of the fabrics found are in each group; those in no group come last. */
export function fabricGroups(
  store: ReadableStore,
  { by, ...asked }: ChannelInput<'fabric:groups'>,
): readonly FabricGroup[] {
  const hits = fabricHits(store, asked);
  const groups = GROUPS[by](store, hits);
  return [...groups.filter(({ key }) => key !== ''), ...groups.filter(({ key }) => key === '')].filter(
    ({ fabrics }) => fabrics > 0,
  );
}

type GroupsOf = (store: ReadableStore, hits: Condition) => readonly FabricGroup[];

/** Pieces that are not used up and are stored apart from their fabric. */
const ELSEWHERE = `FROM piece_place CROSS JOIN fabric_piece ON fabric_piece.id = piece_place.id
  JOIN piece_sum ON piece_seq = fabric_piece.seq JOIN fabric ON fabric.seq = fabric_piece.fabric_seq
  WHERE there > 0 AND fabric.place_id IS NOT piece_place.place_id`;

/** Fabrics stored in a place itself, whole or with one of their pieces; not those in the places inside it. */
const fabricsByPlace = (hits: Condition): string => `
  SELECT place_id, count(*) AS fabrics FROM fabric INDEXED BY fabric_in_place
    WHERE place_id IS NOT NULL AND +seq IN (${hits.sql}) GROUP BY place_id
  UNION ALL
  SELECT piece_place.place_id, count(DISTINCT fabric_seq) ${ELSEWHERE} AND fabric_seq IN (${hits.sql}) GROUP BY piece_place.place_id`;

/** Fabrics without a place, and without a piece that has one. */
const withoutPlace = (hits: Condition): string => `
  SELECT (SELECT count(*) FROM (${hits.sql}))
    - (SELECT count(*) FROM fabric INDEXED BY fabric_in_place WHERE place_id IS NOT NULL AND +seq IN (${hits.sql}))
    - (SELECT count(DISTINCT fabric_seq) ${ELSEWHERE} AND fabric.place_id IS NULL AND fabric_seq IN (${hits.sql}))`;

const GROUPS: Readonly<Record<StashGroup['by'], GroupsOf>> = {
  place: (store, hits) => {
    const sql = `SELECT place.id AS key, path AS name, sum(fabrics) AS fabrics FROM (${fabricsByPlace(hits)})
      JOIN place ON place.id = place_id GROUP BY place.id`;
    const twice = [...hits.values, ...hits.values];
    const groups = groupsOf(store, sql, twice).toSorted((one, other) => comparePaths(one.name, other.name));
    const nowhere = oneNumber(store, withoutPlace(hits), ...twice, ...hits.values);
    return [...groups, { ...NO_GROUP, fabrics: nowhere }];
  },
  kind: (store, hits) => {
    const sql = `SELECT kinds, count(*) AS fabrics FROM shelf WHERE +fabric_seq IN (${hits.sql}) GROUP BY kinds`;
    const rows = allRows(store, sql, ...hits.values);
    const count = (isIn: (bits: number) => boolean): number =>
      rows.reduce((sum, row) => sum + (isIn(numberOf(row, 'kinds')) ? numberOf(row, 'fabrics') : 0), 0);
    const groups = pieceKindSchema.options.map((kind) => ({
      key: kind,
      name: kind,
      fabrics: count((bits) => hasKind(bits, kind)),
    }));
    return [...groups, { ...NO_GROUP, fabrics: count((bits) => bits === 0) }];
  },
  supplier: (store, hits) => {
    const sql = `SELECT supplier AS key, supplier AS name, count(*) AS fabrics FROM fabric INDEXED BY fabric_by_supplier
      WHERE deleted_at IS NULL AND +seq IN (${hits.sql}) GROUP BY supplier COLLATE NOCASE ORDER BY supplier COLLATE NOCASE`;
    return groupsOf(store, sql, hits.values);
  },
  color: (store, hits) => {
    const sql = `SELECT color_words AS key, '' AS name, count(*) AS fabrics FROM fabric INDEXED BY fabric_by_color
      WHERE deleted_at IS NULL AND +seq IN (${hits.sql}) GROUP BY color_words`;
    const counts = new Map<string, number>();
    for (const { key, fabrics } of groupsOf(store, sql, hits.values)) {
      const words = colorGroups(key);
      for (const word of words.length === 0 ? [''] : words) {
        counts.set(word, (counts.get(word) ?? 0) + fabrics);
      }
    }
    return [...counts]
      .map(([word, fabrics]) => ({ key: word, name: word, fabrics }))
      .toSorted((one, other) => other.fabrics - one.fabrics || (one.name < other.name ? -1 : 1));
  },
};

const NO_GROUP = { key: '', name: '' };

function groupsOf(store: ReadableStore, sql: string, values: readonly Value[]): readonly FabricGroup[] {
  return allRows(store, sql, ...values).map((row) => ({
    key: textOf(row, 'key'),
    name: textOf(row, 'name'),
    fabrics: numberOf(row, 'fabrics'),
  }));
}
