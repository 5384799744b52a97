import type { StashFilter, WantedPatch, WantedPrice } from '#core/domain/stash-filter';
import type { Value } from '../base/handles';
import { FREE_LENGTH } from '../ledger/ledger-sql';
import { HAS_KIND, kindBits } from './piece-kind-bits';

/** A condition on a row of `shelf`, with the values of its question marks. */
export interface Condition {
  readonly sql: string;
  readonly values: readonly Value[];
}

/** The conditions of a filter on a row of `shelf`, the cheap ones first. Color is a matter of the search. */
export function filterConditions(filter: StashFilter): readonly Condition[] {
  const { kind, direction, placeId, freeAtLeast, freeInAll, boughtFrom, boughtUntil, price, fits } = filter;
  const conditions: Condition[] = [];
  if (kind !== undefined) conditions.push({ sql: HAS_KIND, values: [kindBits([kind])] });
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

/** The price of a length across the whole width, rounded to the cent as on screen. The maker's own price counts before the last price paid. */
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
 * A fabric with a piece that gives every patch, cut in strips across it with as many side by side as fit. That is how they are cut with a
 * ruler, so a piece that passes is large enough; a planner may need less. The row of `shelf` is asked first, which is cheaper.
 */
function fitConditions(patches: readonly WantedPatch[]): readonly Condition[] {
  const widest = Math.max(...patches.map(({ width }) => width));
  const longest = Math.max(...patches.map(({ length }) => length));
  const area = patches.reduce((sum, { width, length, count }) => sum + width * length * count, 0);
  // SQLite takes a number from here as a real one, and strips are counted in whole numbers.
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
          AND ${FREE_LENGTH} >= ${strips})`,
      values: [widest, ...values],
    },
  ];
}
