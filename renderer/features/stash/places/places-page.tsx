import { useState } from 'react';
import { Link } from 'react-router';
import type { PlaceGlance } from '#core/contract/places';
import { placeNames } from '#core/domain/place';
import { useRead, useWrite } from '#renderer/bridge/query';
import { LabelsDialog } from '#renderer/features/stash/labels-dialog';
import { Button } from '#renderer/ui/page/button';
import { classes } from '#renderer/ui/base/classes';
import { EmptyState } from '#renderer/ui/page/empty-state';
import layout from '#renderer/ui/page/layout.module.css';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { type PlaceAction, PlaceDialog } from './place-dialog';
import styles from './places.module.css';

/** Where things are stored: rooms, their shelves, and the bins on those. */
export function PlacesPage() {
  const { value: places, problem } = useRead('place:list', {});
  const [action, setAction] = useState<PlaceAction | null>(null);
  const [placeToLabel, setPlaceToLabel] = useState<PlaceGlance | null>(null);
  const deleting = useWrite('place:delete');
  return (
    <Page
      title="Places"
      under="Rooms, their shelves and bins. When you delete a place, its fabric moves up to the room or shelf around it."
      back={{ to: '/stash', words: 'Stash' }}
      action={
        <Button look="main" onClick={() => setAction({ kind: 'add', inside: null })}>
          Add a room
        </Button>
      }
    >
      <ProblemNotice problem={problem ?? deleting.problem} />
      {places?.length === 0 && (
        <EmptyState title="No places yet">
          <p>Start with the room where you keep your fabric, then add its shelves and bins.</p>
        </EmptyState>
      )}
      <ul className={classes(layout['lines'], styles['places'])} aria-label="Places">
        {places?.map((place) => (
          <PlaceLine
            key={place.id}
            place={place}
            onAction={setAction}
            onLabel={() => setPlaceToLabel(place)}
            onDelete={() => void deleting.write({ placeId: place.id })}
          />
        ))}
      </ul>
      {action !== null && (
        <PlaceDialog action={action} places={places ?? []} onClose={() => setAction(null)} />
      )}
      {placeToLabel !== null && (
        <LabelsDialog of={{ of: 'place', placeId: placeToLabel.id }} onClose={() => setPlaceToLabel(null)} />
      )}
    </Page>
  );
}

/** What a place inside another is called, by the depth of the outer one: in a room a shelf, on a shelf a bin. */
const INSIDE_WORDS = ['shelf', 'bin'] as const;

interface PlaceLineProps {
  readonly place: PlaceGlance;
  readonly onAction: (action: PlaceAction) => void;
  readonly onLabel: () => void;
  readonly onDelete: () => void;
}

function PlaceLine({ place, onAction, onLabel, onDelete }: PlaceLineProps) {
  const depth = placeNames(place.path).length - 1;
  const inside = INSIDE_WORDS[depth] ?? 'place';
  return (
    <li className={styles['place']} style={{ paddingInlineStart: `${String(depth * 2)}rem` }}>
      <span className={styles['words']}>
        <span className={depth === 0 ? styles['room'] : undefined}>{place.name}</span>
        {place.fabrics > 0 && (
          <Link to={`/stash?place=${place.id}`} className={layout['quiet']}>
            {place.fabrics === 1 ? '1 fabric' : `${String(place.fabrics)} fabrics`}
          </Link>
        )}
      </span>
      <span className={styles['actions']}>
        <Button
          look="quiet"
          isSmall
          aria-label={`Add a ${inside} in ${place.path}`}
          onClick={() => onAction({ kind: 'add', inside: place })}
        >
          Add a {inside}
        </Button>
        <Button
          look="quiet"
          isSmall
          aria-label={`Rename ${place.path}`}
          onClick={() => onAction({ kind: 'rename', place })}
        >
          Rename
        </Button>
        <Button
          look="quiet"
          isSmall
          aria-label={`Move ${place.path}`}
          onClick={() => onAction({ kind: 'move', place })}
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
