import { useMemo, useState } from 'react';
import type { CuttingPlanPage } from '#core/contract/cutting';
import { planOfKept } from '#core/cutting/tree/kept-plan';
import type { KeptPiece } from '#core/domain/cutting-plan';
import type { CuttingSetup } from '#core/domain/cutting-setup';
import type { ProjectId } from '#core/domain/ids';
import { useWrite } from '#renderer/bridge/query';
import { today } from '#renderer/text/dates';
import { counted } from '#renderer/text/cut-words';
import { Button } from '#renderer/ui/page/button';
import { Notice } from '#renderer/ui/page/notice';
import { Page } from '#renderer/ui/page/page';
import { PatchKey } from '#renderer/ui/drawings/patch-key';
import { PrintSheetButton } from '#renderer/ui/page/print-sheet-button';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { ChangedNotice } from './changed-notice';
import type { Shelf } from '../planning/job-of-setup';
import { changesSince } from '../planning/plan-age';
import { piecesAtTable, TablePiece, type PieceAtTable } from './table-piece';
import { nameOfFabric, ToBuy } from '../desk/to-buy';
import { Unplaced } from '../desk/unplaced';
import { useShelf } from '../planning/use-shelf';
import { type Ticking, useTicking } from './use-ticking';
import { purposeOf, useWorkAtHand, type WorkAtHand } from '../planning/use-work-at-hand';
import styles from './table.module.css';

interface CuttingTableProps {
  /** What the plan was asked, with fabrics that have come into the stash since. */
  readonly start: CuttingSetup;
  readonly projectName: string;
  readonly kept: CuttingPlanPage;
  readonly onPlanAnew: () => void;
}

/** The plan at the cutting table: every piece drawn, and every cut of it in its order, to tick off. */
export function CuttingTable({ start, projectName, kept, onPlanAnew }: CuttingTableProps) {
  const { setup } = kept.plan;
  const [lead] = setup.projects;
  const work = useWorkAtHand(setup.projects);
  const shelf = useShelf(setup, work, kept);
  if (lead === undefined || work === undefined || shelf === undefined) return null;
  const changes = changesSince(kept, { setup: start, shelf, sources: work.sources });
  return (
    <TableOf
      {...{ kept, shelf, work, lead, projectName, onPlanAnew }}
      notice={changes.length > 0 && <ChangedNotice changes={changes} onPlanAnew={onPlanAnew} />}
    />
  );
}

interface TableOfProps extends Pick<CuttingTableProps, 'kept' | 'projectName' | 'onPlanAnew'> {
  readonly shelf: Shelf;
  readonly work: WorkAtHand;
  readonly lead: ProjectId;
  readonly notice: React.ReactNode;
}

function TableOf({ kept, shelf, work, lead, projectName, onPlanAnew, notice }: TableOfProps) {
  const { setup } = kept.plan;
  const [spotlight, setSpotlight] = useState<string | null>(null);
  const ticking = useTicking(lead);
  const printing = useWrite('shell:print-sheet');
  const buying = useWrite('cutting:buy');
  const plan = useMemo(() => planOfKept(kept), [kept]);
  const pieces = piecesAtTable(kept, plan);
  const [all, done] = [
    pieces.reduce((sum, { steps }) => sum + steps.length, 0),
    pieces.reduce((sum, piece) => sum + piece.done.size, 0),
  ];
  const next = pieces.find((piece) => piece.next >= 0 && piece.kept.pieceId !== null);
  // What can be cut now stands first; where nothing can, it is what has to be bought.
  const toBuy = plan.purchases.length > 0 && (
    <>
      <ProblemNotice problem={buying.problem} />
      <ToBuy
        {...{ plan, setup, shelf }}
        isBusy={buying.isWriting}
        onBought={(fabric, costMinor) =>
          void buying.write({ projectId: lead, fabric, costMinor, on: today() })
        }
      />
    </>
  );
  return (
    <Page
      title="Cut by the plan"
      under="Each tick books what was cut, and its leftovers go on the shelf."
      back={{ to: `/projects/${lead}`, words: projectName }}
      action={
        <NextCut
          piece={next}
          ticking={ticking}
          nameOf={(piece) => nameOfFabric(piece.fabric, setup, shelf)}
        />
      }
      aside={
        <>
          <PrintSheetButton
            printing={printing}
            sheet={`cutting/${lead}`}
            name={`${projectName}, cutting plan`}
          >
            Print the plan
          </PrintSheetButton>
          <Button isSmall onClick={onPlanAnew}>
            Change the plan
          </Button>
          <PutAway lead={lead} />
        </>
      }
    >
      <div className={styles['table']}>
        {notice}
        <p className={styles['progress']} role="status">
          {done === all && all > 0
            ? `All ${counted(all, 'step')} are done.`
            : `${String(done)} of ${counted(all, 'step')} done`}
        </p>
        <Refused ticking={ticking} />
        <Notice kind="caution">
          A fresh blade, closed whenever it is put down. Cut away from yourself, hand flat on the ruler and
          clear of its edge; keep the cutter from children and pets.
        </Notice>
        <PatchKey lines={setup.lines} className={styles['key']} />
        <Unplaced plan={plan} setup={setup} />
        {next === undefined && toBuy}
        <ol className={styles['pieces']}>
          {pieces.map((piece) => (
            <TablePiece
              key={`${piece.kept.fabric} ${piece.kept.pieceId ?? 'new'}`}
              piece={piece}
              setup={setup}
              shelf={shelf}
              ticking={ticking}
              goesTo={(line) => purposeOf(work, line)}
              spotlight={spotlight}
              onSpotlight={setSpotlight}
            />
          ))}
        </ol>
        {next !== undefined && toBuy}
      </div>
    </Page>
  );
}

interface NextCutProps {
  readonly piece: PieceAtTable | undefined;
  readonly ticking: Ticking;
  readonly nameOf: (piece: KeptPiece) => string;
}

/** The cut whose turn it is, as the page's one action. */
function NextCut({ piece, ticking, nameOf }: NextCutProps) {
  const pieceId = piece?.kept.pieceId ?? null;
  if (piece === undefined || pieceId === null) return null;
  return (
    <Button look="main" disabled={ticking.isBusy} onClick={() => ticking.tick(pieceId, piece.next, true)}>
      {`Tick step ${String(piece.next + 1)} of ${nameOf(piece.kept)}`}
    </Button>
  );
}

function Refused({ ticking }: { readonly ticking: Ticking }) {
  return (
    <>
      <ProblemNotice problem={ticking.problem} />
      {ticking.cutAllTheSame !== null && (
        <div>
          <Button onClick={ticking.cutAllTheSame}>
            Cut it all the same: some of it is set aside for another piece
          </Button>
        </div>
      )}
    </>
  );
}

function PutAway({ lead }: { readonly lead: ProjectId }) {
  const removing = useWrite('cutting:remove');
  return (
    <Button
      look="quiet"
      isSmall
      disabled={removing.isWriting}
      onClick={() => void removing.write({ projectId: lead })}
    >
      Put the plan away
    </Button>
  );
}
