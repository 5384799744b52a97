import { useState } from 'react';
import { Link } from 'react-router';
import type { PlaceGlance } from '#core/contract/places';
import { placeNames } from '#core/domain/place';
import { useRead, useWrite } from '#renderer/bridge/query';
import { LabelsDialog } from '#renderer/features/stash/labels-dialog';
import { Button } from '#renderer/ui/page/button';
import { EmptyState } from '#renderer/ui/page/empty-state';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { type PlaceAsked, PlaceDialog } from './place-dialog';
import styles from './places.module.css';

/** Where things lie: rooms, the shelves in them, the bins on those. */
export function PlacesPage() {
  const { value: places, problem } = useRead('place:list', {});
  const [asked, setAsked] = useState<PlaceAsked | null>(null);
  const [labeled, setLabeled] = useState<PlaceGlance | null>(null);
  const deleting = useWrite('place:delete');
  return (
    <Page
      title="Places"
      under="Rooms, the shelves in them and the bins on those. A deleted place leaves what lay in it to the one it was in."
      back={{ to: '/stash', words: 'Stash' }}
      action={
        <Button look="main" onClick={() => setAsked({ kind: 'add', inside: null })}>
          Add a room
        </Button>
      }
    >
      <ProblemNotice problem={problem ?? deleting.problem} />
      {places?.length === 0 && (
        <EmptyState title="No places yet">
          <p>Begin with the room where the fabric is kept, then add its shelves and bins.</p>
        </EmptyState>
      )}
      <ul className={styles['places']} aria-label="Places">
        {places?.map((place) => (
          <PlaceLine
            key={place.id}
            place={place}
            onAsk={setAsked}
            onLabel={() => setLabeled(place)}
            onDelete={() => void deleting.write({ placeId: place.id })}
          />
        ))}
      </ul>
      {asked !== null && <PlaceDialog asked={asked} places={places ?? []} onClose={() => setAsked(null)} />}
      {labeled !== null && (
        <LabelsDialog of={{ of: 'place', placeId: labeled.id }} onClose={() => setLabeled(null)} />
      )}
    </Page>
  );
}

/** What a place inside one of this depth is called, from the house down. */
const INSIDE_WORDS = ['shelf', 'bin'] as const;

interface PlaceLineProps {
  readonly place: PlaceGlance;
  readonly onAsk: (asked: PlaceAsked) => void;
  readonly onLabel: () => void;
  readonly onDelete: () => void;
}

function PlaceLine({ place, onAsk, onLabel, onDelete }: PlaceLineProps) {
  const depth = placeNames(place.path).length - 1;
  const inside = INSIDE_WORDS[depth] ?? 'place';
  return (
    <li className={styles['place']} style={{ paddingInlineStart: `${String(depth * 2)}rem` }}>
      <span className={styles['words']}>
        <span className={depth === 0 ? styles['room'] : undefined}>{place.name}</span>
        {place.fabrics > 0 && (
          <Link to={`/stash?place=${place.id}`} className={styles['count']}>
            {place.fabrics === 1 ? '1 fabric' : `${String(place.fabrics)} fabrics`}
          </Link>
        )}
      </span>
      <span className={styles['actions']}>
        <Button
          look="quiet"
          isSmall
          aria-label={`Add a ${inside} in ${place.path}`}
          onClick={() => onAsk({ kind: 'add', inside: place })}
        >
          Add a {inside}
        </Button>
        <Button
          look="quiet"
          isSmall
          aria-label={`Rename ${place.path}`}
          onClick={() => onAsk({ kind: 'rename', place })}
        >
          Rename
        </Button>
        <Button
          look="quiet"
          isSmall
          aria-label={`Move ${place.path}`}
          onClick={() => onAsk({ kind: 'move', place })}
        >
          Move
        </Button>
        <Button look="quiet" isSmall aria-label={`Labels for ${place.path}`} onClick={onLabel}>
          Labels
        </Button>
        <Button look="quiet" isSmall aria-label={`Delete ${place.path}`} onClick={onDelete}>
          Delete
        </Button>
      </span>
    </li>
  );
}
