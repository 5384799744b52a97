import { type ReactNode, useId } from 'react';
import type { Problem } from '#core/contract/problem';
import type { Result } from '#core/result';
import { DraftContext, type FormDraft } from '../base/draft';
import { Form } from '../fields/form';
import { Button } from './button';
import { DiscardEntries } from './discard-entries';
import { Dialog } from './dialog';
import { ProblemNotice } from './problem-notice';

/** A call that changes something, in the form that `useWrite` of the bridge gives. */
interface DialogWrite<Input, Output> {
  readonly write: (input: Input) => Promise<Result<Output, Problem>>;
  readonly isWriting: boolean;
  readonly problem: Problem | null;
}

/** How a save is going: all that `DialogForm` needs to know of it. */
export interface SaveProgress {
  readonly isSaving: boolean;
  /** Why the last save failed. */
  readonly problem: Problem | null;
}

export interface DialogSave<Input> extends SaveProgress {
  readonly save: (input: Input) => void;
}

/**
 * Saves with `writing`, forgets the draft and calls `onSaved` after a success; after a failure the dialog stays open and shows the
 * problem.
 */
export function useDialogSave<Input, Output>(
  { write, isWriting, problem }: DialogWrite<Input, Output>,
  onSaved: (output: Output) => void,
  draft?: FormDraft,
): DialogSave<Input> {
  const save = async (input: Input) => {
    const answer = await write(input);
    if (!answer.ok) return;
    draft?.forget();
    onSaved(answer.value);
  };
  return { save: (input) => void save(input), isSaving: isWriting, problem };
}

const DONE_AT_ONCE: SaveProgress = { isSaving: false, problem: null };

interface DialogFormProps {
  readonly title: string;
  /** What is entered and not saved yet; null for a form in which nothing is typed. */
  readonly draft: FormDraft | null;
  /** Left out when the form only changes something on the page, which cannot fail. */
  readonly saving?: SaveProgress;
  /** Called once every field is valid. */
  readonly onSave: () => void;
  readonly onClose: () => void;
  /** The verb of the act where it is not saving: "Send", "Record cut". */
  readonly verb?: string;
  /** False while something that no field reports is missing. */
  readonly canSave?: boolean;
  readonly isWide?: boolean;
  /** For a button among `buttons` that submits this form. */
  readonly id?: string;
  /** The class of the form around the fields. */
  readonly className?: string | undefined;
  /** Drawn above the form and below it. */
  readonly before?: ReactNode;
  readonly after?: ReactNode;
  /** Other buttons, drawn before Cancel. */
  readonly buttons?: ReactNode;
  /** The fields. */
  readonly children?: ReactNode;
}

/** A dialog around one form. Enter saves, Escape closes it. What is entered stays in its draft until it is saved or discarded. */
export function DialogForm(props: DialogFormProps) {
  const {
    title,
    draft,
    saving = DONE_AT_ONCE,
    onSave,
    onClose,
    verb = 'Save',
    canSave = true,
    isWide = false,
  } = props;
  const ownId = useId();
  const id = props.id ?? ownId;
  return (
    <Dialog
      title={title}
      isWide={isWide}
      onClose={onClose}
      foot={
        <>
          {props.buttons}
          {draft !== null && <DiscardEntries draft={draft} />}
          <Button onClick={onClose}>{draft?.hasEntries === true ? 'Finish later' : 'Cancel'}</Button>
          <Button look="main" type="submit" form={id} disabled={saving.isSaving || !canSave}>
            {verb}
          </Button>
        </>
      }
    >
      {props.before}
      <Form id={id} className={props.className} onSubmit={() => canSave && !saving.isSaving && onSave()}>
        <DraftContext key={draft?.discards} value={draft}>
          {props.children}
        </DraftContext>
      </Form>
      <ProblemNotice problem={saving.problem} />
      {props.after}
    </Dialog>
  );
}
