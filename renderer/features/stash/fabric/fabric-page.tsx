import { useState } from 'react';
import { useLocation, useNavigate } from 'react-router';
import type { FabricPage as OpenedFabric } from '#core/contract/stash';
import type { FabricId } from '#core/domain/ids';
import { useRead, useWrite } from '#renderer/bridge/query';
import { LabelsDialog } from '#renderer/features/stash/labels-dialog';
import { Button } from '#renderer/ui/page/button';
import { classes } from '#renderer/ui/base/classes';
import layout from '#renderer/ui/page/layout.module.css';
import { Notice } from '#renderer/ui/page/notice';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { BuyDialog } from './buy-dialog';
import { ChangeFabricDialog } from './change-fabric-dialog';
import { FabricFacts } from './fabric-facts';
import { FabricLedger } from './fabric-ledger';
import { FabricPieces } from './fabric-pieces';
import styles from './fabric.module.css';

interface FabricPageProps {
  readonly fabricId: FabricId;
}

/** One fabric: its details on the left, its pieces and ledger on the right. */
export function FabricPage({ fabricId }: FabricPageProps) {
  const { value: opened, problem } = useRead('fabric:open', { fabricId });
  const back = useBack();
  if (opened !== undefined) return <OpenFabric opened={opened} />;
  return (
    <Page title="Fabric" back={back}>
      <ProblemNotice problem={problem} />
    </Page>
  );
}

type OpenDialog = 'buy' | 'change' | 'labels' | null;

function OpenFabric({ opened }: { readonly opened: OpenedFabric }) {
  const { fabric, ledger } = opened;
  const [dialog, setDialog] = useState<OpenDialog>(null);
  const deleting = useWrite('fabric:delete');
  const navigate = useNavigate();
  const back = useBack();
  const remove = async () => {
    const answer = await deleting.write({ fabricId: fabric.id });
    if (answer.ok) void navigate(back.to);
  };
  const close = () => setDialog(null);
  const isInUse = deleting.problem?.code === 'in-use' && ledger.some((booking) => !booking.isUndone);
  return (
    <Page
      title={fabric.name}
      under={[fabric.colorWords, fabric.print].filter((words) => words !== '').join(' · ')}
      back={back}
      action={
        <Button look="main" onClick={() => setDialog('buy')}>
          {ledger.length === 0 ? 'Add a piece' : 'Add another piece'}
        </Button>
      }
      aside={
        <>
          {opened.areaThere > 0 && <Button onClick={() => setDialog('labels')}>Labels</Button>}
          <Button onClick={() => setDialog('change')}>Change</Button>
          <Button disabled={deleting.isWriting} onClick={() => void remove()}>
            Delete
          </Button>
        </>
      }
    >
      {isInUse ? (
        <div role="alert">
          <Notice kind="warning" title="Not deleted">
            “{fabric.name}” still has ledger entries, so it can’t be deleted. Undo them first, or just leave a
            used-up fabric where it is.
          </Notice>
        </div>
      ) : (
        <ProblemNotice problem={deleting.problem} />
      )}
      <div className={classes(layout['spread'], styles['columns'])}>
        <FabricFacts fabric={fabric} />
        <div className={layout['leaf']}>
          <FabricPieces opened={opened} />
          <FabricLedger opened={opened} />
        </div>
      </div>
      {dialog === 'buy' && <BuyDialog fabric={fabric} onClose={close} />}
      {dialog === 'labels' && <LabelsDialog of={{ of: 'fabric', fabricId: fabric.id }} onClose={close} />}
      {dialog === 'change' && <ChangeFabricDialog fabric={fabric} onClose={close} />}
    </Page>
  );
}

/** The way back to the list with its search. */
function useBack() {
  const params = new URLSearchParams(useLocation().search);
  for (const own of ['piece', 'use']) params.delete(own);
  return { to: params.size === 0 ? '/stash' : `/stash?${params.toString()}`, words: 'Stash' };
}
