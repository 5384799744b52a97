import { useNavigate } from 'react-router';
import type { Workshop } from '#core/domain/workshop';
import { currencyFromCode } from '#core/units/money';
import { useWrite } from '#renderer/bridge/query';
import { choiceWords } from '#renderer/text/choice-words';
import { currencyOptions } from '#renderer/text/currencies';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { useDisplay } from '#renderer/ui/base/display';
import { Choice, Select } from '#renderer/ui/fields/choice';
import { TextField } from '#renderer/ui/fields/text-field';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';

interface StartDialogProps {
  readonly workshop: Workshop;
  readonly onClose: () => void;
}

/** The three settings a new notebook needs before its first project. All can be changed later on the Workshop page. */
export function StartDialog({ workshop, onClose }: StartDialogProps) {
  const draft = useFormDraft('start');
  const [name, setName] = useDraftValue(draft, 'name', workshop.name);
  const [unitSystem, setUnitSystem] = useDraftValue(draft, 'unitSystem', workshop.settings.unitSystem);
  const [currency, setCurrency] = useDraftValue<string>(draft, 'currency', workshop.currency);
  const navigate = useNavigate();
  const { locale } = useDisplay();
  const saving = useDialogSave(useWrite('workshop:change'), () => void navigate('/projects/new'), draft);
  const save = () => {
    const settings = { ...workshop.settings, unitSystem };
    saving.save({ workshop: { ...workshop, name, currency: currencyFromCode(currency), settings } });
  };
  return (
    <DialogForm
      draft={draft}
      title="Start my notebook"
      saving={saving}
      verb="Start"
      onSave={save}
      onClose={onClose}
      className={layout['sections']}
    >
      <TextField
        label="Name of the workshop"
        isOptional
        value={name}
        onChange={setName}
        maximum={120}
        autoFocus
      />
      <Choice
        label="I measure in"
        value={unitSystem}
        options={(['inch', 'metric'] as const).map((value) => ({ value, words: choiceWords(value) }))}
        help="Every field takes both, whatever you choose here: 9 1/2 in, 24 cm."
        onChange={setUnitSystem}
      />
      <Select label="Currency" value={currency} options={currencyOptions(locale)} onChange={setCurrency} />
    </DialogForm>
  );
}
