import type { Stage } from '#core/domain/stage';
import { useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/button';
import { ProblemNotice } from '#renderer/ui/problem-notice';

/** What else can be done with a stage as a whole: leave it out, or put it back to where it has not begun. */
export function StageOptions({ stage }: { readonly stage: Stage }) {
  const moving = useWrite('stage:move');
  const isOver = stage.state === 'done' || stage.state === 'skipped';
  return (
    <>
      {stage.state !== 'planned' && (
        <Button
          look="quiet"
          isSmall
          disabled={moving.isWriting}
          onClick={() => void moving.write({ stageId: stage.id, to: 'planned' })}
        >
          {stage.state === 'skipped' ? 'It is needed after all' : 'Not begun after all'}
        </Button>
      )}
      {!isOver && (
        <Button
          look="quiet"
          isSmall
          disabled={moving.isWriting}
          onClick={() => void moving.write({ stageId: stage.id, to: 'skipped' })}
        >
          Skip this stage
        </Button>
      )}
      <ProblemNotice problem={moving.problem} />
    </>
  );
}
