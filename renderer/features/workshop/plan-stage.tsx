import { stageKindRecord } from '#core/domain/stage-kinds';
import { type PlannedStage, stageKindSchema } from '#core/domain/stage';
import { minutesFromWhole } from '#core/units/minutes';
import { Button } from '#renderer/ui/page/button';
import { classes } from '#renderer/ui/base/classes';
import { CalculatorChoice } from '#renderer/ui/answers/calculator-choice';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { Select } from '#renderer/ui/fields/choice';
import { MinutesField } from '#renderer/ui/fields/minutes-field';
import { TextField } from '#renderer/ui/fields/text-field';
import { PlanChecklist } from './plan-checklist';
import type { DraftStage } from './plan-draft';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './workshop.module.css';

interface PlanStageProps {
  readonly stage: DraftStage;
  readonly number: number;
  readonly isLast: boolean;
  readonly onChange: (part: Partial<PlannedStage>) => void;
  readonly onMove: (by: -1 | 1) => void;
  readonly onDelete: () => void;
}

/** The fields of one stage of a plan. */
export function PlanStage({ stage, number, isLast, onChange, onMove, onDelete }: PlanStageProps) {
  const lines = stage.checklist.length;
  return (
    <li className={styles['stage']}>
      <div className={styles['stageFields']}>
        <TextField
          label={`Stage ${String(number)}`}
          value={stage.name}
          maximum={120}
          emptyProblem="A stage needs a name."
          onChange={(name) => onChange({ name })}
        />
        <Select
          label="Kind of stage"
          value={stage.kind}
          options={stageKindSchema.options.map((value) => ({ value, words: stageKindRecord(value).words }))}
          onChange={(kind) => onChange({ kind })}
        />
        <MinutesField
          label="Estimate"
          value={minutesFromWhole(stage.estimateMinutes)}
          onCommit={(minutes) => {
            if (minutes !== null) onChange({ estimateMinutes: minutes });
          }}
        />
      </div>
      <div className={layout['row']}>
        <Button
          look="quiet"
          isSmall
          aria-label={`Stage ${String(number)} earlier`}
          disabled={number === 1}
          onClick={() => onMove(-1)}
        >
          Earlier
        </Button>
        <Button
          look="quiet"
          isSmall
          aria-label={`Stage ${String(number)} later`}
          disabled={isLast}
          onClick={() => onMove(1)}
        >
          Later
        </Button>
        <Button look="quiet" isSmall aria-label={`Delete stage ${String(number)}`} onClick={onDelete}>
          Delete
        </Button>
      </div>
      {number > 1 && (
        <Checkbox
          label="Can be worked on alongside the stage before it"
          isChecked={stage.isBeside ?? false}
          onChange={(isBeside) => onChange({ isBeside })}
        />
      )}
      <CalculatorChoice
        kind={stage.kind}
        chosen={stage.calculators ?? null}
        onChange={(calculators) => onChange({ calculators })}
      />
      <details className={classes(layout['fold'], styles['checklist'])}>
        <summary>
          Checklist: {lines === 0 ? 'empty' : lines === 1 ? 'one line' : `${String(lines)} lines`}
        </summary>
        <div>
          <PlanChecklist checklist={stage.checklist} onChange={(checklist) => onChange({ checklist })} />
        </div>
      </details>
    </li>
  );
}
