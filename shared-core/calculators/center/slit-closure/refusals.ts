import type { Refusal } from '#core/calculators/calculator';
import { givenLength, lengthDown } from '#core/calculators/quantities';
import type { Length } from '#core/units/length';
import type { SlitClosureInput } from './input';

export function noRoom({ slit, first, last }: SlitClosureInput): Refusal {
  return {
    code: 'no-room',
    field: ['first'],
    says: 'A slit of {slit} has no room for a first place {first} from the outer edge and a last one {last} from the hole.',
    values: { slit: givenLength(slit), first: givenLength(first), last: givenLength(last) },
  };
}

export function tooClose(size: Length, pitch: number): Refusal {
  return {
    code: 'too-close',
    field: ['apart'],
    says: 'Each is {size} wide, and they would be {pitch} apart. Let them be farther apart.',
    values: { size: givenLength(size), pitch: lengthDown(pitch) },
  };
}

export function overlapTooNarrow(overlap: Length, size: Length): Refusal {
  return {
    code: 'overlap-too-narrow',
    field: ['overlap'],
    says: 'One half is sewn to the flap, so the overlap has to be at least {size}. It is {overlap}.',
    values: { size: givenLength(size), overlap: givenLength(overlap) },
  };
}

export function tieTooLong({ fabricWidth }: SlitClosureInput, cutLength: Length): Refusal {
  return {
    code: 'tie-too-long',
    field: ['closing', 'tieLength'],
    says: 'A tie is cut {length} long, and the fabric is {width} wide. Make it shorter.',
    values: { length: givenLength(cutLength), width: givenLength(fabricWidth) },
  };
}

export function stripsTooShort({ fabricWidth }: SlitClosureInput): Refusal {
  return {
    code: 'strips-too-short',
    field: ['fabricWidth'],
    says: 'Strips across fabric {width} wide are too short to join into the flap.',
    values: { width: givenLength(fabricWidth) },
  };
}

export const TOO_MANY: Refusal = {
  code: 'too-many-places',
  field: ['apart'],
  says: 'That is more than 200 places. Let them be farther apart.',
  values: {},
};
