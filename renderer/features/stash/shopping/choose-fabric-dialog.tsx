import type { FabricFit } from '#core/contract/shopping';
import type { FabricId } from '#core/domain/ids';
import type { FabricNeed } from '#core/stash/shopping/fabric-need';
import { lengthFromUnits } from '#core/units/length';
import { useRead, useWrite } from '#renderer/bridge/query';
import { today } from '#renderer/text/dates';
import { whichFits } from '#renderer/text/shopping-words';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { TextField } from '#renderer/ui/fields/text-field';
import { Button } from '#renderer/ui/page/button';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';
import { FabricFits } from './fabric-fits';

interface ChooseFabricDialogProps {
  readonly need: Pick<FabricNeed, 'projectId' | 'projectName' | 'source' | 'name' | 'amount'>;
  readonly onClose: () => void;
}

/** Chooses the fabric of the stash for a need, the best fit first, and sets it aside. */
export function ChooseFabricDialog({ need, onClose }: ChooseFabricDialogProps) {
  const { projectId, source, name } = need;
  const draft = useFormDraft(`choose-fabric ${projectId} ${source} ${name}`);
  const [search, setSearch] = useDraftValue(draft, 'search', '');
  const [picked, setPicked] = useDraftValue<FabricId | null>(draft, 'picked', null);
  const found = useRead('shopping:fits', { projectId, source, name, search }, { keepsPrevious: true });
  const saving = useDialogSave(useWrite('shopping:set-aside'), onClose, draft);
  const choosing = useDialogSave(useWrite('shopping:choose'), onClose, draft);
  const fits = found.value?.fits ?? [];
  const chosen = fits.find(({ fabric }) => fabric.id === picked) ?? fits[0];
  const save = () => {
    if (chosen === undefined) return;
    const takes = takesOf(chosen);
    saving.save({ projectId, source, name, takes, fabricId: chosen.fabric.id, on: today() });
  };
  return (
    <DialogForm
      draft={draft}
      title={`${whichFits(need)} ${name}`}
      isWide
      saving={{
        isSaving: saving.isSaving,
        problem: found.problem ?? saving.problem ?? choosing.problem,
      }}
      verb="Set it aside"
      canSave={chosen !== undefined}
      onSave={save}
      onClose={onClose}
      className={layout['stack']}
      buttons={
        <Button
          look="quiet"
          disabled={choosing.isSaving}
          onClick={() => choosing.save({ projectId, source, name, choice: { kind: 'new-fabric' } })}
        >
          Buy new fabric for it
        </Button>
      }
    >
      <p className={layout['quiet']}>
        For {need.projectName}. Best fit first (enough fabric, least left over). Press Enter to set it aside.
      </p>
      <TextField
        label="Find the fabric"
        help="Any words: name, color, print, shelf."
        value={search}
        maximum={200}
        autoFocus
        onChange={setSearch}
      />
      {found.value !== undefined && fits.length === 0 && (
        <p className={layout['quiet']}>
          {search.trim() === '' ? 'Nothing in your stash fits.' : 'Nothing that matches your words fits.'}
        </p>
      )}
      <FabricFits fits={fits} chosen={chosen} onPick={setPicked} />
    </DialogForm>
  );
}

/** What has to be set aside in addition to what already is. */
function takesOf({ takes }: FabricFit) {
  return takes.flatMap(({ pieceId, more }) => (more > 0 ? [{ pieceId, length: lengthFromUnits(more) }] : []));
}
