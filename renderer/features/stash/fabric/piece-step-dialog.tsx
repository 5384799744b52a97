import { assertNever } from '#core/assert-never';
import type { ProjectId } from '#core/domain/ids';
import { type FabricPiece, freeOf } from '#core/domain/stash';
import type { CalendarDate } from '#core/units/calendar-date';
import { type Length, LENGTH_ZERO, lengthFromUnits } from '#core/units/length';
import { useRead, useWrite } from '#renderer/bridge/query';
import { AmountField } from '#renderer/features/stash/amount-field';
import { ProjectSelect } from '#renderer/features/stash/project-select';
import { today } from '#renderer/text/dates';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { DateField } from '#renderer/ui/fields/date-field';
import { TextField } from '#renderer/ui/fields/text-field';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';
import type { Hold } from './holds';

/** A booking of a piece of fabric that only needs an amount, and for setting aside a project. */
export type PieceStep =
  | { readonly kind: 'set-aside' | 'discard' | 'count'; readonly piece: FabricPiece }
  | { readonly kind: 'release'; readonly piece: FabricPiece; readonly hold: Hold };

interface PieceStepDialogProps {
  readonly step: PieceStep;
  readonly onClose: () => void;
}

/** Asks how much, and for which project when setting aside, and books it. The amount starts at all there is. */
export function PieceStepDialog({ step, onClose }: PieceStepDialogProps) {
  const most = mostOf(step);
  const draft = useFormDraft(
    `${step.kind} ${step.piece.id}${step.kind === 'release' ? ` ${step.hold.projectId}` : ''}`,
  );
  const [length, setLength] = useDraftValue<Length | null>(draft, 'length', most);
  const [chosen, setChosen] = useDraftValue<ProjectId | null>(draft, 'chosen', null);
  const [on, setOn] = useDraftValue<CalendarDate | null>(draft, 'on', today());
  const [note, setNote] = useDraftValue(draft, 'note', '');
  const [isKnowing, setIsKnowing] = useDraftValue(draft, 'isKnowing', false);
  const isSetAside = step.kind === 'set-aside';
  const projects = useRead('project:list', { archived: false }, { isOn: isSetAside }).value?.items;
  const projectId = chosen ?? projects?.[0]?.project.id ?? null;
  const saving = useDialogSave(useBooking(step), onClose, draft);
  const words = stepWords(step, step.piece.unitLength !== null);
  const save = () => {
    if (length === null || (isSetAside && projectId === null)) return;
    saving.save({ length, projectId, on: on ?? today(), note, isKnowing });
  };
  return (
    <DialogForm
      draft={draft}
      title={words.title}
      saving={saving}
      verb={words.verb}
      canSave={!isSetAside || projects?.length !== 0}
      onSave={save}
      onClose={onClose}
      className={layout['stack']}
    >
      {projects !== undefined && <ProjectSelect projects={projects} value={projectId} onChange={setChosen} />}
      <div className={layout['fields']}>
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
      {isSetAside && saving.problem?.code === 'short-of-fabric' && (
        <Checkbox
          label="Set it aside anyway: more is set aside than there is"
          isChecked={isKnowing}
          onChange={setIsKnowing}
        />
      )}
    </DialogForm>
  );
}

interface StepInput {
  readonly length: Length;
  readonly projectId: ProjectId | null;
  readonly on: CalendarDate;
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
  const write = ({ length, projectId, on, note, isKnowing }: StepInput) => {
    switch (step.kind) {
      case 'set-aside':
        if (projectId === null) throw new Error('No project to set it aside for');
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
      return freeOf(step.piece);
  }
}

interface StepWords {
  readonly title: string;
  readonly length: string;
  readonly help: string;
  readonly verb: string;
}

function stepWords(step: PieceStep, isCounted: boolean): StepWords {
  const length = isCounted ? 'How many' : 'How much';
  switch (step.kind) {
    case 'set-aside':
      return {
        title: 'Set some aside',
        length,
        help: isCounted ? '' : 'The length along the selvage, across the whole width.',
        verb: 'Set it aside',
      };
    case 'release':
      return {
        title: `Release from ${step.hold.projectName}`,
        length,
        help: 'This much becomes free again.',
        verb: 'Release it',
      };
    case 'discard':
      return {
        title: 'Throw some out',
        length,
        help: 'Its share of the value is written off too.',
        verb: 'Throw it out',
      };
    case 'count':
      return {
        title: 'Count what you have',
        length: isCounted ? 'How many you have' : 'Length you have',
        help: isCounted ? '0 if none are left.' : 'Measured along the selvage; 0 if none is left.',
        verb: 'Save',
      };
  }
}
