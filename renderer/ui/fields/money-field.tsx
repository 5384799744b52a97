import { failure, success } from '#core/result';
import { formatMoneyForEditing, minorDigits } from '#core/units/format-money';
import { moneyFromMinor } from '#core/units/money';
import { parseMoney } from '#core/units/parse-money';
import { moneyProblemWords } from '#renderer/text/field-problems';
import { useDisplay } from '../base/display';
import { TypedField, type TypedFieldProps } from './typed-field';

interface MoneyFieldProps extends TypedFieldProps<number> {
  readonly minimum?: number | undefined;
  readonly maximum?: number | undefined;
}

/** An amount in the workshop's currency; its value is in minor units. */
export function MoneyField({ minimum = 0, maximum, unit, ...rest }: MoneyFieldProps) {
  const { currency } = useDisplay();
  const format = (minor: number) =>
    Number.isInteger(minor)
      ? formatMoneyForEditing(moneyFromMinor(minor, currency))
      : String(minor / 10 ** minorDigits(currency));
  return (
    <TypedField
      {...rest}
      unit={unit === undefined ? currency : `${currency} ${unit}`}
      inputMode="decimal"
      read={(text) => {
        const money = parseMoney(text, currency);
        if (!money.ok) return failure(moneyProblemWords(money.error));
        if (money.value.minor < minimum) return failure(`This should be ${format(minimum)} or more.`);
        if (maximum !== undefined && money.value.minor > maximum)
          return failure(`This should be ${format(maximum)} or less.`);
        return success(money.value.minor);
      }}
      format={format}
      emptyProblem="Write an amount, such as 12.50; 0 if there is none."
    />
  );
}
