import { failure, success } from '#core/result';
import { formatWeight, formatWeightForEditing } from '#core/units/format-weight';
import { parseWeight } from '#core/units/parse-weight';
import { weightProblemWords } from '#renderer/text/field-problems';
import { useDisplay } from '../base/display';
import { TypedField, type TypedFieldProps } from './typed-field';

interface WeightFieldProps extends TypedFieldProps<number> {
  readonly minimum?: number | undefined;
  readonly maximum?: number | undefined;
}

/** A weight: `6 oz`, `1 lb 2 oz`, `300 g`; its value is in grams. */
export function WeightField({ minimum = 0, maximum, ...rest }: WeightFieldProps) {
  const { system } = useDisplay().length;
  return (
    <TypedField
      {...rest}
      read={(text) => {
        const grams = parseWeight(text, system);
        if (!grams.ok) return failure(weightProblemWords(grams.error));
        if (grams.value < minimum)
          return failure(`This should be ${formatWeight(minimum, system, 'up')} or more.`);
        if (maximum !== undefined && grams.value > maximum)
          return failure(`This should be ${formatWeight(maximum, system, 'down')} or less.`);
        return success(grams.value);
      }}
      format={(grams) => formatWeightForEditing(grams, system)}
      emptyProblem="Write a weight, such as 6 oz or 300 g; 0 if there is none."
    />
  );
}
