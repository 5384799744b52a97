import { failure } from '#core/result';
import { formatMinutes, type Minutes } from '#core/units/minutes';
import { parseMinutes } from '#core/units/parse-minutes';
import { minutesProblemWords } from '#renderer/text/field-problems';
import { TypedField, type TypedFieldProps } from './typed-field';

/** A time span: `45`, `1:30`, `2 h 20 min`. */
export function MinutesField(props: TypedFieldProps<Minutes>) {
  return (
    <TypedField
      {...props}
      read={(text) => {
        const minutes = parseMinutes(text);
        return minutes.ok ? minutes : failure(minutesProblemWords(minutes.error));
      }}
      format={formatMinutes}
      emptyProblem="Write how long, such as 45 min or 1 h 30."
    />
  );
}
