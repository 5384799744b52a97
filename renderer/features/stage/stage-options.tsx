import type { Stage } from '#core/domain/stage';
import { useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { PrintSheetButton } from '#renderer/ui/page/print-sheet-button';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';

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
      {(stage.kind === 'center-cut' || stage.kind === 'inner-binding') && <TemplateButtons stage={stage} />}
      <ProblemNotice problem={moving.problem} />
    </>
  );
}

/** The hole at true size on paper, whole or as the quarter for a piece folded twice. */
function TemplateButtons({ stage }: { readonly stage: Stage }) {
  const printing = useWrite('shell:print-sheet');
  const quarter = useWrite('shell:print-sheet');
  const sheet = `center-template/${stage.projectId}`;
  return (
    <>
      <PrintSheetButton printing={printing} sheet={sheet} name="Template of the hole" look="quiet">
        Print the template
      </PrintSheetButton>
      <PrintSheetButton
        printing={quarter}
        sheet={sheet}
        asked={{ part: 'quarter' }}
        name="Template of the hole, a quarter"
        look="quiet"
      >
        Print a quarter of it
      </PrintSheetButton>
    </>
  );
}
