import { assertNever } from '#core/assert-never';
import type { PlaceGlance } from '#core/contract/places';
import type { Problem } from '#core/contract/problem';
import { isInPlace, placePathOf } from '#core/domain/place';
import { useWrite } from '#renderer/bridge/query';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { Select } from '#renderer/ui/fields/choice';
import { TextField } from '#renderer/ui/fields/text-field';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';

/** An action on the tree of places. */
export type PlaceAction =
  | { readonly kind: 'add'; readonly inside: PlaceGlance | null }
  | { readonly kind: 'rename' | 'move'; readonly place: PlaceGlance };

interface PlaceDialogProps {
  readonly action: PlaceAction;
  readonly places: readonly PlaceGlance[];
  readonly onClose: () => void;
}

/** Asks for the name of a place, or for the place it moves into. */
export function PlaceDialog({ action, places, onClose }: PlaceDialogProps) {
  const draft = useFormDraft(placeDraftName(action));
  const [name, setName] = useDraftValue(draft, 'name', action.kind === 'rename' ? action.place.name : '');
  const [parentId, setParentId] = useDraftValue(
    draft,
    'parentId',
    action.kind === 'move' ? action.place.parentId : null,
  );
  const saving = useDialogSave(useSavePlace(action), onClose, draft);
  const nameProblem = nameProblemWords(name, saving.problem);
  const isNamed = action.kind !== 'move';
  const words = dialogWords(action);
  return (
    <DialogForm
      draft={draft}
      title={words.title}
      saving={isNamed && nameProblem !== null ? { ...saving, problem: null } : saving}
      verb={words.verb}
      onSave={() => saving.save({ name: name.trim(), parentId })}
      onClose={onClose}
      className={layout['stack']}
    >
      {action.kind === 'move' ? (
        <Select
          label="Move it into"
          value={parentId ?? ''}
          options={[
            { value: '', words: 'No other place: it is a room' },
            ...places
              .filter((one) => !isInPlace(one.path, action.place.path))
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
          problem={nameProblem}
          onChange={setName}
        />
      )}
    </DialogForm>
  );
}

function placeDraftName(action: PlaceAction): string {
  return action.kind === 'add'
    ? `add-place ${action.inside?.id ?? ''}`
    : `${action.kind}-place ${action.place.id}`;
}

interface PlaceInput {
  readonly name: string;
  readonly parentId: PlaceGlance['parentId'];
}

function useSavePlace(action: PlaceAction) {
  const adding = useWrite('place:add');
  const renaming = useWrite('place:rename');
  const moving = useWrite('place:move');
  const all = [adding, renaming, moving];
  const write = ({ name, parentId }: PlaceInput) => {
    switch (action.kind) {
      case 'add':
        return adding.write({
          path: placePathOf(action.inside === null ? [name] : [action.inside.path, name]),
        });
      case 'rename':
        return renaming.write({ placeId: action.place.id, name });
      case 'move':
        return moving.write({ placeId: action.place.id, parentId });
      default:
        return assertNever(action);
    }
  };
  return {
    write,
    isWriting: all.some(({ isWriting }) => isWriting),
    problem: all.find(({ problem }) => problem !== null)?.problem ?? null,
  };
}

/** Problems of the name, shown at its field. */
function nameProblemWords(name: string, problem: Problem | null): string | null {
  if (name.includes(',')) return 'Leave out the comma: it would make two places.';
  return problem?.code === 'name-taken'
    ? 'A place with this name already exists here. Choose another name.'
    : null;
}

function dialogWords(action: PlaceAction): { readonly title: string; readonly verb: string } {
  switch (action.kind) {
    case 'add':
      return {
        title: action.inside === null ? 'Add a room' : `Add a place in ${action.inside.path}`,
        verb: 'Save',
      };
    case 'rename':
      return { title: `Rename ${action.place.name}`, verb: 'Save' };
    case 'move':
      return { title: `Move ${action.place.name}`, verb: 'Move' };
    default:
      return assertNever(action);
  }
}
