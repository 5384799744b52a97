import { lengthField } from '#core/domain/fields';
import { lengthFromInches, lengthFromMeters } from '#core/units/length';

/** Any length that is measured on a finished piece. A piece as large as a field allows is longer across its corners. */
export function measuredField(title: string, help?: string) {
  return lengthField({
    title,
    ...(help === undefined ? {} : { help }),
    minimum: lengthFromInches(1),
    maximum: lengthFromMeters(15),
  });
}
