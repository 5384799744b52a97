import { useRef } from 'react';
import { useNavigate } from 'react-router';
import type { FabricDetails } from '#core/domain/stash';
import { useWorkshop } from '#renderer/bridge/workshop';
import { BoughtFields } from '#renderer/features/stash/bought-fields';
import {
  emptyDraft,
  isNewFabricDraft,
  type NewFabricDraft,
  withFabric,
} from '#renderer/features/stash/fabric-draft';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { Button } from '#renderer/ui/page/button';
import { DialogForm } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './fabric-form.module.css';
import { LooksFields, MoreFields } from './fabric-fields';
import { useNewFabricPhoto } from './new-fabric-photo';
import { NewPhoto } from './new-photo';
import { PhotoCatcher } from './photo-catcher';
import { useSaveFabric } from './save-fabric';

const FORM = 'new-fabric';

/** Adds a fabric together with its first piece. What was typed is kept while the dialog is closed. */
export function AddFabricDialog({ onClose }: { readonly onClose: () => void }) {
  const { settings } = useWorkshop();
  const start = emptyDraft(settings.fabricWidth);
  const typed = useFormDraft('fabric new');
  const [draft, setDraft] = useDraftValue(typed, 'details', start, isNewFabricDraft);
  const addsAnother = useRef(false);
  const photo = useNewFabricPhoto(draft, setDraft);
  const saving = useSaveFabric();
  const navigate = useNavigate();
  const clear = () => {
    typed.forget();
    photo.clear();
  };
  const save = async (isLast: boolean) => {
    if (photo.isRefused) return;
    const fabricId = await saving.save(draft, photo.photo);
    if (fabricId === null) return;
    clear();
    if (isLast) void navigate(`/stash/${fabricId}`);
  };
  const close = () => {
    const savedId = saving.partiallySavedId();
    if (savedId === null) {
      onClose();
      return;
    }
    typed.forget();
    void navigate(`/stash/${savedId}`);
  };
  return (
    <DialogForm
      draft={typed}
      title="Add fabric"
      isWide
      id={FORM}
      saving={saving}
      onSave={() => void save(!addsAnother.current)}
      onClose={close}
      buttons={
        <OtherButtons
          isSaving={saving.isSaving}
          onClear={clear}
          onAddAnother={(form) => {
            addsAnother.current = true;
            form?.requestSubmit();
            addsAnother.current = false;
          }}
        />
      }
    >
      <PhotoCatcher className={layout['sections']} onCatch={photo.choose}>
        <Fields draft={draft} onChange={setDraft} photo={photo} />
      </PhotoCatcher>
    </DialogForm>
  );
}

interface OtherButtonsProps {
  readonly isSaving: boolean;
  readonly onClear: () => void;
  readonly onAddAnother: (form: HTMLFormElement | null) => void;
}

function OtherButtons({ isSaving, onClear, onAddAnother }: OtherButtonsProps) {
  return (
    <>
      <Button look="quiet" onClick={onClear}>
        Clear the form
      </Button>
      {/* Not a submit button: Enter presses the first of those, and means Save. */}
      <Button form={FORM} disabled={isSaving} onClick={(event) => onAddAnother(event.currentTarget.form)}>
        Save and add another
      </Button>
    </>
  );
}

interface FieldsProps {
  readonly draft: NewFabricDraft;
  readonly onChange: (draft: NewFabricDraft) => void;
  readonly photo: ReturnType<typeof useNewFabricPhoto>;
}

function Fields({ draft, onChange, photo }: FieldsProps) {
  const changeFabric = (fabric: FabricDetails) => onChange(withFabric(draft, fabric));
  return (
    <>
      <div className={styles['looks']}>
        <LooksFields details={draft.fabric} onChange={changeFabric} />
        <NewPhoto
          photo={photo.photo}
          swatch={draft.fabric.swatch}
          onChoose={photo.choose}
          onTried={photo.setIsPicture}
          isRefused={photo.isRefused}
        />
      </div>
      <section className={layout['stack']}>
        <h3>First piece of fabric</h3>
        <BoughtFields
          piece={draft.piece}
          fabricWidth={draft.fabric.width}
          isSizeOptional
          onChange={(piece) => onChange({ ...draft, piece })}
        />
      </section>
      <section className={layout['stack']}>
        <h3>More details</h3>
        <MoreFields details={draft.fabric} onChange={changeFabric} />
      </section>
    </>
  );
}
