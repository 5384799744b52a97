import { pieceKindSchema } from '#core/domain/stash';
import type { StashFilter, WantedPatch, WantedPrice } from '#core/domain/stash-filter';
import type { Value } from '../base/handles';

/** A condition on a line of the shelf, with what its question marks stand for. */
export interface Condition {
  readonly sql: string;
  readonly values: readonly Value[];
}

/** What a filter asks of a line of `shelf`; the cheap questions first. Color is asked of the search. */
export function filterConditions(filter: StashFilter): readonly Condition[] {
  const { kind, direction, placeId, freeAtLeast, freeInAll, boughtFrom, boughtUntil, price, fits } = filter;
  const conditions: Condition[] = [];
  if (kind !== undefined) {
    conditions.push({ sql: 'kinds & ? > 0', values: [2 ** pieceKindSchema.options.indexOf(kind)] });
  }
  if (direction !== undefined) conditions.push({ sql: 'direction = ?', values: [direction] });
  if (freeAtLeast !== undefined) conditions.push({ sql: 'longest_free >= ?', values: [freeAtLeast] });
  if (freeInAll !== undefined) {
    conditions.push({ sql: 'area_free > 0 AND area_free >= widest * ?', values: [freeInAll] });
  }
  if (boughtFrom !== undefined) conditions.push({ sql: 'came_last >= ?', values: [boughtFrom] });
  if (boughtUntil !== undefined) conditions.push({ sql: 'came_first <= ?', values: [boughtUntil] });
  if (price !== undefined) conditions.push(priceCondition(price));
  if (placeId !== undefined) conditions.push({ sql: `fabric_seq IN (${IN_PLACE})`, values: [placeId] });
  if (fits !== undefined) conditions.push(...fitConditions(fits));
  return conditions;
}

/** Of a length across the whole width, to the nearest cent as it is shown; a price the maker wrote down counts before what was paid last. */
function priceCondition({ counted, length, atLeast = 0, atMost }: WantedPrice): Condition {
  const rate = counted === 'paid' ? 'rate_of_value * width' : 'coalesce(own_rate, rate_paid_last * width)';
  return {
    sql: `round(${rate} * ?) BETWEEN ? AND ?`,
    values: [length, atLeast, atMost ?? Number.MAX_SAFE_INTEGER],
  };
}

const IN_PLACE = `WITH RECURSIVE inside (id) AS (
    VALUES (?) UNION SELECT place.id FROM place JOIN inside ON place.parent_id = inside.id)
  SELECT seq FROM fabric WHERE place_id IN inside
  UNION SELECT fabric_seq FROM piece_place JOIN fabric_piece ON fabric_piece.id = piece_place.id
    WHERE place_id IN inside`;

/**
 * A piece from which every patch can be cut in strips across it, as many in a strip as go side by side. That is how they are
 * cut with a ruler, so what passes is surely enough, though a planner may manage with less. The line itself is asked first.
 */
function fitConditions(patches: readonly WantedPatch[]): readonly Condition[] {
  const widest = Math.max(...patches.map(({ width }) => width));
  const longest = Math.max(...patches.map(({ length }) => length));
  const area = patches.reduce((sum, { width, length, count }) => sum + width * length * count, 0);
  // A number from here counts as real there, and strips are whole.
  const whole = 'CAST(? AS INTEGER)';
  const strips = patches
    .map(() => `((${whole} + width / ${whole} - 1) / (width / ${whole})) * ${whole}`)
    .join(' + ');
  const values = patches.flatMap(({ width, length, count }) => [count, width, width, length]);
  return [
    { sql: 'widest >= ? AND longest_free >= ? AND area_free >= ?', values: [widest, longest, area] },
    {
      sql: `EXISTS (SELECT 1 FROM fabric_piece JOIN piece_sum ON piece_seq = fabric_piece.seq
        WHERE fabric_piece.fabric_seq = shelf.fabric_seq AND unit_length IS NULL AND width >= ?
          AND there - held >= ${strips})`,
      values: [widest, ...values],
    },
  ];
}
