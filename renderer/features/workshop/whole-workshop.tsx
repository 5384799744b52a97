import type { Workshop } from '#core/domain/workshop';
import { currencyFromCode } from '#core/units/money';
import { useWrite } from '#renderer/bridge/query';
import { currencyOptions } from '#renderer/text/currencies';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { Choice, Select } from '#renderer/ui/fields/choice';
import { useDisplay } from '#renderer/ui/base/display';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';
import layout from '#renderer/ui/page/layout.module.css';

const THEMES = [
  { value: 'system', words: 'Same as the computer' },
  { value: 'light', words: 'Light (paper)' },
  { value: 'dark', words: 'Dark (evening light)' },
] as const;

/** The workshop's name, currency and colors; each is saved as it is changed. */
export function WholeWorkshop({ workshop }: { readonly workshop: Workshop }) {
  const draft = useFormDraft('workshop');
  const [name, setName] = useDraftValue(draft, 'name', workshop.name);
  const { locale } = useDisplay();
  const changing = useWrite('workshop:change');
  const save = async (part: Partial<Workshop>) => {
    const saved = await changing.write({ workshop: { ...workshop, ...part } });
    if (saved.ok && 'name' in part) draft.forget();
  };
  return (
    <section className={layout['stack']} aria-label="The workshop">
      <div className={layout['pair']}>
        <TextField
          label="Name of the workshop"
          value={name}
          maximum={120}
          onChange={setName}
          onBlur={() => {
            if (name.trim() !== workshop.name) void save({ name });
          }}
          isOptional
        />
        <Select
          label="Currency"
          value={workshop.currency}
          options={currencyOptions(locale)}
          onChange={(code) => void save({ currency: currencyFromCode(code) })}
          help="One currency for the whole workshop. Changing it does not convert amounts."
        />
        <Choice
          label="Colors"
          value={workshop.theme}
          options={THEMES}
          onChange={(theme) => void save({ theme })}
        />
      </div>
      <ProblemNotice problem={changing.problem} />
    </section>
  );
}
