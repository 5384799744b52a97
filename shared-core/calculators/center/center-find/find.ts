import { assertNever } from '#core/assert-never';
import type { Result } from '#core/result';
import type { Refusal } from '#core/calculators/calculator';
import type { Found } from './found';
import type { CenterFindInput } from './input';
import { findByChords } from './ways/chords';
import { findInCorners } from './ways/corners';
import { findByDiameters } from './ways/diameters';
import { findOnRoundEdge } from './ways/edge-points';
import { findByFolding } from './ways/folding';
import { findInFourSides } from './ways/four-sides';
import { findInHexagon, findInOctagon } from './ways/regular';

/** The center by whichever way was measured. */
export function findCenter({ measured, accuracy }: CenterFindInput): Result<Found, Refusal> {
  switch (measured.way) {
    case 'four-sides':
      return findInFourSides(measured, accuracy);
    case 'diameters':
      return findByDiameters(measured, accuracy);
    case 'edge-points':
      return findOnRoundEdge(measured, accuracy);
    case 'chords':
      return findByChords(measured, accuracy);
    case 'hexagon':
      return findInHexagon(measured, accuracy);
    case 'octagon':
      return findInOctagon(measured, accuracy);
    case 'corners':
      return findInCorners(measured, accuracy);
    case 'folding':
      return findByFolding(measured, accuracy);
    default:
      return assertNever(measured);
  }
}
