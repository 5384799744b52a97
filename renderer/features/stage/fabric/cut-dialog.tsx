import type { ProjectFabric } from '#core/contract/stash';
import { CAUTIONS } from '#core/domain/cautions';
import type { FabricPieceId } from '#core/domain/ids';
import type { Stage } from '#core/domain/stage';
import { type Length, lengthSubtract } from '#core/units/length';
import { useRead, useWrite } from '#renderer/bridge/query';
import { bookedCut, type CutSizes, CutWidth, WHOLE_WIDTH } from '#renderer/shared/cut-size';
import { today } from '#renderer/text/dates';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { LengthField } from '#renderer/ui/fields/length-field';
import { TextField } from '#renderer/ui/fields/text-field';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import { Notice } from '#renderer/ui/page/notice';
import { LengthText } from '#renderer/ui/answers/typeset';
import { type KeptLeftover, LeftoverRows } from './leftover-rows';
import { type PieceToCut, piecesToCut } from './pieces-to-cut';
import { PiecePicker } from './piece-picker';
import layout from '#renderer/ui/page/layout.module.css';

interface CutDialogProps {
  readonly stage: Stage;
  /** What is set aside for this project; shown first, and free to cut. */
  readonly held: ProjectFabric['held'];
  readonly onClose: () => void;
}

/** Records a cut: which piece of fabric, how much of its length and width, and which leftovers are kept. */
export function CutDialog({ stage, held, onClose }: CutDialogProps) {
  const draft = useFormDraft(`cut ${stage.id}`);
  const [search, setSearch] = useDraftValue(draft, 'search', '');
  const [pieceId, setPieceId] = useDraftValue<FabricPieceId | null>(draft, 'pieceId', null);
  const [length, setLength] = useDraftValue<Length | null>(draft, 'length', null);
  const [sizes, setSizes] = useDraftValue<CutSizes>(draft, 'sizes', WHOLE_WIDTH);
  const [leftovers, setLeftovers] = useDraftValue<readonly KeptLeftover[]>(draft, 'leftovers', []);
  const [cutsAnyway, setCutsAnyway] = useDraftValue(draft, 'cutsAnyway', false);
  const { value: found } = useRead('fabric:list', { search, limit: 200 }, { keepsPrevious: true });
  const pieces = found === undefined ? null : piecesToCut(found.items, held);
  const chosen = pieces?.find(({ piece }) => piece.id === pieceId) ?? null;
  const saving = useDialogSave(useWrite('ledger:cut'), onClose, draft);
  const isWholeWidth = sizes.width === null || sizes.width === chosen?.piece.width;
  const isHeldByOthers =
    saving.problem?.code === 'short-of-fabric' && saving.problem.asked <= saving.problem.there;
  const record = () => {
    if (chosen === null || length === null) return;
    const booked = isWholeWidth
      ? { length, leftovers: measuredLeftovers(leftovers) }
      : bookedCut(chosen.piece, length, sizes);
    saving.save({
      pieceId: chosen.piece.id,
      projectId: stage.projectId,
      stageId: stage.id,
      ...booked,
      knowingly: cutsAnyway,
      on: today(),
      note: '',
    });
  };
  return (
    <DialogForm
      draft={draft}
      title="Record a cut"
      verb="Record cut"
      saving={saving}
      canSave={chosen !== null}
      onSave={record}
      onClose={onClose}
      isWide
      className={layout['pair']}
      before={
        <FindPiece
          search={search}
          onSearch={setSearch}
          pieces={pieces}
          chosen={pieceId}
          onChoose={setPieceId}
        />
      }
      after={<Notice kind="caution">{CAUTIONS.rotaryBlade}</Notice>}
    >
      <LengthField
        label="How long a cut"
        help="Along the piece, such as 9 1/2 in or 1/4 yd."
        value={length}
        onCommit={setLength}
      />
      {chosen !== null && <CutWidth piece={chosen.piece} length={length} sizes={sizes} onChange={setSizes} />}
      {chosen !== null && length !== null && isWholeWidth && (
        <p className={layout['quiet']}>
          <LengthText length={lengthSubtract(chosen.piece.there, length)} /> will be left of this piece.
        </p>
      )}
      {isWholeWidth && (
        <div className={layout['whole']}>
          <LeftoverRows leftovers={leftovers} onChange={setLeftovers} />
        </div>
      )}
      {isHeldByOthers && (
        <div className={layout['whole']}>
          <Checkbox
            label="Cut it anyway: some of this is set aside for another project"
            isChecked={cutsAnyway}
            onChange={setCutsAnyway}
          />
        </div>
      )}
    </DialogForm>
  );
}

interface FindPieceProps {
  readonly search: string;
  readonly onSearch: (search: string) => void;
  /** Null until the stash is read. */
  readonly pieces: readonly PieceToCut[] | null;
  readonly chosen: FabricPieceId | null;
  readonly onChoose: (piece: FabricPieceId) => void;
}

/** A search of the stash, and the pieces found to choose from. */
function FindPiece({ search, onSearch, pieces, chosen, onChoose }: FindPieceProps) {
  return (
    <>
      <TextField
        label="Find the fabric"
        help="Any words: name, color, print, place."
        value={search}
        onChange={onSearch}
        autoFocus
      />
      {pieces !== null && (
        <PiecePicker pieces={pieces} isSearch={search.trim() !== ''} chosen={chosen} onChoose={onChoose} />
      )}
    </>
  );
}

/** The leftovers with both sides entered. */
function measuredLeftovers(leftovers: readonly KeptLeftover[]) {
  return leftovers.flatMap(({ width, length }) =>
    width === null || length === null ? [] : [{ width, length }],
  );
}
