import type { Objective, PiecePlan, PlanTotals } from './cutting-job';
import { DEFAULT_OBJECTIVES } from './cutting-job';

/** Adds up what a set of piece plans costs; pieces of which nothing new is cut count as not started. */
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

/** Whether `a` is the better plan: more patches placed first, then by the objectives in their order. */
export function isBetter(a: PlanTotals, b: PlanTotals, objectives: readonly Objective[]): boolean {
  if (a.unplaced !== b.unplaced) return a.unplaced < b.unplaced;
  const order = [...objectives, ...DEFAULT_OBJECTIVES.filter((objective) => !objectives.includes(objective))];
  for (const objective of order) {
    const difference = costOf(a, objective) - costOf(b, objective);
    if (difference !== 0) return difference < 0;
  }
  return false;
}

function costOf(totals: PlanTotals, objective: Objective): number {
  switch (objective) {
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
