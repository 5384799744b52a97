import { useState } from 'react';
import { assertNever } from '#core/assert-never';
import type { PlaceGlance } from '#core/contract/places';
import type { Problem } from '#core/contract/problem';
import { liesIn, placePathOf } from '#core/domain/place';
import { useWrite } from '#renderer/bridge/query';
import styles from '#renderer/features/stash/stash.module.css';
import { Button } from '#renderer/ui/page/button';
import { Select } from '#renderer/ui/fields/choice';
import { Dialog } from '#renderer/ui/page/dialog';
import { Form } from '#renderer/ui/fields/form';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';

/** What is to be done with a place. */
export type PlaceAsked =
  | { readonly kind: 'add'; readonly inside: PlaceGlance | null }
  | { readonly kind: 'rename' | 'move'; readonly place: PlaceGlance };

interface PlaceDialogProps {
  readonly asked: PlaceAsked;
  readonly places: readonly PlaceGlance[];
  readonly onClose: () => void;
}

/** Asks for the name of a place, or where it goes. */
export function PlaceDialog({ asked, places, onClose }: PlaceDialogProps) {
  const [name, setName] = useState(asked.kind === 'rename' ? asked.place.name : '');
  const [parentId, setParentId] = useState(asked.kind === 'move' ? asked.place.parentId : null);
  const keeping = useKeepPlace(asked);
  const words = dialogWords(asked);
  const keep = async () => {
    const answer = await keeping.write(name.trim(), parentId);
    if (answer.ok) onClose();
  };
  return (
    <Dialog
      title={words.title}
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Not yet</Button>
          <Button look="main" type="submit" form="place" disabled={keeping.isWriting}>
            {words.verb}
          </Button>
        </>
      }
    >
      <Form id="place" className={styles['stack']} onSubmit={() => void keep()}>
        {asked.kind === 'move' ? (
          <Select
            label="Goes into"
            value={parentId ?? ''}
            options={[
              { value: '', words: 'Nothing: it is a room of its own' },
              ...places
                .filter((one) => !liesIn(one.path, asked.place.path))
                .map(({ id, path }) => ({ value: id, words: path })),
            ]}
            onChange={(id) => setParentId(id === '' ? null : id)}
          />
        ) : (
          <TextField
            label="Name"
            value={name}
            maximum={60}
            autoFocus
            emptyProblem="Give the place a name, such as Shelf 2."
            problem={
              name.includes(',') ? 'A comma would make two places of it.' : problemWords(keeping.problem)
            }
            onChange={setName}
          />
        )}
      </Form>
      {(asked.kind === 'move' || problemWords(keeping.problem) === null) && (
        <ProblemNotice problem={keeping.problem} />
      )}
    </Dialog>
  );
}

function useKeepPlace(asked: PlaceAsked) {
  const adding = useWrite('place:add');
  const renaming = useWrite('place:rename');
  const moving = useWrite('place:move');
  const all = [adding, renaming, moving];
  const write = (name: string, parentId: PlaceGlance['parentId']) => {
    switch (asked.kind) {
      case 'add':
        return adding.write({
          path: placePathOf(asked.inside === null ? [name] : [asked.inside.path, name]),
        });
      case 'rename':
        return renaming.write({ placeId: asked.place.id, name });
      case 'move':
        return moving.write({ placeId: asked.place.id, parentId });
      default:
        return assertNever(asked);
    }
  };
  return {
    write,
    isWriting: all.some(({ isWriting }) => isWriting),
    problem: all.find(({ problem }) => problem !== null)?.problem ?? null,
  };
}

/** The one expected problem: the name is taken. */
function problemWords(problem: Problem | null): string | null {
  return problem?.code === 'invalid-input'
    ? 'There is a place of that name here already. Give it another.'
    : null;
}

function dialogWords(asked: PlaceAsked): { readonly title: string; readonly verb: string } {
  switch (asked.kind) {
    case 'add':
      return {
        title: asked.inside === null ? 'A new room' : `A new place in ${asked.inside.path}`,
        verb: 'Add it',
      };
    case 'rename':
      return { title: `Rename ${asked.place.name}`, verb: 'Rename it' };
    case 'move':
      return { title: `Move ${asked.place.name}`, verb: 'Move it' };
    default:
      return assertNever(asked);
  }
}
