import type { Length } from '#core/units/length';
import { formatLengthForEditing } from '#core/units/format-length';
import type { LengthUnit } from '#core/units/length-unit';
import { parseLength, parseSignedLength } from '#core/units/parse-length';
import { failure } from '#core/result';
import { lengthProblemWords, lengthRangeWords } from '#renderer/text/field-problems';
import { useDisplay } from '../base/display';
import { TypedField, type TypedFieldProps } from './typed-field';

interface LengthFieldProps extends TypedFieldProps<Length> {
  readonly minimum?: number | undefined;
  readonly maximum?: number | undefined;
  /** The unit of a number without one; by default inches or centimeters, by the reader's units. */
  readonly bareUnit?: LengthUnit;
}

/** A length as people write it: `9 1/2`, `24 cm`, `1 1/4 yd`. */
export function LengthField({ minimum, maximum, bareUnit, ...rest }: LengthFieldProps) {
  const display = useDisplay().length;
  const bare = bareUnit ?? (display.system === 'inch' ? 'in' : 'cm');
  const read = (text: string) => {
    // Only a field for a position, which can be left or above, takes a minus.
    const length = (minimum ?? 0) < 0 ? parseSignedLength(text, bare) : parseLength(text, bare);
    if (!length.ok) return failure(lengthProblemWords(length.error));
    const range = lengthRangeWords(length.value, minimum, maximum, display);
    return range === null ? length : failure(range);
  };
  return (
    <TypedField
      {...rest}
      placeholder={rest.placeholder ?? bare}
      read={read}
      format={(length) => formatLengthForEditing(length, display)}
      emptyProblem="Write a length here, such as 9 1/2 in or 24 cm."
    />
  );
}
