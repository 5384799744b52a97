import type { ChannelInput } from '#core/contract/channels';
import type { StashOrder } from '#core/domain/stash-filter';
import { type Condition, filterConditions } from './fabric-filter';
import { groupCondition } from './fabric-group-condition';
import { FABRICS } from './fabric-rows';
import { allRows, oneNumber, type ReadableStore, type Row } from '../base/handles';
import { wordsMeant } from './spelling';

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

/** What finds the numbers of the fabrics that are asked for, and asks a single one of them, as the row `fabric`, whether it is one. */
export interface Hits extends Condition {
  readonly isHit: string;
}

export function fabricHits(
  store: ReadableStore,
  { search, filter = {}, inGroup }: Pick<ChannelInput<'fabric:list'>, 'search' | 'filter' | 'inGroup'>,
): Hits {
  const words = searchQuery(search, filter.color ?? '', (word) => wordsMeant(store, word));
  const group = inGroup === undefined ? [] : [groupCondition(store, inGroup)];
  return hitsOf([...filterConditions(filter), ...group], words);
}

/** The numbers of the fabrics that have the words of a `searchQuery`. */
export const WITH_WORDS = 'SELECT rowid FROM fabric_words WHERE fabric_words MATCH ?';

const EVERY: Hits = { sql: 'SELECT fabric_seq FROM shelf', isHit: 'TRUE', values: [] };

/** What finds the numbers of the fabrics; words alone are asked of the search alone, which counts without looking at a line. */
function hitsOf(conditions: readonly Condition[], words: string | null): Hits {
  if (words !== null && conditions.length === 0) {
    return { sql: WITH_WORDS, isHit: `+fabric.seq IN (${WITH_WORDS})`, values: [words] };
  }
  // A plus sign keeps SQLite from looking the hits up one by one: they are few lines of memory by then.
  const all =
    words === null ? conditions : [...conditions, { sql: `+fabric_seq IN (${WITH_WORDS})`, values: [words] }];
  if (all.length === 0) return EVERY;
  const line = all.map(({ sql }) => sql).join(' AND ');
  return {
    sql: `${EVERY.sql} WHERE ${line}`,
    isHit: `EXISTS (SELECT 1 FROM shelf WHERE fabric_seq = fabric.seq AND ${line})`,
    values: all.flatMap(({ values }) => values),
  };
}

const BY_SHELF: Readonly<Record<Exclude<StashOrder, 'name'>, string>> = {
  newest: 'since DESC, fabric_seq DESC',
  oldest: 'since, fabric_seq',
  'most-free': 'area_free DESC, fabric_seq',
};

/** The numbers of the page come first, in order, and only these rows are read whole. */
function pageSql(hits: Hits, order: StashOrder, total: number): string {
  const seqs = order === 'name' ? byName(hits, total) : byShelf(hits, BY_SHELF[order]);
  return `WITH page AS (SELECT seq, row_number() OVER () AS rank FROM (${seqs} LIMIT ? OFFSET ?))
    ${FABRICS} JOIN page ON page.seq = fabric.seq ORDER BY rank`;
}

function byShelf(hits: Hits, order: string): string {
  const those = hits === EVERY ? '' : `WHERE +fabric_seq IN (${hits.sql})`;
  return `SELECT fabric_seq AS seq FROM shelf ${those} ORDER BY ${order}`;
}

function byName(hits: Hits, total: number): string {
  const those =
    total > FEW_HITS
      ? `fabric INDEXED BY fabric_by_name WHERE deleted_at IS NULL AND ${hits.isHit}`
      : `fabric WHERE deleted_at IS NULL AND seq IN (${hits.sql})`;
  return `SELECT seq FROM ${those} ORDER BY name COLLATE NOCASE, seq`;
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
