import type { CuttingSetup } from '#core/domain/cutting-setup';
import type { ProjectId } from '#core/domain/ids';
import { useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { PrintSheetButton } from '#renderer/ui/page/print-sheet-button';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { nameOfFabric } from '../desk/to-buy';
import type { PlanStash } from '../planning/job-of-setup';
import type { PieceAtTable } from './table-piece';
import type { Ticking } from './use-ticking';

interface NextCutButtonProps {
  readonly piece: PieceAtTable | undefined;
  readonly ticking: Ticking;
  readonly setup: CuttingSetup;
  readonly stash: PlanStash;
}

/** The next cut, as the page’s main action; nothing when none can be made. */
export function NextCutButton({ piece, ticking, setup, stash }: NextCutButtonProps) {
  const pieceId = piece?.saved.pieceId ?? null;
  if (piece === undefined || pieceId === null) return null;
  const name = nameOfFabric(piece.saved.fabric, setup, stash);
  return (
    <Button look="main" disabled={ticking.isBusy} onClick={() => ticking.tick(pieceId, piece.next, true)}>
      {`Check off step ${String(piece.next + 1)} of ${name}`}
    </Button>
  );
}

/** Why a cut was refused, and a button to cut anyway when its fabric is only set aside for another project. */
export function RefusedCut({ ticking }: { readonly ticking: Ticking }) {
  return (
    <>
      <ProblemNotice problem={ticking.problem} />
      {ticking.cutAnyway !== null && (
        <div>
          <Button onClick={ticking.cutAnyway}>
            Cut it anyway: some of it is set aside for another project
          </Button>
        </div>
      )}
    </>
  );
}

interface TableActionsProps {
  readonly lead: ProjectId;
  readonly projectName: string;
  readonly onChangePlan: () => void;
}

/** Prints, changes or deletes the plan. */
export function TableActions({ lead, projectName, onChangePlan }: TableActionsProps) {
  const printing = useWrite('shell:print-sheet');
  const deleting = useWrite('cutting:delete');
  return (
    <>
      <PrintSheetButton printing={printing} sheet={`cutting/${lead}`} name={`${projectName}, cutting plan`}>
        Print the plan
      </PrintSheetButton>
      <Button isSmall onClick={onChangePlan}>
        Change the plan
      </Button>
      <Button
        look="quiet"
        isSmall
        disabled={deleting.isWriting}
        onClick={() => void deleting.write({ projectId: lead })}
      >
        Delete this cutting plan
      </Button>
    </>
  );
}
