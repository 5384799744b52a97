import type { WorkDone, WorkMeasure } from '#core/domain/clock';
import { lengthFromUnits } from '#core/units/length';
import { MEASURE_WORDS } from '#renderer/text/work-words';
import { Choice } from '../ui/fields/choice';
import { LengthField } from '../ui/fields/length-field';
import { NumberField } from '../ui/fields/number-field';

interface WorkDoneFieldsProps {
  readonly what: WorkMeasure | null;
  readonly amount: number | null;
  readonly onChange: (what: WorkMeasure | null, amount: number | null) => void;
}

type Chosen = WorkMeasure | 'nothing';

const CHOICES: readonly { readonly value: Chosen; readonly words: string }[] = [
  { value: 'nothing', words: 'Not counted' },
  { value: 'blocks', words: MEASURE_WORDS.blocks },
  { value: 'hand', words: MEASURE_WORDS.hand },
  { value: 'cuts', words: MEASURE_WORDS.cuts },
];

/** What got done while the clock ran. The maker's own rates are learned from it. */
export function WorkDoneFields({ what, amount, onChange }: WorkDoneFieldsProps) {
  return (
    <>
      <Choice
        label="What got done"
        help="Ringbound learns your speed from what you count."
        value={what ?? 'nothing'}
        options={CHOICES}
        onChange={(chosen) => onChange(chosen === 'nothing' ? null : chosen, null)}
      />
      {what === 'hand' && (
        <LengthField
          label="Length sewn by hand"
          value={amount === null ? null : lengthFromUnits(amount)}
          onCommit={(length) => onChange(what, length)}
          isOptional
        />
      )}
      {(what === 'blocks' || what === 'cuts') && (
        <NumberField
          label={what === 'blocks' ? 'How many blocks' : 'How many cuts'}
          value={amount}
          minimum={1}
          maximum={100_000}
          isWhole
          onCommit={(count) => onChange(what, count)}
          isOptional
        />
      )}
    </>
  );
}

/** What was counted; null if nothing was counted, or no amount is given. */
export function workDone(what: WorkMeasure | null, amount: number | null): WorkDone | null {
  return what === null || amount === null ? null : { what, amount };
}
