import { useContext } from 'react';
import { calendarDateFromText } from '#core/units/calendar-date';
import { formatLengthForEditing } from '#core/units/format-length';
import { formatMoneyForEditing } from '#core/units/format-money';
import { formatWeightForEditing } from '#core/units/format-weight';
import { lengthFromUnits } from '#core/units/length';
import { moneyFromMinor } from '#core/units/money';
import { choiceWords } from '#renderer/text/choice-words';
import { Checkbox } from '../fields/checkbox';
import { Choice, Select } from '../fields/choice';
import { DateField } from '../fields/date-field';
import type { FieldDescription } from '#core/domain/describe-schema';
import { useDisplay } from '../base/display';
import { FabricNamesContext } from '../base/suggested-names';
import { LengthField } from '../fields/length-field';
import { MoneyField } from '../fields/money-field';
import { NumberField } from '../fields/number-field';
import { asNumber } from './schema-values';
import { WeightField } from '../fields/weight-field';
import { TextField } from '../fields/text-field';

type LeafDescription = Exclude<FieldDescription, { form: 'group' | 'rows' | 'one-of' }>;

interface LeafFieldProps {
  readonly field: LeafDescription;
  readonly value: unknown;
  /** The value used while the field is empty. */
  readonly fallback?: unknown;
  readonly problem: string | null;
  readonly onChange: (value: unknown) => void;
}

/** The control for a field that holds one value. */
export function LeafField({ field, value, fallback, problem, onChange }: LeafFieldProps) {
  const placeholder = useFallbackWords(field, fallback);
  const isOptional = field.isOptional;
  const frame = { label: field.title, help: field.help, isOptional, problem };
  const typed = { ...frame, placeholder, optionalWords: placeholder === undefined ? undefined : '' };
  const empty = field.empty === 'null' ? null : undefined;
  const commit = (next: unknown) => onChange(next ?? empty);
  switch (field.form) {
    case 'length': {
      const units = asNumber(value);
      const length = units === null || !Number.isInteger(units) ? null : lengthFromUnits(units);
      return (
        <LengthField
          {...typed}
          value={length}
          onCommit={commit}
          minimum={field.minimum}
          maximum={field.maximum}
        />
      );
    }
    case 'minor':
      return (
        <MoneyField
          {...typed}
          value={asNumber(value)}
          onCommit={commit}
          minimum={field.minimum}
          maximum={field.maximum}
          unit={field.unit}
        />
      );
    case 'weight':
      return (
        <WeightField
          {...typed}
          value={asNumber(value)}
          onCommit={commit}
          minimum={field.minimum}
          maximum={field.maximum}
        />
      );
    case 'count':
    case 'number':
    case 'percent':
      return (
        <NumberField
          {...typed}
          value={asNumber(value)}
          onCommit={commit}
          minimum={field.minimum}
          maximum={field.maximum}
          unit={field.unit}
          isWhole={field.form === 'count'}
        />
      );
    case 'choice':
      return (
        <ChoiceLeaf field={field} value={value} fallback={fallback} problem={problem} onChange={onChange} />
      );
    case 'flag':
      return (
        <Checkbox
          label={field.title}
          help={field.help}
          problem={problem}
          isChecked={value === true}
          onChange={onChange}
        />
      );
    case 'text':
      return <TextLeaf frame={frame} field={field} value={value} onChange={onChange} />;
    case 'date': {
      const date = calendarDateFromText(typeof value === 'string' ? value : '');
      return <DateField {...frame} value={date.ok ? date.value : null} onChange={commit} />;
    }
  }
}

interface TextLeafProps extends Pick<LeafFieldProps, 'value' | 'onChange'> {
  readonly frame: Pick<Parameters<typeof TextField>[0], 'label' | 'help' | 'isOptional' | 'problem'>;
  readonly field: Extract<LeafDescription, { form: 'text' }>;
}

function TextLeaf({ frame, field, value, onChange }: TextLeafProps) {
  const text = typeof value === 'string' ? value : '';
  const shared = { ...frame, value: text, maximum: field.maximum, onChange };
  if (field.isFabricName) return <FabricNameField {...shared} />;
  return <TextField {...shared} isLong={(field.maximum ?? 200) > 300} />;
}

function FabricNameField(props: Parameters<typeof TextField>[0]) {
  const useNames = useContext(FabricNamesContext);
  return <TextField {...props} suggestions={useNames(props.value)} />;
}

const NONE = '';

function ChoiceLeaf({
  field,
  value,
  fallback,
  problem,
  onChange,
}: LeafFieldProps & { readonly field: Extract<LeafDescription, { form: 'choice' }> }) {
  const mayBeNone = field.isOptional && field.startsAs === undefined;
  const options = [
    ...(mayBeNone
      ? [
          {
            value: NONE,
            words: noneWords(fallback),
          },
        ]
      : []),
    ...field.values.map((one) => ({ value: one, words: choiceWords(one) })),
  ];
  const shown = value ?? field.startsAs;
  const chosen = field.values.find((one) => one === shown) ?? (mayBeNone ? NONE : (field.values[0] ?? NONE));
  const empty = field.empty === 'null' ? null : undefined;
  const Chooser = options.length > 4 ? Select : Choice;
  return (
    <Chooser
      label={field.title}
      help={field.help}
      value={chosen}
      options={options}
      problem={problem}
      onChange={(next: string | number) => onChange(next === NONE ? empty : next)}
    />
  );
}

/** The value used while an optional field is empty, written as in the field. */
function useFallbackWords(field: LeafDescription, fallback: unknown): string | undefined {
  const { length, currency } = useDisplay();
  const number = asNumber(fallback);
  if (number === null) return undefined;
  if (field.form === 'length') return `usually ${formatLengthForEditing(lengthFromUnits(number), length)}`;
  if (field.form === 'minor')
    return Number.isInteger(number) ? formatMoneyForEditing(moneyFromMinor(number, currency)) : undefined;
  if (field.form === 'weight') return `usually ${formatWeightForEditing(number, length.system)}`;
  return `usually ${String(number)}`;
}

function noneWords(fallback: unknown): string {
  const isKnown = typeof fallback === 'string' || typeof fallback === 'number';
  return isKnown ? `As usual: ${choiceWords(fallback).toLowerCase()}` : 'Not chosen';
}
