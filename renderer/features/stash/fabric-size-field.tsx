import { pieceLengthSchema, pieceWidthSchema } from '#core/domain/stash';
import { failure } from '#core/result';
import { formatLengthForEditing } from '#core/units/format-length';
import type { Length } from '#core/units/length';
import { type FabricSize, parseFabricSize } from '#core/units/parse-fabric-size';
import { lengthProblemWords } from '#renderer/text/field-problems';
import { useDisplay } from '#renderer/ui/base/display';
import { TypedField, type TypedFieldProps } from '#renderer/ui/fields/typed-field';
import { roundedLength } from './fabric-words';

interface FabricSizeFieldProps extends Omit<TypedFieldProps<FabricSize>, 'help'> {
  /** The width of a size that is typed as a length only. */
  readonly fabricWidth: Length;
}

/** Reads a size as people write it: `18 x 22`, `1 1/4 yd`, `FQ`. The help below shows which side was read as which. */
export function FabricSizeField({ fabricWidth, ...rest }: FabricSizeFieldProps) {
  const display = useDisplay().length;
  const bare = display.system === 'inch' ? 'in' : 'cm';
  const text = (length: Length) => formatLengthForEditing(length, display);
  const read = (typed: string) => {
    const size = parseFabricSize(typed, bare, fabricWidth);
    if (!size.ok) return failure(lengthProblemWords(size.error));
    const fits =
      pieceWidthSchema.safeParse(size.value.width).success &&
      pieceLengthSchema.safeParse(size.value.length).success;
    return fits
      ? size
      : failure('Enter a size above zero, at most 10 m (about 11 yd) across and 300 m (about 328 yd) long.');
  };
  const example = display.system === 'inch' ? '1 1/4 yd, 18 x 22 or FQ' : '1.25 m, 45 x 55 or FQ';
  const { value } = rest;
  const help =
    value === null
      ? `For example ${example}. Write the side across the fabric first, or only the length.`
      : `${text(value.width)} across, ${text(value.length)} along the selvage (${roundedLength(value.length, display)}).`;
  return (
    <TypedField
      {...rest}
      help={help}
      read={read}
      format={({ width, length }) => `${text(width)} x ${text(length)}`}
      emptyProblem={`Enter a size, such as ${example}.`}
    />
  );
}
