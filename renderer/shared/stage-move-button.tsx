import type { StageGlance } from '#core/contract/projects';
import type { ProjectId, StageId } from '#core/domain/ids';
import type { StageState } from '#core/domain/stage';
import { stageMove } from '#renderer/text/stage-words';
import { Button, ButtonLink, type ButtonLook } from '../ui/page/button';

interface StageMoveButtonProps {
  readonly projectId: ProjectId;
  readonly stage: StageGlance;
  readonly look: ButtonLook;
  readonly isBusy: boolean;
  readonly onMove: (stageId: StageId, to: StageState) => void;
}

/** The next move of a stage: done here if one press is enough, else a link to the stage's page. */
export function StageMoveButton({ projectId, stage, look, isBusy, onMove }: StageMoveButtonProps) {
  const isSmall = look !== 'main';
  const move = stageMove(stage);
  if (move === null) return null;
  if (move.how === 'here' && stage.heldUpBy === '') {
    return (
      <Button look={look} isSmall={isSmall} disabled={isBusy} onClick={() => onMove(stage.id, move.to)}>
        {move.verb}
      </Button>
    );
  }
  return (
    <ButtonLink look={look} isSmall={isSmall} to={`/projects/${projectId}/stages/${stage.id}`}>
      {stage.heldUpBy === '' ? move.verb : 'See what it’s waiting for'}
    </ButtonLink>
  );
}
