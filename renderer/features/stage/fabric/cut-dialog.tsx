import { useState } from 'react';
import type { FabricOfProject } from '#core/contract/stash';
import type { FabricPieceId } from '#core/domain/ids';
import type { Stage } from '#core/domain/stage';
import { type Length, lengthSubtract } from '#core/units/length';
import { useRead, useWrite } from '#renderer/bridge/query';
import { today } from '#renderer/text/dates';
import { Button } from '#renderer/ui/page/button';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { Dialog } from '#renderer/ui/page/dialog';
import { Form } from '#renderer/ui/fields/form';
import { LengthField } from '#renderer/ui/fields/length-field';
import { Notice } from '#renderer/ui/page/notice';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';
import { LengthText } from '#renderer/ui/answers/typeset';
import { type KeptLeftover, LeftoverRows } from './leftover-rows';
import { pieceOptions } from './piece-option';
import { PiecePicker } from './piece-picker';
import styles from '../stage.module.css';

interface CutDialogProps {
  readonly stage: Stage;
  /** What this project has set aside: it stands first, and is free to it. */
  readonly held: FabricOfProject['held'];
  readonly onClose: () => void;
}

/** Books a cut: which piece of fabric, how much across its whole width, and what of that is kept. */
export function CutDialog({ stage, held, onClose }: CutDialogProps) {
  const [search, setSearch] = useState('');
  const [pieceId, setPieceId] = useState<FabricPieceId | null>(null);
  const [length, setLength] = useState<Length | null>(null);
  const [leftovers, setLeftovers] = useState<readonly KeptLeftover[]>([]);
  const [isKnowing, setIsKnowing] = useState(false);
  const { value: found } = useRead('fabric:list', { search, limit: 200 }, { keepsPrevious: true });
  const cutting = useWrite('ledger:cut');
  const options = pieceOptions(found?.items ?? [], held);
  const chosen = options.find(({ piece }) => piece.id === pieceId) ?? null;
  const isShort =
    cutting.problem?.code === 'short-of-fabric' && cutting.problem.asked <= cutting.problem.there;
  const book = async () => {
    if (chosen === null || length === null) return;
    const answer = await cutting.write({
      pieceId: chosen.piece.id,
      projectId: stage.projectId,
      stageId: stage.id,
      length,
      leftovers: leftovers.flatMap(({ width, length: long }) =>
        width === null || long === null ? [] : [{ width, length: long }],
      ),
      knowingly: isKnowing,
      on: today(),
      note: '',
    });
    if (answer.ok) onClose();
  };
  return (
    <Dialog
      title="Book a cut"
      isWide
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Not yet</Button>
          <Button look="main" type="submit" form="cut" disabled={chosen === null || cutting.isWriting}>
            Book the cut
          </Button>
        </>
      }
    >
      <TextField
        label="Find the fabric"
        help="Any words: name, color, print, shelf."
        value={search}
        onChange={setSearch}
        autoFocus
      />
      {found !== undefined && (
        <PiecePicker
          options={options}
          isSearch={search.trim() !== ''}
          chosen={pieceId}
          onChoose={setPieceId}
        />
      )}
      <Form id="cut" className={styles['form']} onSubmit={() => void book()}>
        <LengthField
          label="Cut across the whole width"
          help="Length taken off the piece, such as 9 1/2 in or 1/4 yd."
          value={length}
          onCommit={setLength}
        />
        {chosen !== null && length !== null && (
          <p className={styles['quiet']}>
            <LengthText length={lengthSubtract(chosen.piece.there, length)} /> will be left of this piece.
          </p>
        )}
        <div className={styles['whole']}>
          <LeftoverRows leftovers={leftovers} onChange={setLeftovers} />
        </div>
        {isShort && (
          <div className={styles['whole']}>
            <Checkbox
              label="Cut it all the same: some of this is set aside for another project"
              isChecked={isKnowing}
              onChange={setIsKnowing}
            />
          </div>
        )}
      </Form>
      <ProblemNotice problem={cutting.problem} />
      <Notice kind="caution">
        Blade closed whenever it is put down; cut away from yourself, hand flat on the ruler and clear of its
        edge.
      </Notice>
    </Dialog>
  );
}
