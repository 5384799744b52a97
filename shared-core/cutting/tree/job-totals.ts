import type { CuttingWish } from '#core/domain/cutting-setup';
import type { PiecePlan, PlanTotals } from './cutting-job';

const DEFAULT_WISHES: readonly CuttingWish[] = [
  'buy-least',
  'least-fabric',
  'fewest-pieces',
  'fewest-cuts',
  'largest-leftover',
];

/** Adds up what a set of piece plans costs. */
export function totalsOf(pieces: readonly PiecePlan[], unplaced: number): PlanTotals {
  const sum = (of: (piece: PiecePlan) => number) => pieces.reduce((total, piece) => total + of(piece), 0);
  return {
    unplaced,
    boughtArea: sum((piece) => (piece.piece === undefined ? piece.areas.piece : 0)),
    usedArea: sum((piece) => piece.areas.piece - piece.areas.leftovers),
    pieces: pieces.length,
    cuts: sum((piece) => piece.foldedCuts),
    largestLeftover: pieces
      .flatMap((piece) => piece.leftovers)
      .reduce((most, rest) => Math.max(most, rest.width * rest.length), 0),
  };
}

/** Whether `a` is the better plan: more patches placed come first, then the wishes in their order. */
export function isBetter(a: PlanTotals, b: PlanTotals, wishes: readonly CuttingWish[]): boolean {
  if (a.unplaced !== b.unplaced) return a.unplaced < b.unplaced;
  const order = [...wishes, ...DEFAULT_WISHES.filter((wish) => !wishes.includes(wish))];
  for (const wish of order) {
    const difference = costOf(a, wish) - costOf(b, wish);
    if (difference !== 0) return difference < 0;
  }
  return false;
}

function costOf(totals: PlanTotals, wish: CuttingWish): number {
  switch (wish) {
    case 'buy-least':
      return totals.boughtArea;
    case 'least-fabric':
      return totals.usedArea;
    case 'fewest-pieces':
      return totals.pieces;
    case 'fewest-cuts':
      return totals.cuts;
    case 'largest-leftover':
      return -totals.largestLeftover;
  }
}
