import { useState } from 'react';
import { assertNever } from '#core/assert-never';
import type { FabricPiece } from '#core/domain/stash';
import type { ProjectId } from '#core/domain/ids';
import { type Length, LENGTH_ZERO, lengthFromUnits } from '#core/units/length';
import { useRead, useWrite } from '#renderer/bridge/query';
import { AmountField } from '#renderer/features/stash/amount-field';
import { freeLength } from '#renderer/features/stash/fabric-words';
import styles from '#renderer/features/stash/stash.module.css';
import { today } from '#renderer/text/dates';
import { Button } from '#renderer/ui/page/button';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { Select } from '#renderer/ui/fields/choice';
import { DateField } from '#renderer/ui/fields/date-field';
import { Dialog } from '#renderer/ui/page/dialog';
import { Form } from '#renderer/ui/fields/form';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';
import type { Hold } from './holds';

/** What is to be booked of a piece. */
export type PieceStep =
  | { readonly kind: 'set-aside' | 'discard' | 'count'; readonly piece: FabricPiece }
  | { readonly kind: 'release'; readonly piece: FabricPiece; readonly hold: Hold };

interface StepWords {
  readonly title: string;
  readonly length: string;
  readonly help: string;
  readonly verb: string;
}

interface PieceStepDialogProps {
  readonly step: PieceStep;
  readonly onClose: () => void;
}

/** Asks how much, and for whom where that matters, and books it. It begins with all there is. */
export function PieceStepDialog({ step, onClose }: PieceStepDialogProps) {
  const most = mostOf(step);
  const [length, setLength] = useState<Length | null>(most);
  const [chosen, setChosen] = useState<ProjectId | null>(null);
  const [on, setOn] = useState<ReturnType<typeof today> | null>(today());
  const [note, setNote] = useState('');
  const [isKnowing, setIsKnowing] = useState(false);
  const isSetAside = step.kind === 'set-aside';
  const { value: projects } = useRead('project:list', { archived: false }, { isOn: isSetAside });
  const projectId = chosen ?? projects?.items[0]?.project.id ?? null;
  const booking = useBooking(step);
  const hasNobody = isSetAside && projects?.items.length === 0;
  const words = stepWords(step, step.piece.unitLength !== null);
  const book = async () => {
    if (length === null || (isSetAside && projectId === null)) return;
    const answer = await booking.write({ length, projectId, on: on ?? today(), note, isKnowing });
    if (answer.ok) onClose();
  };
  return (
    <Dialog
      title={words.title}
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Not yet</Button>
          <Button look="main" type="submit" form="piece-step" disabled={booking.isWriting || hasNobody}>
            {words.verb}
          </Button>
        </>
      }
    >
      <Form id="piece-step" className={styles['stack']} onSubmit={() => void book()}>
        {hasNobody && <p>There is no open piece to set it aside for. Begin one first.</p>}
        {isSetAside && projectId !== null && (
          <Select
            label="For which piece"
            value={projectId}
            options={(projects?.items ?? []).map(({ project }) => ({
              value: project.id,
              words: project.name,
            }))}
            onChange={setChosen}
          />
        )}
        <div className={styles['fields']}>
          <AmountField
            piece={step.piece}
            label={words.length}
            help={words.help}
            value={length}
            autoFocus
            minimum={step.kind === 'count' ? LENGTH_ZERO : 1}
            maximum={step.kind === 'count' || isSetAside ? undefined : most}
            onCommit={setLength}
          />
          <DateField label="On" value={on} onChange={setOn} />
        </div>
        <TextField label="Note" isOptional value={note} maximum={500} onChange={setNote} />
        {isSetAside && booking.problem?.code === 'short-of-fabric' && (
          <Checkbox
            label="Set it aside all the same: more is spoken for than there is"
            isChecked={isKnowing}
            onChange={setIsKnowing}
          />
        )}
      </Form>
      <ProblemNotice problem={booking.problem} />
    </Dialog>
  );
}

interface Entered {
  readonly length: Length;
  readonly projectId: ProjectId | null;
  readonly on: ReturnType<typeof today>;
  readonly note: string;
  readonly isKnowing: boolean;
}

function useBooking(step: PieceStep) {
  const settingAside = useWrite('ledger:set-aside');
  const releasing = useWrite('ledger:release');
  const discarding = useWrite('ledger:discard');
  const counting = useWrite('ledger:count');
  const pieceId = step.piece.id;
  const all = [settingAside, releasing, discarding, counting];
  const write = ({ length, projectId, on, note, isKnowing }: Entered) => {
    switch (step.kind) {
      case 'set-aside':
        if (projectId === null) throw new Error('Nobody to set it aside for');
        return settingAside.write({ pieceId, projectId, length, knowingly: isKnowing, on, note });
      case 'release':
        return releasing.write({ pieceId, projectId: step.hold.projectId, length, on, note });
      case 'discard':
        return discarding.write({ pieceId, length, on, note });
      case 'count':
        return counting.write({ pieceId, there: length, on, note });
      default:
        return assertNever(step);
    }
  };
  return {
    write,
    isWriting: all.some(({ isWriting }) => isWriting),
    problem: all.find(({ problem }) => problem !== null)?.problem ?? null,
  };
}

function mostOf(step: PieceStep): Length {
  switch (step.kind) {
    case 'release':
      return lengthFromUnits(step.hold.held);
    case 'count':
      return step.piece.there;
    case 'set-aside':
    case 'discard':
      return freeLength(step.piece);
  }
}

function stepWords(step: PieceStep, isNumber: boolean): StepWords {
  switch (step.kind) {
    case 'set-aside':
      return {
        title: 'Set some aside',
        length: isNumber ? 'How many' : 'How much',
        help: isNumber ? '' : 'Length along the selvage, across the whole width.',
        verb: 'Set it aside',
      };
    case 'release':
      return {
        title: `Release from ${step.hold.projectName}`,
        length: isNumber ? 'How many' : 'How much',
        help: 'This much is free again.',
        verb: 'Release it',
      };
    case 'discard':
      return {
        title: 'Throw some away',
        length: isNumber ? 'How many' : 'How much',
        help: 'Its share of the value goes with it.',
        verb: 'Write it off',
      };
    case 'count':
      return {
        title: 'Count what is there',
        length: isNumber ? 'How many are there' : 'Length that is there',
        help: isNumber ? '0 if they are gone.' : 'Measured along the selvage; 0 if it is gone.',
        verb: 'Correct it',
      };
  }
}
