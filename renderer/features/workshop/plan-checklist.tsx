import { type PlannedStage, stageKindSchema } from '#core/domain/stage';
import { type StageKind, stageKindRecord } from '#core/domain/stage-kinds';
import { Button } from '#renderer/ui/page/button';
import { Select } from '#renderer/ui/fields/choice';
import { TextField } from '#renderer/ui/fields/text-field';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './workshop.module.css';

type Line = PlannedStage['checklist'][number];
type When = 'plain' | 'gate' | StageKind;

interface PlanChecklistProps {
  readonly checklist: readonly Line[];
  readonly onChange: (checklist: readonly Line[]) => void;
}

const WHEN_OPTIONS: readonly { readonly value: When; readonly words: string }[] = [
  { value: 'plain', words: 'Along the way' },
  { value: 'gate', words: 'Before you start' },
  ...stageKindSchema.options
    .filter((kind) => kind !== 'other')
    .map((kind) => ({ value: kind, words: `Before you start; ticked by “${stageKindRecord(kind).words}”` })),
];

/** The checklist of a stage, and which of its lines must be ticked before the stage starts. */
export function PlanChecklist({ checklist, onChange }: PlanChecklistProps) {
  const change = (at: number, part: Partial<Line>) =>
    onChange(checklist.map((line, index) => (index === at ? { ...line, ...part } : line)));
  return (
    <div className={layout['stack']}>
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
            value={whenOf(line)}
            options={WHEN_OPTIONS}
            onChange={(when) => change(index, gateOf(when))}
          />
          <Button look="quiet" onClick={() => onChange(checklist.filter((_line, at) => at !== index))}>
            Delete
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

function whenOf({ isGate, closedBy }: Line): When {
  return isGate ? (closedBy ?? 'gate') : 'plain';
}

function gateOf(when: When): Pick<Line, 'isGate' | 'closedBy'> {
  if (when === 'plain') return { isGate: false, closedBy: null };
  return { isGate: true, closedBy: when === 'gate' ? null : when };
}
