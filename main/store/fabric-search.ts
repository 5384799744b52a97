import type { ChannelInput } from '#core/contract/channels';
import type { StashOrder } from '#core/domain/stash-filter';
import { type Condition, filterConditions } from './fabric-filter';
import { FABRICS } from './fabric-rows';
import { allRows, oneNumber, type ReadableStore, type Row } from './handles';
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
  { search, filter = {}, order = 'name', offset = 0, limit = ALL }: ChannelInput<'fabric:list'>,
): FabricRows {
  const words = searchQuery(search, filter.color ?? '', (word) => wordsMeant(store, word));
  const conditions = [...filterConditions(filter), ...(words === null ? [] : [wordsCondition(words)])];
  const values = conditions.flatMap((condition) => condition.values);
  const where = conditions.length === 0 ? '' : `WHERE ${conditions.map(({ sql }) => sql).join(' AND ')}`;
  const total = oneNumber(store, `SELECT count(*) FROM shelf ${where}`, ...values);
  const sql = pageSql(where, order, total);
  return { rows: total === 0 ? [] : allRows(store, sql, ...values, limit, offset), total };
}

/** A plus sign keeps SQLite from looking the hits up one by one: they are few lines of memory by then. */
function wordsCondition(words: string): Condition {
  const sql = '+fabric_seq IN (SELECT rowid FROM fabric_words WHERE fabric_words MATCH ?)';
  return { sql, values: [words] };
}

const BY_SHELF: Readonly<Record<Exclude<StashOrder, 'name'>, string>> = {
  newest: 'since DESC, fabric_seq DESC',
  oldest: 'since, fabric_seq',
  'most-free': 'area_free DESC, fabric_seq',
};
const BY_NAME = 'fabric.name COLLATE NOCASE, fabric.seq';

function pageSql(where: string, order: StashOrder, total: number): string {
  if (order !== 'name') {
    const page = `SELECT fabric_seq, row_number() OVER () AS rank
      FROM (SELECT fabric_seq FROM shelf ${where} ORDER BY ${BY_SHELF[order]} LIMIT ? OFFSET ?)`;
    return `WITH page AS (${page}) ${FABRICS} JOIN page ON page.fabric_seq = fabric.seq ORDER BY rank`;
  }
  const isWalked = total > FEW_HITS || where === '';
  const hits =
    where === '' ? '' : `AND ${isWalked ? '+' : ''}fabric.seq IN (SELECT fabric_seq FROM shelf ${where})`;
  const from = isWalked ? FABRICS.replace('FROM fabric', 'FROM fabric INDEXED BY fabric_by_name') : FABRICS;
  return `${from} WHERE deleted_at IS NULL ${hits} ORDER BY ${BY_NAME} LIMIT ? OFFSET ?`;
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
