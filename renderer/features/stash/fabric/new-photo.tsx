import { useLayoutEffect, useRef } from 'react';
import styles from '#renderer/features/stash/stash.module.css';
import { problemWords } from '#renderer/text/problems';
import { Button } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { FieldProblemLine } from '#renderer/ui/fields/field';
import { PhotoButton } from './photo-catcher';

interface NewPhotoProps {
  readonly photo: File | null;
  readonly swatch: string;
  readonly onChoose: (photo: File | null) => void;
  /** Said once the window has tried to draw it: whether it is a picture at all. */
  readonly onTried: (isPicture: boolean) => void;
  readonly isRefused: boolean;
}

/** The photo a new fabric will have, shown before it is kept; until then its color. */
export function NewPhoto({ photo, swatch, onChoose, onTried, isRefused }: NewPhotoProps) {
  const display = useDisplay().length;
  return (
    <div className={styles['newPhoto']}>
      {photo === null || isRefused ? (
        <span className={styles['sample']} style={{ background: swatch }} />
      ) : (
        <PhotoOnTrial photo={photo} onTried={onTried} />
      )}
      <div className={styles['row']}>
        <PhotoButton words={photo === null ? 'Choose a photo' : 'Another photo'} onChoose={onChoose} />
        {photo !== null && (
          <Button look="quiet" isSmall onClick={() => onChoose(null)}>
            Without a photo
          </Button>
        )}
      </div>
      <p className={styles['quiet']}>Or drop one here, or paste it.</p>
      <FieldProblemLine
        id="new-photo-problem"
        problem={isRefused ? problemWords({ code: 'not-a-photo' }, display) : null}
      />
    </div>
  );
}

function PhotoOnTrial({ photo, onTried }: Pick<NewPhotoProps, 'onTried'> & { readonly photo: File }) {
  const image = useRef<HTMLImageElement>(null);
  useLayoutEffect(() => {
    const address = URL.createObjectURL(photo);
    if (image.current !== null) image.current.src = address;
    return () => URL.revokeObjectURL(address);
  }, [photo]);
  return (
    <img
      ref={image}
      className={styles['sample']}
      alt="The photo to be kept"
      onLoad={() => onTried(true)}
      onError={() => onTried(false)}
    />
  );
}
