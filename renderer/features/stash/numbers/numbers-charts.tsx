import { useState } from 'react';
import { areaQuantity, countQuantity, wordsQuantity } from '#core/calculators/quantities';
import type { LeftoversOfSide, StashMonth } from '#core/domain/stash-numbers';
import { type LeftoverSize, leftoverSizes } from '#core/stash/leftover-sizes';
import { calendarDate } from '#core/units/calendar-date';
import { decimalText } from '#core/units/decimal-text';
import { formatLength } from '#core/units/format-length';
import { formatMoney, minorDigits } from '#core/units/format-money';
import { moneyFromMinor } from '#core/units/money';
import type { LengthDisplay } from '#core/units/unit-system';
import { shopUnit } from '#renderer/features/stash/shop-unit';
import { costWords } from '#renderer/text/cost-words';
import { monthWords } from '#renderer/text/dates';
import { ChartFigure, ChartKey } from '#renderer/ui/charts/chart-figure';
import { Choice } from '#renderer/ui/fields/choice';
import { ColumnChart } from '#renderer/ui/charts/column-chart';
import { type Display, useDisplay } from '#renderer/ui/base/display';

type Measure = 'money' | 'fabric';

const MEASURES = [
  { value: 'money', words: 'In money' },
  { value: 'fabric', words: 'In fabric' },
] as const;

interface MonthsProps {
  readonly months: readonly StashMonth[];
}

/** Fabric bought and used, month by month, in money or in area. */
export function BoughtAndUsed({ months }: MonthsProps) {
  const display = useDisplay();
  const [measure, setMeasure] = useState<Measure>('money');
  const isMoney = measure === 'money';
  const title = 'Bought and used';
  const numbers = months.map((month) =>
    isMoney ? [month.bought.minor, month.used.minor] : [month.boughtArea, month.usedArea],
  );
  return (
    <ChartFigure
      table={{
        title,
        columns: ['Month', 'Bought', 'Used'],
        rows: months.map(({ month, bought, boughtArea, used, usedArea }) => [
          wordsQuantity(monthOf(month, display)),
          isMoney ? wordsQuantity(costWords(bought, display)) : areaQuantity(boughtArea),
          isMoney ? wordsQuantity(costWords(used, display)) : areaQuantity(usedArea),
        ]),
      }}
      beside={
        <>
          <ChartKey names={['Bought', 'Used']} />
          <Choice label="Show" value={measure} options={MEASURES} onChange={setMeasure} />
        </>
      }
    >
      {(width) => (
        <ColumnChart
          width={width}
          columns={months.map(({ month }, index) => ({
            label: monthOf(month, display),
            // More undone than booked in a month has no column.
            values: (numbers[index] ?? []).map((number) => Math.max(0, number)),
          }))}
          {...(isMoney ? moneyScale(display) : fabricScale(display))}
        />
      )}
    </ChartFigure>
  );
}

/** The value of the stash at the end of each month, as paid. */
export function ValueByMonth({ months }: MonthsProps) {
  const display = useDisplay();
  return (
    <ChartFigure
      table={{
        title: 'Value of your stash at the end of each month',
        columns: ['Month', 'As paid'],
        rows: months.map(({ month, value }) => [
          wordsQuantity(monthOf(month, display)),
          wordsQuantity(costWords(value, display)),
        ]),
      }}
    >
      {(width) => (
        <ColumnChart
          width={width}
          columns={months.map(({ month, value }) => ({
            label: monthOf(month, display),
            values: [value.minor],
          }))}
          {...moneyScale(display)}
        />
      )}
    </ChartFigure>
  );
}

/** The number of leftovers of each size; nothing if there are none. */
export function LeftoversBySize({ sides }: { readonly sides: readonly LeftoversOfSide[] }) {
  const { length } = useDisplay();
  if (sides.length === 0) return null;
  const sizes = leftoverSizes(sides, length.system);
  return (
    <ChartFigure
      table={{
        title: 'Leftovers by their shorter side',
        columns: ['Shorter side', 'Leftovers', 'Fabric in them'],
        rows: sizes.map((size) => [
          wordsQuantity(sizeWords(size, length)),
          countQuantity(size.pieces, ['', '']),
          areaQuantity(size.area),
        ]),
      }}
    >
      {(width) => (
        <ColumnChart
          width={width}
          columns={sizes.map((size) => ({ label: sizeWords(size, length), values: [size.pieces] }))}
          unit={1}
          format={(count) => decimalText(count, 0)}
        />
      )}
    </ChartFigure>
  );
}

function monthOf(month: string, { locale }: Display): string {
  return monthWords(calendarDate(`${month}-01`), locale);
}

function moneyScale({ currency, locale }: Display) {
  return {
    unit: 10 ** minorDigits(currency),
    format: (minor: number) => formatMoney(moneyFromMinor(Math.round(minor), currency), locale),
  };
}

/** Square yards or square meters, as the maker buys fabric. */
function fabricScale({ length }: Display) {
  const unit = shopUnit(length).length ** 2;
  const name = length.system === 'inch' ? 'sq yd' : 'm²';
  return { unit, format: (area: number) => `${decimalText(area / unit, 1)} ${name}` };
}

/** `under 1½ in`, `1½ to 2½ in`, `18 in or more`. */
function sizeWords({ from, below }: LeftoverSize, display: LengthDisplay): string {
  const words = (length: typeof from) => (length === null ? '' : formatLength(length, display));
  if (from === null) return `under ${words(below)}`;
  if (below === null) return `${words(from)} or more`;
  return `${words(from).replace(/ \S+$/, '')} to ${words(below)}`;
}
