import { type ChangeEvent, useRef, useState } from 'react';
import type { StagePhoto, Trip } from '#core/contract/projects';
import type { PhotoMoment } from '#core/domain/photo';
import { useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { PhotoDialog, PhotoThumbnail } from '../photos';
import layout from '#renderer/ui/page/layout.module.css';

const MOMENT_WORDS: Readonly<Record<PhotoMoment, string>> = {
  before: 'Before it was sent',
  after: 'After it came back',
};

/** Photos of the project before it was sent and after it came back, side by side. */
export function TripPhotos({
  trip,
  photos,
}: {
  readonly trip: Trip;
  readonly photos: readonly StagePhoto[];
}) {
  const [opened, setOpened] = useState<StagePhoto | null>(null);
  return (
    <div className={layout['pair']}>
      {(['before', 'after'] as const).map((moment) => (
        <div key={moment} className={layout['part']} role="group" aria-label={MOMENT_WORDS[moment]}>
          <p className={layout['quiet']}>{MOMENT_WORDS[moment]}</p>
          {photos
            .filter((photo) => photo.moment === moment)
            .map((photo) => (
              <PhotoThumbnail key={photo.id} photo={photo} onOpen={() => setOpened(photo)} />
            ))}
          <AddTripPhoto trip={trip} moment={moment} />
        </div>
      ))}
      {opened !== null && <PhotoDialog photo={opened} onClose={() => setOpened(null)} />}
    </div>
  );
}

function AddTripPhoto({ trip, moment }: { readonly trip: Trip; readonly moment: PhotoMoment }) {
  const picker = useRef<HTMLInputElement>(null);
  const adding = useWrite('photo:add');
  const pick = async (event: ChangeEvent<HTMLInputElement>) => {
    const files = [...(event.target.files ?? [])];
    event.target.value = '';
    for (const file of files) {
      const bytes = new Uint8Array(await file.arrayBuffer());
      await adding.write({ stageId: trip.stageId, bytes, caption: '', ofTrip: { tripId: trip.id, moment } });
    }
  };
  const words = `Photo ${MOMENT_WORDS[moment].toLowerCase()}`;
  return (
    <div>
      <Button
        look="quiet"
        isSmall
        disabled={adding.isWriting}
        aria-label={words}
        onClick={() => picker.current?.click()}
      >
        {adding.isWriting ? 'Saving…' : 'Add a photo'}
      </Button>
      <input
        ref={picker}
        type="file"
        accept="image/jpeg,image/png,image/webp"
        multiple
        hidden
        aria-label={`${words}, files`}
        onChange={(event) => void pick(event)}
      />
      <ProblemNotice problem={adding.problem} />
    </div>
  );
}
