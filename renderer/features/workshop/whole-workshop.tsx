import { useState } from 'react';
import type { Workshop } from '#core/domain/workshop';
import { currencyFromCode } from '#core/units/money';
import { useWrite } from '#renderer/bridge/query';
import { currencyOptions } from '#renderer/text/currencies';
import { Choice, Select } from '#renderer/ui/fields/choice';
import { useDisplay } from '#renderer/ui/base/display';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';
import styles from './workshop.module.css';

const LOOKS = [
  { value: 'system', words: 'As the system' },
  { value: 'light', words: 'Paper' },
  { value: 'dark', words: 'Evening light' },
] as const;

/** The workshop's name, money and light; each is kept as it is changed. */
export function WholeWorkshop({ workshop }: { readonly workshop: Workshop }) {
  const [name, setName] = useState(workshop.name);
  const { locale } = useDisplay();
  const changing = useWrite('workshop:change');
  const keep = (part: Partial<Workshop>) => void changing.write({ workshop: { ...workshop, ...part } });
  return (
    <section className={styles['part']} aria-label="The workshop">
      <div className={styles['fields']}>
        <TextField
          label="Name of the workshop"
          value={name}
          maximum={120}
          onChange={setName}
          onBlur={() => {
            if (name.trim() !== workshop.name) keep({ name });
          }}
          isOptional
        />
        <Select
          label="Money is in"
          value={workshop.currency}
          options={currencyOptions(locale)}
          onChange={(code) => keep({ currency: currencyFromCode(code) })}
          help="One currency for the whole workshop; changing it changes no amounts."
        />
        <Choice label="Light" value={workshop.theme} options={LOOKS} onChange={(theme) => keep({ theme })} />
      </div>
      <ProblemNotice problem={changing.problem} />
    </section>
  );
}
