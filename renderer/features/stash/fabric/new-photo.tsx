import { useLayoutEffect, useRef } from 'react';
import layout from '#renderer/ui/page/layout.module.css';
import { problemWords } from '#renderer/text/problems';
import { Button } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { FieldProblemLine } from '#renderer/ui/fields/field';
import styles from './fabric-form.module.css';
import { PhotoButton } from './photo-catcher';

interface NewPhotoProps {
  readonly photo: File | null;
  readonly swatch: string;
  readonly onChoose: (photo: File | null) => void;
  /** Called once the window has tried to show the file: whether it is a picture. */
  readonly onTried: (isPicture: boolean) => void;
  readonly isRefused: boolean;
}

/** The photo of a new fabric before it is saved, or its color if there is none. */
export function NewPhoto({ photo, swatch, onChoose, onTried, isRefused }: NewPhotoProps) {
  const display = useDisplay().length;
  return (
    <div className={styles['newPhoto']}>
      {photo === null || isRefused ? (
        <span className={styles['photo']} style={{ background: swatch }} />
      ) : (
        <TriedPhoto photo={photo} onTried={onTried} />
      )}
      <div className={layout['row']}>
        <PhotoButton words={photo === null ? 'Choose a photo' : 'Choose another photo'} onChoose={onChoose} />
        {photo !== null && (
          <Button look="quiet" isSmall onClick={() => onChoose(null)}>
            No photo
          </Button>
        )}
      </div>
      <p className={layout['quiet']}>Or drag one here, or paste it.</p>
      <FieldProblemLine
        id="new-photo-problem"
        problem={isRefused ? problemWords({ code: 'not-a-photo' }, display) : null}
      />
    </div>
  );
}

function TriedPhoto({ photo, onTried }: Pick<NewPhotoProps, 'onTried'> & { readonly photo: File }) {
  const image = useRef<HTMLImageElement>(null);
  useLayoutEffect(() => {
    const address = URL.createObjectURL(photo);
    if (image.current !== null) image.current.src = address;
    return () => URL.revokeObjectURL(address);
  }, [photo]);
  return (
    <img
      ref={image}
      className={styles['photo']}
      alt="The photo of the new fabric"
      onLoad={() => onTried(true)}
      onError={() => onTried(false)}
    />
  );
}
