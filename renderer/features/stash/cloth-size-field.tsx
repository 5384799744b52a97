import { clothLength, clothWidth } from '#core/domain/stash';
import { failure } from '#core/result';
import { formatLengthForEditing } from '#core/units/format-length';
import type { Length } from '#core/units/length';
import { type ClothSize, parseClothSize } from '#core/units/parse-cloth-size';
import { lengthProblemWords } from '#renderer/text/field-problems';
import { useDisplay } from '#renderer/ui/display';
import { TypedField, type TypedFieldProps } from '#renderer/ui/typed-field';
import { lengthThere } from './cloth-words';

interface ClothSizeFieldProps extends Omit<TypedFieldProps<ClothSize>, 'help'> {
  /** How wide the fabric is: a length alone is measured off that. */
  readonly fabricWidth: Length;
}

/** A piece of cloth as people say it: `18 x 22`, `1 1/4 yd`, `FQ`. What was read stands below, so that across and along are no guess. */
export function ClothSizeField({ fabricWidth, ...rest }: ClothSizeFieldProps) {
  const display = useDisplay().length;
  const bare = display.system === 'inch' ? 'in' : 'cm';
  const text = (length: Length) => formatLengthForEditing(length, display);
  const read = (typed: string) => {
    const size = parseClothSize(typed, bare, fabricWidth);
    if (!size.ok) return failure(lengthProblemWords(size.error));
    const fits =
      clothWidth.safeParse(size.value.width).success && clothLength.safeParse(size.value.length).success;
    return fits
      ? size
      : failure('A piece of cloth is more than nothing, at most 10 m across and 300 m long.');
  };
  const such = display.system === 'inch' ? '1 1/4 yd, 18 x 22 or FQ' : '1.25 m, 45 x 55 or FQ';
  const { value } = rest;
  const help =
    value === null
      ? `Such as ${such}: across by along, or the length alone.`
      : `${text(value.width)} across, ${text(value.length)} along (${lengthThere(value.length, display)}).`;
  return (
    <TypedField
      {...rest}
      help={help}
      read={read}
      format={({ width, length }) => `${text(width)} x ${text(length)}`}
      emptyProblem={`Write the size here, such as ${such}.`}
    />
  );
}
