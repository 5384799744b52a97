import type { Fabric } from '#core/domain/stash';
import { useWrite } from '#renderer/bridge/query';
import { FabricSample } from '#renderer/features/stash/fabric-sample';
import { DIRECTION_WORDS } from '#renderer/features/stash/direction-words';
import { Button } from '#renderer/ui/page/button';
import { FactList } from '#renderer/ui/page/fact-list';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import layout from '#renderer/ui/page/layout.module.css';
import { LengthText } from '#renderer/ui/answers/typeset';
import { PhotoButton, PhotoCatcher } from './photo-catcher';

/** The photo or color of a fabric, and its details. */
export function FabricFacts({ fabric }: { readonly fabric: Fabric }) {
  const savingPhoto = useWrite('fabric:set-photo');
  const savePhoto = async (photo: File | null) => {
    const bytes = photo === null ? null : new Uint8Array(await photo.arrayBuffer());
    await savingPhoto.write({ fabricId: fabric.id, bytes });
  };
  const facts: readonly (readonly [string, React.ReactNode])[] = [
    ['Usable width', <LengthText key="width" length={fabric.width} />],
    ['Print', DIRECTION_WORDS[fabric.direction].toLowerCase()],
    ['Fiber', fabric.fiber],
    ['Washed', fabric.isWashed ? 'yes' : 'not yet'],
    ['Stored in', fabric.place],
    ['Shop', fabric.supplier],
  ];
  return (
    <section className={layout['leaf']} aria-label="What it is">
      <PhotoCatcher className={layout['stack']} onCatch={(file) => void savePhoto(file)}>
        <FabricSample fabric={fabric} size="large" />
        <div className={layout['row']}>
          <PhotoButton
            words={photoVerb(fabric.photoId !== null, savingPhoto.isWriting)}
            isDisabled={savingPhoto.isWriting}
            onChoose={(file) => void savePhoto(file)}
          />
          {fabric.photoId !== null && (
            <Button
              look="quiet"
              isSmall
              disabled={savingPhoto.isWriting}
              onClick={() => void savePhoto(null)}
            >
              Delete the photo
            </Button>
          )}
        </div>
        <ProblemNotice problem={savingPhoto.problem} />
      </PhotoCatcher>
      <FactList facts={facts} />
      {fabric.notes !== '' && <p className={layout['notes']}>{fabric.notes}</p>}
    </section>
  );
}

function photoVerb(hasPhoto: boolean, isSaving: boolean): string {
  if (isSaving) return 'Saving…';
  return hasPhoto ? 'Replace the photo' : 'Add a photo';
}
