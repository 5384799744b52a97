import { lengthField } from '#core/domain/fields';
import { type Length, lengthFromInches, lengthFromMeters } from '#core/units/length';

/** Any length that is measured on a finished piece. A piece as large as a field allows is longer across its corners. */
export function measuredField(title: string, help?: string) {
  return lengthField({
    title,
    ...(help === undefined ? {} : { help }),
    minimum: lengthFromInches(1),
    maximum: lengthFromMeters(15),
  });
}

/** Rounds to what the tape shows. */
export type Whole = (size: number) => Length;

/**
 * Equal lengths as a tape would show them, one after the other. What rounding adds to one is taken from the next: many lengths off the
 * same way would not fit the rest.
 */
export function alikeLengths(size: number, count: number, whole: Whole): readonly Length[] {
  const lengths: Length[] = [];
  let over = 0;
  for (let index = 0; index < count; index += 1) {
    const length = whole(size - over);
    over += length - size;
    lengths.push(length);
  }
  return lengths;
}
