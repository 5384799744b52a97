import { useState } from 'react';
import { calendarDateParts } from '#core/units/calendar-date';
import { isWholeDate, type PartialDate, partialDateFromText } from '#core/units/partial-date';
import { today } from '#renderer/text/dates';
import { Select } from '#renderer/ui/fields/choice';
import { DateField, MonthField } from '#renderer/ui/fields/date-field';
import { NumberField } from '#renderer/ui/fields/number-field';

type Known = 'nothing' | 'day' | 'month' | 'year';

const OPTIONS = [
  { value: 'nothing', words: 'Not known' },
  { value: 'day', words: 'On a day' },
  { value: 'month', words: 'In a month' },
  { value: 'year', words: 'In a year' },
] as const;

interface BoughtDayFieldProps {
  readonly value: PartialDate | null;
  readonly onChange: (value: PartialDate | null) => void;
}

/** When fabric was bought, as well as it is known. Choosing a day, month or year starts with the one that is now. */
export function BoughtDayField({ value, onChange }: BoughtDayFieldProps) {
  const [asked, setAsked] = useState<Known>(knownOf(value));
  const known = value === null ? asked : knownOf(value);
  const take = (text: string) => {
    const date = partialDateFromText(text);
    onChange(date.ok ? date.value : null);
  };
  return (
    <>
      <Select
        label="When bought"
        value={known}
        options={OPTIONS}
        onChange={(next) => {
          setAsked(next);
          take(today().slice(0, LETTERS[next]));
        }}
      />
      {known === 'day' && (
        <DateField
          label="Bought on"
          value={value !== null && isWholeDate(value) ? value : null}
          onChange={onChange}
        />
      )}
      {known === 'month' && <MonthField label="Bought in" value={value ?? ''} onChange={take} />}
      {known === 'year' && (
        <NumberField
          label="Year bought"
          value={value === null ? null : Number(value)}
          isWhole
          minimum={1800}
          maximum={calendarDateParts(today()).year}
          onCommit={(year) => take(year === null ? '' : String(year))}
        />
      )}
    </>
  );
}

/** How much of the text of a day each of these is. */
const LETTERS: Readonly<Record<Known, number>> = { nothing: 0, year: 4, month: 7, day: 10 };

function knownOf(value: PartialDate | null): Known {
  const found = OPTIONS.find((option) => LETTERS[option.value] === (value ?? '').length);
  return found?.value ?? 'nothing';
}
