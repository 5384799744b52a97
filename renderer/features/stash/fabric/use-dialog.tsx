import type { ProjectGlance } from '#core/contract/projects';
import type { FabricPage } from '#core/contract/stash';
import { CAUTIONS } from '#core/domain/cautions';
import type { RunningClock } from '#core/domain/clock';
import type { ProjectId } from '#core/domain/ids';
import { currentStage } from '#core/domain/stage';
import type { FabricPiece } from '#core/domain/stash';
import { measureOfKind } from '#core/domain/stash-kind';
import { codeOfPiece, formatPieceCode } from '#core/stash/piece-code';
import { type Length, lengthFromUnits } from '#core/units/length';
import { useRead, useWrite } from '#renderer/bridge/query';
import { AmountField } from '#renderer/features/stash/amount-field';
import { bookedAmount, freeAmount, pieceStock } from '#renderer/features/stash/fabric-words';
import { useKindName } from '#renderer/features/stash/kind-name';
import { ProjectSelect } from '#renderer/features/stash/project-select';
import { bookedCut, type CutSizes, CutWidth, WHOLE_WIDTH } from '#renderer/shared/cut-size';
import { today } from '#renderer/text/dates';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { Typeset } from '#renderer/ui/answers/typeset';
import { useDisplay } from '#renderer/ui/base/display';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';
import { Notice } from '#renderer/ui/page/notice';
import { holdsOf } from './holds';
import { proposedProject } from './use-proposal';

interface UseDialogProps {
  readonly opened: FabricPage;
  readonly piece: FabricPiece;
  readonly onClose: () => void;
}

/** Records a use of a piece of fabric. It proposes the project, and the amount if some is set aside for that project. */
export function UseDialog(props: UseDialogProps) {
  const running = useRead('clock:state', {}).value;
  const projects = useRead('project:list', { archived: false }).value;
  // Drawn once everything is read, so that nothing moves while the maker types.
  if (running === undefined || projects === undefined) return null;
  return <UseForm {...props} running={running} projects={projects.items} />;
}

interface UseFormProps extends UseDialogProps {
  readonly running: RunningClock | null;
  readonly projects: readonly ProjectGlance[];
}

function UseForm(props: UseFormProps) {
  const { opened, piece, onClose } = props;
  const use = useUse(props);
  return (
    <DialogForm
      draft={use.draft}
      title={`Use “${opened.fabric.name}”`}
      saving={use.saving}
      verb="Record the use"
      canSave={use.projectId !== null}
      onSave={use.save}
      onClose={onClose}
      className={layout['stack']}
      before={<PieceLine piece={piece} />}
      after={measureOfKind(piece.kind) !== 'count' && <Notice kind="caution">{CAUTIONS.rotaryBlade}</Notice>}
    >
      <ProjectSelect projects={props.projects} value={use.projectId} onChange={use.setProjectId} />
      <HowMuch piece={piece} held={use.held} value={use.amount} onCommit={use.setTyped} />
      <CutWidth piece={piece} length={use.amount} sizes={use.sizes} onChange={use.setSizes} />
      {use.isShort && (
        <Checkbox
          label="Use it anyway: some of this is set aside for another project"
          isChecked={use.isKnowing}
          onChange={use.setIsKnowing}
        />
      )}
    </DialogForm>
  );
}

/** The state of the form: the project, the amount, and whether to use what others set aside. */
function useUse({ opened: { ledger }, piece, running, projects, onClose }: UseFormProps) {
  const draft = useFormDraft(`use ${piece.id}`);
  const [projectId, setProjectId] = useDraftValue<ProjectId | null>(draft, 'projectId', () => {
    const open = projects.map(({ project }) => project.id);
    return proposedProject({ open, running, ledger, pieceId: piece.id });
  });
  const [typed, setTyped] = useDraftValue<Length | null>(draft, 'typed', null);
  const [sizes, setSizes] = useDraftValue<CutSizes>(draft, 'sizes', WHOLE_WIDTH);
  const [isKnowing, setIsKnowing] = useDraftValue(draft, 'isKnowing', false);
  const saving = useDialogSave(useWrite('ledger:cut'), onClose, draft);
  const held = holdsOf(ledger, piece.id).find((hold) => hold.projectId === projectId)?.held ?? 0;
  const amount = typed ?? (held > 0 ? lengthFromUnits(Math.min(held, piece.there)) : null);
  const isShort = saving.problem?.code === 'short-of-fabric' && saving.problem.asked <= saving.problem.there;
  const save = () => {
    if (amount === null || projectId === null) return;
    const stages = projects.find(({ project }) => project.id === projectId)?.stages ?? [];
    saving.save({
      pieceId: piece.id,
      projectId,
      stageId: running?.projectId === projectId ? running.stageId : (currentStage(stages)?.id ?? null),
      ...bookedCut(piece, amount, sizes),
      knowingly: isKnowing,
      on: today(),
      note: '',
    });
  };
  return {
    draft,
    projectId,
    setProjectId,
    held,
    amount,
    setTyped,
    sizes,
    setSizes,
    isShort,
    isKnowing,
    setIsKnowing,
    saving,
    save,
  };
}

function PieceLine({ piece }: Pick<UseDialogProps, 'piece'>) {
  const { length } = useDisplay();
  const kind = useKindName(piece);
  return (
    <p className={layout['quiet']}>
      <Typeset text={`${kind}, ${pieceStock({ ...piece, length: piece.there }, length)}`} />
      {` · ${formatPieceCode(codeOfPiece(piece.id))}`}
    </p>
  );
}

interface HowMuchProps extends Pick<UseDialogProps, 'piece'> {
  /** What is set aside of the piece for the chosen project, 1/320 mm. */
  readonly held: number;
  readonly value: Length | null;
  readonly onCommit: (length: Length | null) => void;
}

function HowMuch({ piece, held, value, onCommit }: HowMuchProps) {
  const { length } = useDisplay();
  const heldWords =
    held > 0 ? `${bookedAmount({ ...piece, length: lengthFromUnits(held) }, length)} set aside for it, ` : '';
  return (
    <AmountField
      piece={piece}
      label={piece.unitLength === null ? 'How long a cut' : 'How many'}
      help={`${heldWords}${freeAmount(piece, length)} free.`}
      value={value}
      autoFocus
      minimum={1}
      maximum={piece.there}
      onCommit={onCommit}
    />
  );
}
