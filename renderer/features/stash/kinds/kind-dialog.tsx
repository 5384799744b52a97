import { useState } from 'react';
import { pieceKindSchema } from '#core/domain/stash';
import { measureOfKind, type StashKind, type StashKindDetails } from '#core/domain/stash-kind';
import { useWrite } from '#renderer/bridge/query';
import { KIND_WORDS } from '#renderer/features/stash/fabric-words';
import styles from '#renderer/features/stash/stash.module.css';
import { Button } from '#renderer/ui/page/button';
import { Select } from '#renderer/ui/fields/choice';
import { Dialog } from '#renderer/ui/page/dialog';
import { Form } from '#renderer/ui/fields/form';
import { LengthField } from '#renderer/ui/fields/length-field';
import { NumberField } from '#renderer/ui/fields/number-field';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';

interface KindDialogProps {
  /** Null for a new one. */
  readonly kind: StashKind | null;
  readonly onClose: () => void;
}

const NEW_KIND: StashKindDetails = {
  ...{ form: 'precut-squares', name: '', width: null, length: null, count: null, isHidden: false },
};

const FORMS = pieceKindSchema.options.map((value) => ({ value, words: KIND_WORDS[value].name }));

/** One of the maker's kinds: its name, how it is told, and its usual size. */
export function KindDialog({ kind, onClose }: KindDialogProps) {
  const [details, setDetails] = useState<StashKindDetails>(kind ?? NEW_KIND);
  const keeping = useWrite('kind:keep');
  const change = (part: Partial<StashKindDetails>) => setDetails({ ...details, ...part });
  const measure = measureOfKind(details.form);
  const keep = async () => {
    const { form, name, width, length, count, isHidden } = details;
    const kept = { form, name, width, length, count, isHidden };
    const answer = await keeping.write({ kindId: kind?.id ?? null, details: kept });
    if (answer.ok) onClose();
  };
  return (
    <Dialog
      title={kind === null ? 'A new kind' : `Change ${kind.name}`}
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Not yet</Button>
          <Button look="main" type="submit" form="kind" disabled={keeping.isWriting}>
            Keep it
          </Button>
        </>
      }
    >
      <Form id="kind" className={styles['fields']} onSubmit={() => void keep()}>
        <div className={styles['whole']}>
          <TextField
            label="Name"
            value={details.name}
            maximum={60}
            autoFocus
            emptyProblem="Give the kind a name, such as Squares, 8 in."
            onChange={(name) => change({ name })}
          />
        </div>
        <Select
          label="It is told as"
          value={details.form}
          options={FORMS}
          onChange={(form) => change({ form })}
        />
        {measure !== 'count' && (
          <>
            <LengthField
              label="Usually across"
              isOptional
              value={details.width}
              onCommit={(width) => change({ width })}
            />
            <LengthField
              label="Usually along"
              isOptional
              value={details.length}
              onCommit={(length) => change({ length })}
            />
          </>
        )}
        {(measure === 'pack' || measure === 'count') && (
          <NumberField
            label="How many together"
            isOptional
            isWhole
            minimum={1}
            maximum={10_000}
            value={details.count}
            onCommit={(count) => change({ count })}
          />
        )}
      </Form>
      <ProblemNotice problem={keeping.problem} />
    </Dialog>
  );
}
