import { failure, success } from '#core/result';
import { TypedField, type TypedFieldProps } from './typed-field';

interface NumberFieldProps extends TypedFieldProps<number> {
  readonly minimum?: number | undefined;
  readonly maximum?: number | undefined;
  readonly isWhole?: boolean;
}

/** A count, a percentage or a plain number; a comma is read as a decimal mark. */
export function NumberField({ minimum, maximum, isWhole = false, ...rest }: NumberFieldProps) {
  return (
    <TypedField
      {...rest}
      inputMode={isWhole ? 'numeric' : 'decimal'}
      read={(text) => readNumber(text, { minimum, maximum, isWhole })}
      format={(value) => String(value)}
      emptyProblem={isWhole ? 'Write a whole number here.' : 'Write a number here.'}
    />
  );
}

interface NumberLimits {
  readonly minimum: number | undefined;
  readonly maximum: number | undefined;
  readonly isWhole: boolean;
}

function readNumber(text: string, { minimum, maximum, isWhole }: NumberLimits) {
  const typed = text.trim().replace('−', '-').replace(/\s*%$/, '');
  if (!/^-?(\d+([.,]\d*)?|[.,]\d+)$/.test(typed)) {
    return failure(
      `“${text.trim()}” is not a number. ${isWhole ? 'Write it in digits, such as 12.' : 'Write it like 12 or 7.5.'}`,
    );
  }
  const value = Number(typed.replace(',', '.'));
  if (isWhole && !Number.isInteger(value))
    return failure(
      `“${text.trim()}” is not whole. Write a whole number, such as ${String(Math.round(value))}.`,
    );
  if (minimum !== undefined && value < minimum) return failure(`This should be ${String(minimum)} or more.`);
  if (maximum !== undefined && value > maximum) return failure(`This should be ${String(maximum)} or less.`);
  return success(value);
}
