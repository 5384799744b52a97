import { type Caution, CAUTIONS } from '#core/domain/cautions';
import type { Note } from './explanation';

/** Cautions beside an answer, one note each, in the words that the whole program uses. */
export function cautionNotes(...cautions: readonly Caution[]): readonly Note[] {
  return cautions.map((caution) => ({ kind: 'caution', says: CAUTIONS[caution], values: {} }));
}
