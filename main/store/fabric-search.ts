import type { ChannelInput } from '#core/contract/channels';
import type { StashOrder } from '#core/domain/stash-filter';
import { type Condition, filterConditions, readsDigest } from './fabric-filter';
import { groupCondition } from './fabric-group-condition';
import { FABRICS } from './fabric-rows';
import { allRows, oneNumber, type ReadableStore, type Row } from './handles';
import { wordsMeant } from './spelling';
import { bringDigestUpToDate } from './stash-digest';

interface FabricRows {
  readonly rows: readonly Row[];
  readonly total: number;
}

/** Beyond this many hits walking the names in order until the page is full is quicker than sorting the hits. */
const FEW_HITS = 400;
const ALL = -1;

/**
 * The fabrics that have, for every word searched, a word that begins with it, give or take a letter where none does, and that
 * pass the filter; in the order asked for, by name unless said.
 */
export function fabricPage(
  store: ReadableStore,
  { order = 'name', offset = 0, limit = ALL, ...asked }: ChannelInput<'fabric:list'>,
): FabricRows {
  const hits = fabricHits(store, asked);
  const total = oneNumber(store, `SELECT count(*) FROM (${hits.sql})`, ...hits.values);
  const sql = pageSql(hits, order, total);
  return { rows: total === 0 ? [] : allRows(store, sql, ...hits.values, limit, offset), total };
}

/** What finds the numbers of the fabrics that are asked for. */
export function fabricHits(
  store: ReadableStore,
  { search, filter = {}, inGroup }: Pick<ChannelInput<'fabric:list'>, 'search' | 'filter' | 'inGroup'>,
): Condition {
  if (readsDigest(filter)) bringDigestUpToDate(store);
  const words = searchQuery(search, filter.color ?? '', (word) => wordsMeant(store, word));
  const group = inGroup === undefined ? [] : [groupCondition(store, inGroup)];
  return hitsOf([...filterConditions(filter), ...group], words);
}

/** The numbers of the fabrics that have the words of a `searchQuery`. */
export const WITH_WORDS = 'SELECT rowid FROM fabric_words WHERE fabric_words MATCH ?';

const EVERY: Condition = { sql: 'SELECT fabric_seq FROM shelf', values: [] };

/** What finds the numbers of the fabrics; words alone are asked of the search alone, which counts without looking at a line. */
function hitsOf(conditions: readonly Condition[], words: string | null): Condition {
  if (words !== null && conditions.length === 0) return { sql: WITH_WORDS, values: [words] };
  // A plus sign keeps SQLite from looking the hits up one by one: they are few lines of memory by then.
  const all =
    words === null ? conditions : [...conditions, { sql: `+fabric_seq IN (${WITH_WORDS})`, values: [words] }];
  if (all.length === 0) return EVERY;
  return {
    sql: `${EVERY.sql} WHERE ${all.map(({ sql }) => sql).join(' AND ')}`,
    values: all.flatMap(({ values }) => values),
  };
}

const BY_SHELF: Readonly<Record<Exclude<StashOrder, 'name'>, string>> = {
  newest: 'since DESC, fabric_seq DESC',
  oldest: 'since, fabric_seq',
  'most-free': 'area_free DESC, fabric_seq',
};

/** The numbers of the page come first, in order, and only these rows are read whole. */
function pageSql(hits: Condition, order: StashOrder, total: number): string {
  const seqs = order === 'name' ? byName(hits, total) : byShelf(hits, BY_SHELF[order]);
  return `WITH page AS (SELECT seq, row_number() OVER () AS rank FROM (${seqs} LIMIT ? OFFSET ?))
    ${FABRICS} JOIN page ON page.seq = fabric.seq ORDER BY rank`;
}

function byShelf(hits: Condition, order: string): string {
  const those = hits === EVERY ? '' : `WHERE +fabric_seq IN (${hits.sql})`;
  return `SELECT fabric_seq AS seq FROM shelf ${those} ORDER BY ${order}`;
}

function byName(hits: Condition, total: number): string {
  const isWalked = total > FEW_HITS;
  const walk = isWalked ? 'INDEXED BY fabric_by_name' : '';
  const those = hits === EVERY ? '' : `AND ${isWalked ? '+' : ''}seq IN (${hits.sql})`;
  return `SELECT seq FROM fabric ${walk} WHERE deleted_at IS NULL ${those} ORDER BY name COLLATE NOCASE, seq`;
}

/**
 * The search as FTS5 reads it: every run of letters, digits and marks is quoted, so that nothing typed is taken for an
 * operator; a word that may have been meant for several stands for any of them. Null when there is nothing to search by.
 */
export function searchQuery(
  search: string,
  color: string,
  meant: (word: string) => readonly string[] = (word) => [word],
): string | null {
  const words = `${search} ${color}`.normalize('NFC').match(/[\p{L}\p{N}\p{M}\p{Co}]+/gu) ?? [];
  if (words.length === 0) return null;
  return words.map((word) => anyOf(meant(word))).join(' AND ');
}

function anyOf(words: readonly string[]): string {
  const [first = '', ...others] = words.map((word) => `"${word}"*`);
  return others.length === 0 ? first : `(${[first, ...others].join(' OR ')})`;
}
