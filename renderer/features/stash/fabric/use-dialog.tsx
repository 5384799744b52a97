import { useState } from 'react';
import type { FabricPage } from '#core/contract/stash';
import type { ProjectGlance } from '#core/contract/projects';
import type { RunningClock } from '#core/domain/clock';
import type { ProjectId } from '#core/domain/ids';
import { currentStage } from '#core/domain/stage';
import type { FabricPiece } from '#core/domain/stash';
import { measureOfKind } from '#core/domain/stash-kind';
import { type Length, lengthFromUnits } from '#core/units/length';
import { codeOfPiece, formatPieceCode } from '#core/stash/piece-code';
import { useRead, useWrite } from '#renderer/bridge/query';
import { AmountField } from '#renderer/features/stash/amount-field';
import { amountBooked, amountFree, pieceStock } from '#renderer/features/stash/fabric-words';
import { useKindName } from '#renderer/features/stash/kind-name';
import styles from '#renderer/features/stash/stash.module.css';
import { today } from '#renderer/text/dates';
import { Button } from '#renderer/ui/page/button';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { Select } from '#renderer/ui/fields/choice';
import { Dialog } from '#renderer/ui/page/dialog';
import { useDisplay } from '#renderer/ui/base/display';
import { Form } from '#renderer/ui/fields/form';
import { Notice } from '#renderer/ui/page/notice';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { Typeset } from '#renderer/ui/answers/typeset';
import { holdsOf } from './holds';
import { proposedProject } from './use-proposal';

interface UseDialogProps {
  readonly opened: FabricPage;
  readonly piece: FabricPiece;
  readonly onClose: () => void;
}

/** Books a use of a piece. For whom is proposed, and how much where some is set aside: the rest is an amount and Enter. */
export function UseDialog(props: UseDialogProps) {
  const running = useRead('clock:state', {}).value;
  const projects = useRead('project:list', { archived: false }).value;
  // Nothing may move once the caret stands in the amount.
  if (running === undefined || projects === undefined) return null;
  return <UseForm {...props} running={running} projects={projects.items} />;
}

interface UseFormProps extends UseDialogProps {
  readonly running: RunningClock | null;
  readonly projects: readonly ProjectGlance[];
}

function UseForm({ opened, piece, running, projects, onClose }: UseFormProps) {
  const { fabric, ledger } = opened;
  const { length } = useDisplay();
  const kind = useKindName(piece);
  const [projectId, setProjectId] = useState<ProjectId | null>(() => {
    const open = projects.map(({ project }) => project.id);
    return proposedProject({ open, running, ledger, pieceId: piece.id });
  });
  const [typed, setTyped] = useState<Length | null>(null);
  const [isKnowing, setIsKnowing] = useState(false);
  const cutting = useWrite('ledger:cut');
  const held = holdsOf(ledger, piece.id).find((hold) => hold.projectId === projectId)?.held ?? 0;
  const amount = typed ?? (held > 0 ? lengthFromUnits(Math.min(held, piece.there)) : null);
  const isShort =
    cutting.problem?.code === 'short-of-fabric' && cutting.problem.asked <= cutting.problem.there;
  const heldWords =
    held > 0 ? `${amountBooked({ ...piece, length: lengthFromUnits(held) }, length)} set aside for it, ` : '';
  const book = async () => {
    if (amount === null || projectId === null) return;
    const stages = projects.find(({ project }) => project.id === projectId)?.stages ?? [];
    const stageId = running?.projectId === projectId ? running.stageId : (currentStage(stages)?.id ?? null);
    const booked = { pieceId: piece.id, projectId, stageId, length: amount, leftovers: [] };
    const answer = await cutting.write({ ...booked, knowingly: isKnowing, on: today(), note: '' });
    if (answer.ok) onClose();
  };
  return (
    <Dialog
      title={`Use “${fabric.name}”`}
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Not yet</Button>
          <Button look="main" type="submit" form="use" disabled={cutting.isWriting || projectId === null}>
            Book the use
          </Button>
        </>
      }
    >
      <p className={styles['quiet']}>
        <Typeset text={`${kind}, ${pieceStock({ ...piece, length: piece.there }, length)}`} />
        {` · ${formatPieceCode(codeOfPiece(piece.id))}`}
      </p>
      <Form id="use" className={styles['stack']} onSubmit={() => void book()}>
        {projectId === null ? (
          <p>There is no open piece to use it for. Begin one first.</p>
        ) : (
          <Select
            label="For which piece"
            value={projectId}
            options={projects.map(({ project }) => ({ value: project.id, words: project.name }))}
            onChange={setProjectId}
          />
        )}
        <AmountField
          piece={piece}
          label={piece.unitLength === null ? 'How much, across the whole width' : 'How many'}
          help={`${heldWords}${amountFree(piece, length)} free.`}
          value={amount}
          autoFocus
          minimum={1}
          maximum={piece.there}
          onCommit={setTyped}
        />
        {isShort && (
          <Checkbox
            label="Use it all the same: some of this is set aside for another project"
            isChecked={isKnowing}
            onChange={setIsKnowing}
          />
        )}
      </Form>
      <ProblemNotice problem={cutting.problem} />
      {measureOfKind(piece.kind) !== 'count' && (
        <Notice kind="caution">
          Blade closed whenever it is put down; cut away from yourself, hand flat on the ruler and clear of
          its edge.
        </Notice>
      )}
    </Dialog>
  );
}
