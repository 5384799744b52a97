import { useState } from 'react';
import { useNavigate } from 'react-router';
import type { Workshop } from '#core/domain/workshop';
import { currencyFromCode } from '#core/units/money';
import { useWrite } from '#renderer/bridge/query';
import { choiceWords } from '#renderer/text/choice-words';
import { currencyOptions } from '#renderer/text/currencies';
import { Button } from '#renderer/ui/page/button';
import { Choice, Select } from '#renderer/ui/fields/choice';
import { Dialog } from '#renderer/ui/page/dialog';
import { useDisplay } from '#renderer/ui/base/display';
import { Form } from '#renderer/ui/fields/form';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';

interface BeginDialogProps {
  readonly workshop: Workshop;
  readonly onClose: () => void;
}

/** The three things a new notebook must know before its first piece; all can be changed later on the Workshop page. */
export function BeginDialog({ workshop, onClose }: BeginDialogProps) {
  const [name, setName] = useState(workshop.name);
  const [unitSystem, setUnitSystem] = useState(workshop.settings.unitSystem);
  const [currency, setCurrency] = useState<string>(workshop.currency);
  const changing = useWrite('workshop:change');
  const navigate = useNavigate();
  const { locale } = useDisplay();
  const begin = async () => {
    const settings = { ...workshop.settings, unitSystem };
    const answer = await changing.write({
      workshop: { ...workshop, name, currency: currencyFromCode(currency), settings },
    });
    if (answer.ok) void navigate('/projects/new');
  };
  return (
    <Dialog
      title="Begin my notebook"
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Not yet</Button>
          <Button look="main" type="submit" form="begin" disabled={changing.isWriting}>
            Begin
          </Button>
        </>
      }
    >
      <Form id="begin" onSubmit={() => void begin()}>
        <div style={{ display: 'grid', gap: 'var(--space-5)' }}>
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
            help="Any field takes either, whatever is chosen here: 9 1/2 in, 24 cm."
            onChange={setUnitSystem}
          />
          <Select
            label="Money is in"
            value={currency}
            options={currencyOptions(locale)}
            onChange={setCurrency}
          />
        </div>
      </Form>
      <ProblemNotice problem={changing.problem} />
    </Dialog>
  );
}
