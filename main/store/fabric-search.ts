import type { ChannelInput } from '#core/contract/channels';
import { FABRICS } from './fabric-rows';
import { allRows, oneNumber, type ReadableStore, type Row } from './handles';

interface FabricRows {
  readonly rows: readonly Row[];
  readonly total: number;
}

/** Beyond this many hits walking the names in order until the page is full is quicker than sorting the hits. */
const FEW_HITS = 400;
const ALL = -1;

/** The fabrics that have, for every word searched, a word that begins with it; by name. Without words, all of them. */
export function fabricPage(
  store: ReadableStore,
  { search, offset = 0, limit = ALL }: ChannelInput<'fabric:list'>,
): FabricRows {
  const query = prefixQuery(search);
  if (query === null) {
    const total = oneNumber(store, 'SELECT count(*) FROM fabric WHERE deleted_at IS NULL');
    const rows = allRows(store, `${FABRICS} WHERE deleted_at IS NULL ${BY_NAME}`, limit, offset);
    return { rows, total };
  }
  const total = oneNumber(store, 'SELECT count(*) FROM fabric_words WHERE fabric_words MATCH ?', query);
  const rows = allRows(store, total > FEW_HITS ? WALK_NAMES : SORT_HITS, query, limit, offset);
  return { rows, total };
}

const BY_NAME = 'ORDER BY fabric.name COLLATE NOCASE, seq LIMIT ? OFFSET ?';
const HITS = '(SELECT rowid FROM fabric_words WHERE fabric_words MATCH ?)';
// A plus sign keeps SQLite from looking the hits up one by one.
const WALK_NAMES = `SELECT fabric.*, place.path AS place
  FROM fabric INDEXED BY fabric_by_name LEFT JOIN place ON place.id = fabric.place_id
  WHERE deleted_at IS NULL AND +seq IN ${HITS} ${BY_NAME}`;
const SORT_HITS = `${FABRICS} WHERE deleted_at IS NULL AND seq IN ${HITS} ${BY_NAME}`;

/**
 * The search as FTS5 reads it: every run of letters, digits and marks is quoted, so that nothing typed is taken for an
 * operator. Null when there is nothing to search by.
 */
export function prefixQuery(search: string): string | null {
  const words = search.normalize('NFC').match(/[\p{L}\p{N}\p{M}\p{Co}]+/gu) ?? [];
  return words.length === 0 ? null : words.map((word) => `"${word}"*`).join(' ');
}
