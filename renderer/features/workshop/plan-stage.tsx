import { stageKindRecord } from '#core/domain/stage-kinds';
import { type PlannedStage, stageKindSchema } from '#core/domain/stage';
import { minutesFromWhole } from '#core/units/minutes';
import { Button } from '#renderer/ui/page/button';
import { CalculatorChoice } from '#renderer/ui/answers/calculator-choice';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { Select } from '#renderer/ui/fields/choice';
import { MinutesField } from '#renderer/ui/fields/minutes-field';
import { TextField } from '#renderer/ui/fields/text-field';
import { PlanChecklist } from './plan-checklist';
import type { DraftStage } from './plan-draft';
import styles from './workshop.module.css';

interface PlanStageProps {
  readonly stage: DraftStage;
  readonly place: number;
  readonly isLast: boolean;
  readonly onChange: (part: Partial<PlannedStage>) => void;
  readonly onMove: (by: -1 | 1) => void;
  readonly onRemove: () => void;
}

/** One stage of a plan while the plan is written. */
export function PlanStage({ stage, place, isLast, onChange, onMove, onRemove }: PlanStageProps) {
  const lines = stage.checklist.length;
  return (
    <li className={styles['stage']}>
      <div className={styles['stageFields']}>
        <TextField
          label={`Stage ${String(place)}`}
          value={stage.name}
          maximum={120}
          emptyProblem="A stage needs a name."
          onChange={(name) => onChange({ name })}
        />
        <Select
          label="What is done in it"
          value={stage.kind}
          options={stageKindSchema.options.map((value) => ({ value, words: stageKindRecord(value).words }))}
          onChange={(kind) => onChange({ kind })}
        />
        <MinutesField
          label="About"
          value={minutesFromWhole(stage.estimateMinutes)}
          onCommit={(minutes) => {
            if (minutes !== null) onChange({ estimateMinutes: minutes });
          }}
        />
      </div>
      <div className={styles['buttons']}>
        <Button
          look="quiet"
          isSmall
          aria-label={`Stage ${String(place)} earlier`}
          disabled={place === 1}
          onClick={() => onMove(-1)}
        >
          Earlier
        </Button>
        <Button
          look="quiet"
          isSmall
          aria-label={`Stage ${String(place)} later`}
          disabled={isLast}
          onClick={() => onMove(1)}
        >
          Later
        </Button>
        <Button look="quiet" isSmall aria-label={`Remove stage ${String(place)}`} onClick={onRemove}>
          Remove
        </Button>
      </div>
      {place > 1 && (
        <Checkbox
          label="May run side by side with the stage before it"
          isChecked={stage.isBeside ?? false}
          onChange={(isBeside) => onChange({ isBeside })}
        />
      )}
      <CalculatorChoice
        kind={stage.kind}
        chosen={stage.calculators ?? null}
        onChange={(calculators) => onChange({ calculators })}
      />
      <details className={styles['more']}>
        <summary>
          Checklist: {lines === 0 ? 'nothing yet' : lines === 1 ? 'one line' : `${String(lines)} lines`}
        </summary>
        <div>
          <PlanChecklist checklist={stage.checklist} onChange={(checklist) => onChange({ checklist })} />
        </div>
      </details>
    </li>
  );
}
