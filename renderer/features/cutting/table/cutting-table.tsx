import { useMemo, useState } from 'react';
import type { CuttingPlanPage } from '#core/contract/cutting';
import type { JobPlan } from '#core/cutting/tree/cutting-job';
import { planOfKept } from '#core/cutting/tree/kept-plan';
import { CAUTIONS } from '#core/domain/cautions';
import type { CuttingSetup } from '#core/domain/cutting-setup';
import type { ProjectId } from '#core/domain/ids';
import { useWrite } from '#renderer/bridge/query';
import { counted } from '#renderer/text/cut-words';
import { today } from '#renderer/text/dates';
import { PatchKey } from '#renderer/ui/drawings/patch-key';
import { Notice } from '#renderer/ui/page/notice';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { ToBuy } from '../desk/to-buy';
import { Unplaced } from '../desk/unplaced';
import type { PlanStash } from '../planning/job-of-setup';
import { changesSince, type PlanChange } from '../planning/plan-age';
import { usePlanStash } from '../planning/use-plan-stash';
import { purposeOf, useWorkAtHand, type WorkAtHand } from '../planning/use-work-at-hand';
import { ChangedNotice } from './changed-notice';
import { NextCutButton, RefusedCut, TableActions } from './table-actions';
import { type PieceAtTable, piecesAtTable, TablePiece } from './table-piece';
import { useTicking } from './use-ticking';
import styles from './table.module.css';

interface CuttingTableProps {
  /** The setup of the saved plan, with fabrics that have come into the stash since. */
  readonly start: CuttingSetup;
  readonly projectName: string;
  readonly saved: CuttingPlanPage;
  readonly onChangePlan: () => void;
}

/** The saved plan for cutting: every piece drawn, with its cuts in order to check off. */
export function CuttingTable({ start, projectName, saved, onChangePlan }: CuttingTableProps) {
  const { setup } = saved.plan;
  const [lead] = setup.projects;
  const work = useWorkAtHand(setup.projects);
  const stash = usePlanStash(setup, work, saved);
  if (lead === undefined || work === undefined || stash === undefined) return null;
  return (
    <TableWithStash
      saved={saved}
      stash={stash}
      work={work}
      lead={lead}
      projectName={projectName}
      changes={changesSince(saved, { setup: start, stash, sources: work.sources })}
      onChangePlan={onChangePlan}
    />
  );
}

interface TableWithStashProps extends Omit<CuttingTableProps, 'start'> {
  readonly stash: PlanStash;
  readonly work: WorkAtHand;
  /** The project the plan is saved with. */
  readonly lead: ProjectId;
  /** Why the plan is out of date; empty when it is not. */
  readonly changes: readonly PlanChange[];
}

function TableWithStash(props: TableWithStashProps) {
  const { saved, stash, work, lead, projectName, changes, onChangePlan } = props;
  const { setup } = saved.plan;
  const [spotlight, setSpotlight] = useState<string | null>(null);
  const ticking = useTicking(lead);
  const plan = useMemo(() => planOfKept(saved), [saved]);
  const pieces = piecesAtTable(saved, plan);
  const next = pieces.find((piece) => piece.next >= 0 && piece.saved.pieceId !== null);
  const toBuy = <ToBuyForPlan plan={plan} setup={setup} stash={stash} lead={lead} />;
  return (
    <Page
      title="Cut by the plan"
      under="Each step you check off takes its fabric out of your stash and adds the leftovers."
      back={{ to: `/projects/${lead}`, words: projectName }}
      action={<NextCutButton piece={next} ticking={ticking} setup={setup} stash={stash} />}
      aside={<TableActions lead={lead} projectName={projectName} onChangePlan={onChangePlan} />}
    >
      <div className={styles['table']}>
        {changes.length > 0 && <ChangedNotice changes={changes} onChangePlan={onChangePlan} />}
        <Progress pieces={pieces} />
        <RefusedCut ticking={ticking} />
        <Notice kind="caution">
          <p>{CAUTIONS.rotaryBlade}</p>
          <p>{CAUTIONS.usedBlades}</p>
        </Notice>
        <PatchKey lines={setup.lines} className={styles['key']} />
        <Unplaced plan={plan} setup={setup} />
        {/* What can be cut now comes first; when nothing can, shopping does. */}
        {next === undefined && toBuy}
        <ol className={styles['pieces']}>
          {pieces.map((piece) => (
            <TablePiece
              key={`${piece.saved.fabric} ${piece.saved.pieceId ?? 'new'}`}
              piece={piece}
              setup={setup}
              stash={stash}
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

function Progress({ pieces }: { readonly pieces: readonly PieceAtTable[] }) {
  const all = pieces.reduce((sum, { steps }) => sum + steps.length, 0);
  const done = pieces.reduce((sum, piece) => sum + piece.done.size, 0);
  return (
    <p className={styles['progress']} role="status">
      {done === all && all > 0
        ? `All ${counted(all, 'step')} are done.`
        : `${String(done)} of ${counted(all, 'step')} done`}
    </p>
  );
}

interface ToBuyForPlanProps {
  readonly plan: JobPlan;
  readonly setup: CuttingSetup;
  readonly stash: PlanStash;
  readonly lead: ProjectId;
}

/** What the plan still needs to buy, with buttons to record a purchase; nothing when all is bought. */
function ToBuyForPlan({ plan, setup, stash, lead }: ToBuyForPlanProps) {
  const buying = useWrite('cutting:buy');
  if (plan.purchases.length === 0) return null;
  return (
    <>
      <ProblemNotice problem={buying.problem} />
      <ToBuy
        plan={plan}
        setup={setup}
        stash={stash}
        isBusy={buying.isWriting}
        onBought={(fabric, costMinor) =>
          void buying.write({ projectId: lead, fabric, costMinor, on: today() })
        }
      />
    </>
  );
}
