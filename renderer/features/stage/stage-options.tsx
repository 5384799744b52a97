import { isOver, type Stage } from '#core/domain/stage';
import { stageKindRecord } from '#core/domain/stage-kinds';
import { useWrite } from '#renderer/bridge/query';
import { useIsCutSettled } from '#renderer/shared/unsettled-facts';
import { Button } from '#renderer/ui/page/button';
import layout from '#renderer/ui/page/layout.module.css';
import { PrintSheetButton } from '#renderer/ui/page/print-sheet-button';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';

/** The quieter actions of a stage: skip it, set it back to planned, print the template of the hole. */
export function StageOptions({ stage }: { readonly stage: Stage }) {
  const moving = useWrite('stage:move');
  return (
    <>
      {stage.state !== 'planned' && (
        <Button
          look="quiet"
          isSmall
          disabled={moving.isWriting}
          onClick={() => void moving.write({ stageId: stage.id, to: 'planned' })}
        >
          {stage.state === 'skipped' ? 'Don’t skip this stage' : 'Set back to not started'}
        </Button>
      )}
      {!isOver(stage) && (
        <Button
          look="quiet"
          isSmall
          disabled={moving.isWriting}
          onClick={() => void moving.write({ stageId: stage.id, to: 'skipped' })}
        >
          Skip this stage
        </Button>
      )}
      {stageKindRecord(stage.kind).usesHoleTemplate && <TemplateButtons stage={stage} />}
      <ProblemNotice problem={moving.problem} />
    </>
  );
}

/** Prints the hole at true size, in full or as a quarter for fabric folded twice. */
function TemplateButtons({ stage }: { readonly stage: Stage }) {
  const printing = useWrite('shell:print-sheet');
  const quarter = useWrite('shell:print-sheet');
  const sheet = `center-template/${stage.projectId}`;
  const isSettled = useIsCutSettled(stage.projectId);
  if (isSettled === undefined) return null;
  if (!isSettled) {
    return <span className={layout['quiet']}>The template can be printed once the hole is settled.</span>;
  }
  return (
    <>
      <PrintSheetButton printing={printing} sheet={sheet} name="Template of the hole" look="quiet">
        Print the template
      </PrintSheetButton>
      <PrintSheetButton
        printing={quarter}
        sheet={sheet}
        parameters={{ part: 'quarter' }}
        name="Template of the hole, a quarter"
        look="quiet"
      >
        Print a quarter template
      </PrintSheetButton>
    </>
  );
}
