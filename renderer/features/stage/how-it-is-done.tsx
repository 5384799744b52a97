import { cautionNotes } from '#core/calculators/caution-notes';
import { stageSteps } from '#core/calculators/stage-steps/stage-steps';
import type { Measurements } from '#core/domain/measurements';
import { kindsBefore, type Stage } from '#core/domain/stage';
import { stageKindRecord } from '#core/domain/stage-kinds';
import { useRead } from '#renderer/bridge/query';
import { StepGroups } from '#renderer/ui/answers/step-groups';
import { Notes } from '#renderer/ui/page/notice';
import layout from '#renderer/ui/page/layout.module.css';

interface HowItIsDoneProps {
  readonly stage: Stage;
  readonly stages: readonly Stage[];
  readonly measurements: Measurements;
}

/** The steps of a stage with the project's numbers and the answers saved so far, folded away until they are wanted. */
export function HowItIsDone({ stage, stages, measurements }: HowItIsDoneProps) {
  const { value: answers } = useRead('calculation:list', { stageId: stage.id });
  if (answers === undefined) return null;
  const groups = stageSteps({ stage, before: kindsBefore(stage, stages), measurements, answers });
  if (groups.length === 0) return null;
  return (
    <details className={layout['fold']}>
      <summary>How it is done, step by step</summary>
      <Notes notes={cautionNotes(...stageKindRecord(stage.kind).cautions)} />
      <StepGroups groups={groups} />
    </details>
  );
}
