import type { ChannelInput } from '#core/contract/channels';
import type { StashOrder } from '#core/domain/stash-filter';
import { type Condition, filterConditions } from './fabric-filter';
import { groupCondition } from './fabric-group-condition';
import { FABRICS } from './fabric-rows';
import { allRows, oneNumber, type ReadableStore, type Row } from '../base/handles';
import { likelyWords } from './spelling';

interface FabricRows {
  readonly rows: readonly Row[];
  readonly total: number;
}

/** With more hits than this, reading names in order until the page is full is faster than sorting the hits. */
const FEW_HITS = 400;
/** SQLite's LIMIT for all rows. */
const NO_LIMIT = -1;

/**
 * The fabrics that pass the filter and have, for every word of the search, a word that begins with it; if no word does, one that begins
 * with it but for one letter. By name unless another order is asked for.
 */
export function fabricPage(
  store: ReadableStore,
  { order = 'name', offset = 0, limit = NO_LIMIT, ...asked }: ChannelInput<'fabric:list'>,
): FabricRows {
  const hits = fabricHits(store, asked);
  const total = oneNumber(store, `SELECT count(*) FROM (${hits.sql})`, ...hits.values);
  const sql = pageSql(hits, order, total);
  return { rows: total === 0 ? [] : allRows(store, sql, ...hits.values, limit, offset), total };
}

/** SQL for the `seq` of every fabric found, and a condition that tells whether the row `fabric` is one of them. */
interface Hits extends Condition {
  readonly isHit: string;
}

export function fabricHits(
  store: ReadableStore,
  { search, filter = {}, inGroup }: Pick<ChannelInput<'fabric:list'>, 'search' | 'filter' | 'inGroup'>,
): Hits {
  const words = searchQuery(search, filter.color ?? '', (word) => likelyWords(store, word));
  const group = inGroup === undefined ? [] : [groupCondition(store, inGroup)];
  return hitsOf([...filterConditions(filter), ...group], words);
}

/** The `seq` of every fabric that matches a `searchQuery`. */
export const WITH_WORDS = 'SELECT rowid FROM fabric_words WHERE fabric_words MATCH ?';

const EVERY: Hits = { sql: 'SELECT fabric_seq FROM shelf', isHit: 'TRUE', values: [] };

/** If there are only words, the search alone is asked: it counts without reading a row of `shelf`. */
function hitsOf(conditions: readonly Condition[], words: string | null): Hits {
  if (words !== null && conditions.length === 0) {
    return { sql: WITH_WORDS, isHit: `+fabric.seq IN (${WITH_WORDS})`, values: [words] };
  }
  // The plus sign keeps SQLite from looking the hits up one by one; they are in memory by then.
  const all =
    words === null ? conditions : [...conditions, { sql: `+fabric_seq IN (${WITH_WORDS})`, values: [words] }];
  if (all.length === 0) return EVERY;
  const conditionSql = all.map(({ sql }) => sql).join(' AND ');
  return {
    sql: `${EVERY.sql} WHERE ${conditionSql}`,
    isHit: `EXISTS (SELECT 1 FROM shelf WHERE fabric_seq = fabric.seq AND ${conditionSql})`,
    values: all.flatMap(({ values }) => values),
  };
}

const SHELF_ORDERS: Readonly<Record<Exclude<StashOrder, 'name'>, string>> = {
  newest: 'since DESC, fabric_seq DESC',
  oldest: 'since, fabric_seq',
  'most-free': 'area_free DESC, fabric_seq',
};

/** Finds the `seq` of each fabric on the page first, so that only those rows are read whole. */
function pageSql(hits: Hits, order: StashOrder, total: number): string {
  const seqs = order === 'name' ? byName(hits, total) : byShelf(hits, SHELF_ORDERS[order]);
  return `WITH page AS (SELECT seq, row_number() OVER () AS rank FROM (${seqs} LIMIT ? OFFSET ?))
    ${FABRICS} JOIN page ON page.seq = fabric.seq ORDER BY rank`;
}

function byShelf(hits: Hits, order: string): string {
  const condition = hits === EVERY ? '' : `WHERE +fabric_seq IN (${hits.sql})`;
  return `SELECT fabric_seq AS seq FROM shelf ${condition} ORDER BY ${order}`;
}

function byName(hits: Hits, total: number): string {
  const found =
    total > FEW_HITS
      ? `fabric INDEXED BY fabric_by_name WHERE deleted_at IS NULL AND ${hits.isHit}`
      : `fabric WHERE deleted_at IS NULL AND seq IN (${hits.sql})`;
  return `SELECT seq FROM ${found} ORDER BY name COLLATE NOCASE, seq`;
}

/**
 * The search in the language of FTS5. Every run of letters, digits and marks is quoted, so that nothing typed is read as an operator. A
 * word may be replaced by several likely ones, any of which will do. Null if there is nothing to search for.
 */
export function searchQuery(
  search: string,
  color: string,
  likely: (word: string) => readonly string[] = (word) => [word],
): string | null {
  const words = `${search} ${color}`.normalize('NFC').match(/[\p{L}\p{N}\p{M}\p{Co}]+/gu) ?? [];
  if (words.length === 0) return null;
  return words.map((word) => anyOf(likely(word))).join(' AND ');
}

function anyOf(words: readonly string[]): string {
  const [first = '', ...others] = words.map((word) => `"${word}"*`);
  return others.length === 0 ? first : `(${[first, ...others].join(' OR ')})`;
}
