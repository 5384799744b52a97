import { useState } from 'react';
import type { ProjectId } from '#core/domain/ids';
import type { KeptShoppingLine, OwnShoppingLine } from '#core/domain/shopping';
import { useRead, useWrite } from '#renderer/bridge/query';
import styles from '#renderer/features/stash/stash.module.css';
import { Button } from '#renderer/ui/page/button';
import { type Option, Select } from '#renderer/ui/fields/choice';
import { Dialog } from '#renderer/ui/page/dialog';
import { Form } from '#renderer/ui/fields/form';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';

const NOTHING: OwnShoppingLine = { words: '', howMuch: '', supplier: '', projectId: null };

interface OwnLineDialogProps {
  /** Null for a new line. */
  readonly line: KeptShoppingLine | null;
  readonly onClose: () => void;
}

/** A line of the list in the maker's own words. */
export function OwnLineDialog({ line, onClose }: OwnLineDialogProps) {
  const [details, setDetails] = useState<OwnShoppingLine>(line === null ? NOTHING : ownOf(line));
  const keeping = useWrite('shopping:keep');
  const { value: projects } = useRead('project:list', { archived: false });
  const change = (part: Partial<OwnShoppingLine>) => setDetails({ ...details, ...part });
  const keep = async () => {
    const answer = await keeping.write({ lineId: line?.id ?? null, details });
    if (answer.ok) onClose();
  };
  const options: readonly Option<ProjectId | ''>[] = [
    { value: '', words: 'No piece in particular' },
    ...(projects?.items ?? []).map(({ project }) => ({ value: project.id, words: project.name })),
  ];
  return (
    <Dialog
      title={line === null ? 'A line for the list' : 'Change the line'}
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Not yet</Button>
          <Button look="main" type="submit" form="own-line" disabled={keeping.isWriting}>
            {line === null ? 'Put it on the list' : 'Keep it'}
          </Button>
        </>
      }
    >
      <Form id="own-line" className={styles['stack']} onSubmit={() => void keep()}>
        <TextField
          label="What"
          value={details.words}
          maximum={120}
          autoFocus
          emptyProblem="Write here what is to be bought."
          onChange={(words) => change({ words })}
        />
        <div className={styles['fields']}>
          <TextField
            label="How much"
            isOptional
            value={details.howMuch}
            maximum={60}
            placeholder="2 spools"
            onChange={(howMuch) => change({ howMuch })}
          />
          <TextField
            label="Shop"
            isOptional
            value={details.supplier}
            maximum={120}
            onChange={(supplier) => change({ supplier })}
          />
        </div>
        <Select
          label="For which piece"
          value={details.projectId ?? ''}
          options={options}
          onChange={(id) => change({ projectId: id === '' ? null : id })}
        />
      </Form>
      <ProblemNotice problem={keeping.problem} />
    </Dialog>
  );
}

function ownOf({ words, howMuch, supplier, projectId }: KeptShoppingLine): OwnShoppingLine {
  return { words, howMuch, supplier, projectId };
}
