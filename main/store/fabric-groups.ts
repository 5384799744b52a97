import type { ChannelInput } from '#core/contract/channels';
import type { FabricGroup } from '#core/contract/stash';
import { clothKind } from '#core/domain/stash';
import type { StashGroup } from '#core/domain/stash-filter';
import { colorGroups } from '#core/stash/color-groups';
import type { Condition } from './fabric-filter';
import { fabricHits } from './fabric-search';
import { allRows, oneNumber, type ReadableStore } from './handles';
import { comparePaths } from './places';
import { numberOf, textOf } from './rows';

/** How many of what was found stand in each group; those of none in the last one. */
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

/** Of a place only what lies there itself, whole or with a piece of its own; not what lies in the places inside it. */
const LIES_IN = `SELECT place_id, seq FROM fabric INDEXED BY fabric_in_place WHERE place_id IS NOT NULL
  UNION SELECT place_id, fabric_seq FROM piece_place CROSS JOIN cloth_piece ON cloth_piece.id = piece_place.id
    JOIN piece_sum ON piece_seq = cloth_piece.seq WHERE there > 0`;

const GROUPS: Readonly<Record<StashGroup['by'], GroupsOf>> = {
  place: (store, hits) => {
    const lies = `SELECT place_id, seq FROM (${LIES_IN}) WHERE seq IN (${hits.sql})`;
    const sql = `SELECT place.id AS key, path AS name, fabrics
      FROM (SELECT place_id, count(*) AS fabrics FROM (${lies}) GROUP BY place_id) JOIN place ON place.id = place_id`;
    const nowhere = `SELECT (SELECT count(*) FROM (${hits.sql})) - (SELECT count(DISTINCT seq) FROM (${lies}))`;
    const groups = groupsOf(store, sql, hits).toSorted((one, other) => comparePaths(one.name, other.name));
    return [...groups, { ...NONE, fabrics: oneNumber(store, nowhere, ...hits.values, ...hits.values) }];
  },
  kind: (store, hits) => {
    const sql = `SELECT kinds, count(*) AS fabrics FROM shelf WHERE +fabric_seq IN (${hits.sql}) GROUP BY kinds`;
    const rows = allRows(store, sql, ...hits.values);
    const count = (has: (kinds: number) => boolean): number =>
      rows.reduce((sum, row) => sum + (has(numberOf(row, 'kinds')) ? numberOf(row, 'fabrics') : 0), 0);
    const groups = clothKind.options.map((kind, bit) => ({
      ...{ key: kind, name: kind },
      fabrics: count((kinds) => (kinds & (2 ** bit)) > 0),
    }));
    return [...groups, { ...NONE, fabrics: count((kinds) => kinds === 0) }];
  },
  supplier: (store, hits) => {
    const sql = `SELECT supplier AS key, supplier AS name, count(*) AS fabrics FROM fabric INDEXED BY fabric_by_supplier
      WHERE deleted_at IS NULL AND +seq IN (${hits.sql}) GROUP BY supplier COLLATE NOCASE ORDER BY supplier COLLATE NOCASE`;
    return groupsOf(store, sql, hits);
  },
  color: (store, hits) => {
    const sql = `SELECT color_words AS key, '' AS name, count(*) AS fabrics FROM fabric INDEXED BY fabric_by_color
      WHERE deleted_at IS NULL AND +seq IN (${hits.sql}) GROUP BY color_words`;
    const counts = new Map<string, number>();
    for (const { key, fabrics } of groupsOf(store, sql, hits)) {
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

const NONE = { key: '', name: '' };

function groupsOf(store: ReadableStore, sql: string, hits: Condition): readonly FabricGroup[] {
  return allRows(store, sql, ...hits.values).map((row) => ({
    key: textOf(row, 'key'),
    name: textOf(row, 'name'),
    fabrics: numberOf(row, 'fabrics'),
  }));
}
