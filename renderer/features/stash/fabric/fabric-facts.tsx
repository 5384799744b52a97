import type { Fabric, PrintDirection } from '#core/domain/stash';
import { useWrite } from '#renderer/bridge/query';
import { FabricSample } from '#renderer/features/stash/fabric-sample';
import shared from '#renderer/features/stash/stash.module.css';
import { Button } from '#renderer/ui/page/button';
import { FactList } from '#renderer/ui/page/fact-list';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { LengthText } from '#renderer/ui/answers/typeset';
import { PhotoButton, PhotoCatcher } from './photo-catcher';
import styles from './fabric.module.css';

const DIRECTION_WORDS: Readonly<Record<PrintDirection, string>> = {
  any: 'no direction',
  'one-way': 'one way up',
  'two-way': 'up and down alike',
};

/** What a fabric is: as it looks, and what was said of it. */
export function FabricFacts({ fabric }: { readonly fabric: Fabric }) {
  const showing = useWrite('fabric:set-photo');
  const show = async (photo: File | null) => {
    const bytes = photo === null ? null : new Uint8Array(await photo.arrayBuffer());
    await showing.write({ fabricId: fabric.id, bytes });
  };
  const facts: readonly (readonly [string, React.ReactNode])[] = [
    ['Usable width', <LengthText key="width" length={fabric.width} />],
    ['Print runs', DIRECTION_WORDS[fabric.direction]],
    ['Fiber', fabric.fiber],
    ['Washed', fabric.isWashed ? 'yes' : 'not yet'],
    ['Lies', fabric.place],
    ['From', fabric.supplier],
  ];
  return (
    <section className={styles['leaf']} aria-label="What it is">
      <PhotoCatcher className={shared['stack']} onCatch={(file) => void show(file)}>
        <FabricSample fabric={fabric} isLarge />
        <div className={shared['row']}>
          <PhotoButton
            words={photoVerb(fabric.photoId !== null, showing.isWriting)}
            isDisabled={showing.isWriting}
            onChoose={(file) => void show(file)}
          />
          {fabric.photoId !== null && (
            <Button look="quiet" isSmall disabled={showing.isWriting} onClick={() => void show(null)}>
              Remove the photo
            </Button>
          )}
        </div>
        <ProblemNotice problem={showing.problem} />
      </PhotoCatcher>
      <FactList facts={facts} />
      {fabric.notes !== '' && <p className={styles['notes']}>{fabric.notes}</p>}
    </section>
  );
}

function photoVerb(hasPhoto: boolean, isKeeping: boolean): string {
  if (isKeeping) return 'Keeping it…';
  return hasPhoto ? 'Replace the photo' : 'Add a photo';
}
