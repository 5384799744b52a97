import type { LengthQuantity } from '../explanation';
import { givenLength, lengthUp } from '../quantities';
import type { WedgeRingInput } from './input';
import type { WedgeRingWork } from './work';

/** The height of a cut wedge, rounded up to the cut step; a set of bands as it is sewn. */
export function stripWidth({ cutStep }: WedgeRingInput, { frame, set }: WedgeRingWork): LengthQuantity {
  return set === null ? lengthUp(frame.height, cutStep) : givenLength(set.height);
}

/** What the wedges are cut from. */
export function stripWords({ set }: WedgeRingWork): readonly [string, string] {
  return set === null ? ['strip', 'strips'] : ['set', 'sets'];
}
