import { type ChangeEvent, useId, useRef, useState } from 'react';
import type { StagePhoto } from '#core/contract/projects';
import type { Stage } from '#core/domain/stage';
import { photoAddress } from '#renderer/bridge/photo';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { useWrite } from '#renderer/bridge/query';
import { dateWords, dayOfInstant, today } from '#renderer/text/dates';
import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import { useDisplay } from '#renderer/ui/base/display';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './stage.module.css';

interface PhotosProps {
  readonly stage: Stage;
  readonly photos: readonly StagePhoto[];
}

/** The photos of a stage. One is added from a file, or by pasting or dropping it anywhere in this section. */
export function Photos({ stage, photos }: PhotosProps) {
  const [opened, setOpened] = useState<StagePhoto | null>(null);
  const draft = useFormDraft(`photo ${stage.id}`);
  const [caption, setCaption] = useDraftValue(draft, 'caption', '');
  const picker = useRef<HTMLInputElement>(null);
  const titleId = useId();
  const adding = useWrite('photo:add');
  const add = async (files: readonly File[]) => {
    for (const file of files) {
      const bytes = new Uint8Array(await file.arrayBuffer());
      await adding.write({ stageId: stage.id, bytes, caption });
    }
    draft.forget();
  };
  const pick = (event: ChangeEvent<HTMLInputElement>) => {
    void add([...(event.target.files ?? [])]);
    event.target.value = '';
  };
  return (
    <section
      className={layout['part']}
      aria-labelledby={titleId}
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        void add([...event.dataTransfer.files]);
      }}
      onPaste={(event) => {
        if (event.clipboardData.files.length > 0) void add([...event.clipboardData.files]);
      }}
    >
      <h3 id={titleId}>Photos</h3>
      {photos.length > 0 && (
        <ul className={styles['photos']}>
          {photos.map((photo) => (
            <li key={photo.id}>
              <PhotoThumbnail photo={photo} onOpen={() => setOpened(photo)} />
            </li>
          ))}
        </ul>
      )}
      <div className={styles['addLine']}>
        <TextField
          label="Caption for the next photo"
          value={caption}
          onChange={setCaption}
          maximum={300}
          isOptional
        />
        <Button disabled={adding.isWriting} onClick={() => picker.current?.click()}>
          {adding.isWriting ? 'Saving…' : 'Add a photo'}
        </Button>
      </div>
      <input
        ref={picker}
        type="file"
        accept="image/jpeg,image/png,image/webp"
        multiple
        hidden
        aria-label="Photo files"
        onChange={pick}
      />
      <ProblemNotice problem={adding.problem} />
      {opened !== null && <PhotoDialog photo={opened} onClose={() => setOpened(null)} />}
    </section>
  );
}

/** A small photo; pressing it shows it in full. */
export function PhotoThumbnail({
  photo,
  onOpen,
}: {
  readonly photo: StagePhoto;
  readonly onOpen: () => void;
}) {
  // The caption below already names the button; a screen reader would read an alternative text as well.
  const words = photo.caption === '' ? 'Photo without a caption' : '';
  return (
    <button type="button" className={styles['photo']} onClick={onOpen}>
      <img src={photoAddress(photo.id, 'thumbnail')} alt={words} />
      {photo.caption !== '' && <span className={layout['quiet']}>{photo.caption}</span>}
    </button>
  );
}

/** A photo in full, with the day it was added. */
export function PhotoDialog({
  photo,
  onClose,
}: {
  readonly photo: StagePhoto;
  readonly onClose: () => void;
}) {
  const { locale } = useDisplay();
  const removing = useWrite('photo:delete');
  const remove = async () => {
    const answer = await removing.write({ photoId: photo.id });
    if (answer.ok) onClose();
  };
  const day = dateWords(dayOfInstant(photo.addedAt), locale, today());
  return (
    <Dialog
      title={photo.caption === '' ? `Photo from ${day}` : photo.caption}
      isWide
      onClose={onClose}
      foot={
        <>
          <Button disabled={removing.isWriting} onClick={() => void remove()}>
            Delete
          </Button>
          <Button look="main" onClick={onClose}>
            Close
          </Button>
        </>
      }
    >
      <img className={styles['photoFull']} src={photoAddress(photo.id, 'full')} alt={photo.caption} />
      <p className={layout['quiet']}>Added {day}</p>
      <ProblemNotice problem={removing.problem} />
    </Dialog>
  );
}
