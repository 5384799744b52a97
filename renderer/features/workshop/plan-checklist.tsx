import { type PlannedStage, stageKindSchema } from '#core/domain/stage';
import { type StageKind, stageKindRecord } from '#core/domain/stage-kinds';
import { Button } from '#renderer/ui/page/button';
import { Select } from '#renderer/ui/fields/choice';
import { TextField } from '#renderer/ui/fields/text-field';
import styles from './workshop.module.css';

type Line = PlannedStage['checklist'][number];
type Weight = 'plain' | 'gate' | StageKind;

interface PlanChecklistProps {
  readonly checklist: readonly Line[];
  readonly onChange: (checklist: readonly Line[]) => void;
}

const WEIGHTS: readonly { readonly value: Weight; readonly words: string }[] = [
  { value: 'plain', words: 'On the way' },
  { value: 'gate', words: 'Before it starts' },
  ...stageKindSchema.options
    .filter((kind) => kind !== 'other')
    .map((kind) => ({ value: kind, words: `Before it starts; ticked by “${stageKindRecord(kind).words}”` })),
];

/** The lines to check in a stage, and which of them keep it from starting. */
export function PlanChecklist({ checklist, onChange }: PlanChecklistProps) {
  const change = (at: number, part: Partial<Line>) =>
    onChange(checklist.map((line, index) => (index === at ? { ...line, ...part } : line)));
  return (
    <div className={styles['part']}>
      {checklist.map((line, index) => (
        <div key={index} className={styles['check']}>
          <TextField
            label={`Line ${String(index + 1)}`}
            value={line.text}
            maximum={300}
            onChange={(text) => change(index, { text })}
          />
          <Select
            label="When"
            value={weightOf(line)}
            options={WEIGHTS}
            onChange={(weight) => change(index, lineWeight(weight))}
          />
          <Button look="quiet" onClick={() => onChange(checklist.filter((_line, at) => at !== index))}>
            Remove
          </Button>
        </div>
      ))}
      <div>
        <Button isSmall onClick={() => onChange([...checklist, { text: '', isGate: false, closedBy: null }])}>
          Add a line
        </Button>
      </div>
    </div>
  );
}

function weightOf({ isGate, closedBy }: Line): Weight {
  return isGate ? (closedBy ?? 'gate') : 'plain';
}

function lineWeight(weight: Weight): Pick<Line, 'isGate' | 'closedBy'> {
  if (weight === 'plain') return { isGate: false, closedBy: null };
  return { isGate: true, closedBy: weight === 'gate' ? null : weight };
}
