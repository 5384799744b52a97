import { useLayoutEffect, useRef, useState } from 'react';
import { useNavigate } from 'react-router';
import { type FabricDetails, NO_COLOR } from '#core/domain/stash';
import { useWorkshop } from '#renderer/bridge/workshop';
import { BoughtFields } from '#renderer/features/stash/bought-fields';
import { emptyDraft, isNewFabricDraft, withFabric } from '#renderer/features/stash/fabric-draft';
import styles from '#renderer/features/stash/stash.module.css';
import { today } from '#renderer/text/dates';
import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import { useDraft } from '#renderer/ui/base/draft';
import { Form } from '#renderer/ui/fields/form';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { LooksFields, MoreFields } from './fabric-fields';
import { useKeepFabric } from './keep-fabric';
import { NewPhoto } from './new-photo';
import { PhotoCatcher } from './photo-catcher';
import { photoColor } from './photo-color';

/** A fabric with its first piece, in one go. What has been entered stays while the dialog is closed. */
export function AddFabricDialog({ onClose }: { readonly onClose: () => void }) {
  const { settings } = useWorkshop();
  const start = emptyDraft(settings.fabricWidth, today());
  const [draft, setDraft, forgetDraft] = useDraft('new-fabric', start, isNewFabricDraft);
  const [photo, setPhoto] = useState<File | null>(null);
  const [isPicture, setIsPicture] = useState(true);
  const [round, setRound] = useState(0);
  const hasMore = useRef(false);
  const keeping = useKeepFabric();
  const navigate = useNavigate();
  // A color the maker chose herself, or wrote, is never changed by a photo.
  const before = useRef({ swatch: NO_COLOR, words: '' });
  const latest = useRef(draft);
  useLayoutEffect(() => {
    latest.current = draft;
  });

  const empty = () => {
    setDraft(start);
    forgetDraft();
    setPhoto(null);
    before.current = { swatch: NO_COLOR, words: '' };
    setRound(round + 1);
  };
  const changeFabric = (fabric: FabricDetails) => setDraft(withFabric(draft, fabric));
  const choosePhoto = (file: File | null) => {
    setIsPicture(true);
    setPhoto(file);
    if (file === null) return;
    void photoColor(file).then((seen) => {
      if (seen === null) return;
      const { fabric, piece } = latest.current;
      const isOwnColor = fabric.swatch !== before.current.swatch;
      const isOwnWords = fabric.colorWords !== before.current.words;
      before.current = seen;
      setDraft({
        fabric: {
          ...fabric,
          swatch: isOwnColor ? fabric.swatch : seen.swatch,
          colorWords: isOwnWords ? fabric.colorWords : seen.words,
        },
        piece,
      });
    });
  };
  const add = async () => {
    if (photo !== null && !isPicture) return;
    const fabricId = await keeping.keep(draft, photo);
    if (fabricId === null) return;
    empty();
    if (!hasMore.current) void navigate(`/stash/${fabricId}`);
  };
  const close = () => {
    const half = keeping.halfKept();
    if (half === null) {
      onClose();
      return;
    }
    forgetDraft();
    void navigate(`/stash/${half}`);
  };
  return (
    <Dialog
      title="A new fabric"
      isWide
      onClose={close}
      foot={
        <>
          <Button look="quiet" onClick={empty}>
            Empty the form
          </Button>
          <Button onClick={close}>Not yet</Button>
          <Button
            form="new-fabric"
            disabled={keeping.isKeeping}
            onClick={(event) => {
              hasMore.current = true;
              event.currentTarget.form?.requestSubmit();
            }}
          >
            Add it and begin the next
          </Button>
          <Button
            look="main"
            type="submit"
            form="new-fabric"
            disabled={keeping.isKeeping}
            onClick={() => {
              hasMore.current = false;
            }}
          >
            Add the fabric
          </Button>
        </>
      }
    >
      <PhotoCatcher className={styles['stack']} onCatch={choosePhoto}>
        <Form key={round} id="new-fabric" className={styles['parts']} onSubmit={() => void add()}>
          <div className={styles['looks']}>
            <LooksFields details={draft.fabric} onChange={changeFabric} />
            <NewPhoto
              photo={photo}
              swatch={draft.fabric.swatch}
              onChoose={choosePhoto}
              onTried={setIsPicture}
              isRefused={photo !== null && !isPicture}
            />
          </div>
          <section className={styles['stack']}>
            <h3>Its first piece</h3>
            <BoughtFields
              piece={draft.piece}
              fabricWidth={draft.fabric.width}
              isSizeOptional
              onChange={(piece) => setDraft({ ...draft, piece })}
            />
          </section>
          <section className={styles['stack']}>
            <h3>More about it</h3>
            <MoreFields details={draft.fabric} onChange={changeFabric} />
          </section>
        </Form>
      </PhotoCatcher>
      <ProblemNotice problem={keeping.problem} />
    </Dialog>
  );
}
