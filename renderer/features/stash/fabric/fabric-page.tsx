import { useState } from 'react';
import { useLocation, useNavigate } from 'react-router';
import type { FabricPage as OpenedFabric } from '#core/contract/stash';
import type { FabricId } from '#core/domain/ids';
import { useRead, useWrite } from '#renderer/bridge/query';
import { LabelsDialog } from '#renderer/features/stash/labels-dialog';
import { Button } from '#renderer/ui/page/button';
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

/** One fabric: left what it is, right its pieces and every step of its ledger. */
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

type Asked = 'buy' | 'change' | 'labels' | null;

function OpenFabric({ opened }: { readonly opened: OpenedFabric }) {
  const { fabric, ledger } = opened;
  const [asked, setAsked] = useState<Asked>(null);
  const deleting = useWrite('fabric:delete');
  const navigate = useNavigate();
  const back = useBack();
  const remove = async () => {
    const answer = await deleting.write({ fabricId: fabric.id });
    if (answer.ok) void navigate(back.to);
  };
  const close = () => setAsked(null);
  const isInUse = deleting.problem?.code === 'in-use' && ledger.some((booking) => !booking.isTakenBack);
  return (
    <Page
      title={fabric.name}
      under={[fabric.colorWords, fabric.print].filter((words) => words !== '').join(' · ')}
      back={back}
      action={
        <Button look="main" onClick={() => setAsked('buy')}>
          {ledger.length === 0 ? 'Add a piece' : 'Bought more'}
        </Button>
      }
      aside={
        <>
          {opened.areaThere > 0 && <Button onClick={() => setAsked('labels')}>Labels</Button>}
          <Button onClick={() => setAsked('change')}>Change</Button>
          <Button disabled={deleting.isWriting} onClick={() => void remove()}>
            Delete
          </Button>
        </>
      }
    >
      {isInUse ? (
        <div role="alert">
          <Notice kind="warning" title="Not done">
            “{fabric.name}” stays as long as anything in its ledger stands. Take everything back first; a
            fabric that is used up can simply stay.
          </Notice>
        </div>
      ) : (
        <ProblemNotice problem={deleting.problem} />
      )}
      <div className={styles['spread']}>
        <FabricFacts fabric={fabric} />
        <div className={styles['leaf']}>
          <FabricPieces opened={opened} />
          <FabricLedger opened={opened} />
        </div>
      </div>
      {asked === 'buy' && <BuyDialog fabric={fabric} onClose={close} />}
      {asked === 'labels' && <LabelsDialog of={{ of: 'fabric', fabricId: fabric.id }} onClose={close} />}
      {asked === 'change' && <ChangeFabricDialog fabric={fabric} onClose={close} />}
    </Page>
  );
}

/** Back to the list as it was searched. */
function useBack() {
  const params = new URLSearchParams(useLocation().search);
  for (const own of ['piece', 'use']) params.delete(own);
  return { to: params.size === 0 ? '/stash' : `/stash?${params.toString()}`, words: 'Stash' };
}
