import { pieceKindSchema } from '#core/domain/stash';
import type { StashGroup } from '#core/domain/stash-filter';
import { colorGroups } from '#core/stash/color-groups';
import type { Condition } from './fabric-filter';
import { HAS_KIND, kindBits } from './piece-kind-bits';
import { allRows, type ReadableStore } from '../base/handles';
import { textOf } from '../base/rows';

/** The condition for a row of `shelf` to be in a group. */
export function groupCondition(store: ReadableStore, { by, key }: StashGroup): Condition {
  switch (by) {
    case 'place':
      return key === '' ? HAS_NO_PLACE : { sql: STORED_HERE, values: [key, key] };
    case 'kind': {
      const kind = pieceKindSchema.options.find((one) => one === key);
      return kind === undefined
        ? { sql: 'kinds = 0', values: [] }
        : { sql: HAS_KIND, values: [kindBits([kind])] };
    }
    case 'supplier': {
      const sql =
        'fabric_seq IN (SELECT seq FROM fabric WHERE deleted_at IS NULL AND supplier = ? COLLATE NOCASE)';
      return { sql, values: [key] };
    }
    case 'color': {
      const sql = `fabric_seq IN (SELECT seq FROM fabric WHERE deleted_at IS NULL
        AND color_words IN (SELECT value FROM json_each(?)))`;
      return { sql, values: [JSON.stringify(colorsOfGroup(store, key))] };
    }
  }
}

const STORED_HERE = `fabric_seq IN (SELECT seq FROM fabric WHERE place_id = ?
  UNION SELECT fabric_seq FROM piece_place JOIN fabric_piece ON fabric_piece.id = piece_place.id
    JOIN piece_sum ON piece_seq = fabric_piece.seq WHERE place_id = ? AND there > 0)`;

const HAS_NO_PLACE: Condition = {
  sql: `fabric_seq NOT IN (SELECT seq FROM fabric INDEXED BY fabric_in_place WHERE place_id IS NOT NULL
    UNION SELECT fabric_seq FROM piece_place CROSS JOIN fabric_piece ON fabric_piece.id = piece_place.id
      JOIN piece_sum ON piece_seq = fabric_piece.seq WHERE there > 0)`,
  values: [],
};

/** The color words of fabrics, as the maker wrote them, that belong to the group of a word. */
function colorsOfGroup(store: ReadableStore, word: string): readonly string[] {
  const sql = 'SELECT DISTINCT color_words FROM fabric INDEXED BY fabric_by_color WHERE deleted_at IS NULL';
  return allRows(store, sql)
    .map((row) => textOf(row, 'color_words'))
    .filter((colors) => {
      const words = colorGroups(colors);
      return word === '' ? words.length === 0 : words.includes(word);
    });
}
