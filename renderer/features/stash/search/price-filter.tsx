import type { WantedPrice } from '#core/domain/stash-filter';
import { shopUnit } from '#renderer/features/stash/shop-unit';
import { Select } from '#renderer/ui/fields/choice';
import { useDisplay } from '#renderer/ui/base/display';
import { MoneyField } from '#renderer/ui/fields/money-field';

const PRICES = [
  { value: 'again', words: 'To buy it again' },
  { value: 'paid', words: 'As paid' },
] as const;

interface PriceFilterProps {
  readonly value: WantedPrice | undefined;
  readonly onChange: (price: WantedPrice | undefined) => void;
}

/** The lowest and highest price of a yard or meter, and whether that is today's price or the price paid. */
export function PriceFilter({ value, onChange }: PriceFilterProps) {
  const unit = shopUnit(useDisplay().length);
  const filter = value ?? { counted: 'again', length: unit.length };
  const set = (end: 'atLeast' | 'atMost', minor: number | null) => {
    const { [end]: _before, ...others } = filter;
    const next: WantedPrice = minor === null ? others : { ...others, [end]: minor };
    onChange(next.atLeast === undefined && next.atMost === undefined ? undefined : next);
  };
  return (
    <>
      <MoneyField
        label={`A ${unit.word} costs at least`}
        isOptional
        value={value?.atLeast ?? null}
        onCommit={(minor) => set('atLeast', minor)}
      />
      <MoneyField
        label={`A ${unit.word} costs at most`}
        isOptional
        value={value?.atMost ?? null}
        onCommit={(minor) => set('atMost', minor)}
      />
      {value !== undefined && (
        <Select
          label="Which price"
          value={value.counted}
          options={PRICES}
          onChange={(counted) => onChange({ ...value, counted })}
        />
      )}
    </>
  );
}
