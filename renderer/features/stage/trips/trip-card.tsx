import { useState } from 'react';
import { Link } from 'react-router';
import type { StagePhoto, Trip } from '#core/contract/projects';
import type { Stage } from '#core/domain/stage';
import { isBookedAhead, type TripEventKind } from '#core/domain/trip';
import { formatMoney } from '#core/units/format-money';
import { moneyFromMinor } from '#core/units/money';
import { useRead, useWrite } from '#renderer/bridge/query';
import { dateWords, lateWords, today } from '#renderer/text/dates';
import { Button } from '#renderer/ui/page/button';
import { type Display, useDisplay } from '#renderer/ui/base/display';
import { FactList } from '#renderer/ui/page/fact-list';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { useOptimisticValue } from '#renderer/ui/base/optimistic-value';
import { TripUpdateDialog } from '#renderer/shared/trip-update-dialog';
import { Packing } from './packing';
import { othersInPackage } from './package';
import { TripPhotos } from './trip-photos';
import { TripUpdates } from './trip-updates';
import layout from '#renderer/ui/page/layout.module.css';

interface TripCardProps {
  readonly stage: Stage;
  readonly trip: Trip;
  readonly photos: readonly StagePhoto[];
  readonly onChange: () => void;
}

/** One trip: its days, what was sent along, the instructions, the updates and the photos. */
export function TripCard({ stage, trip, photos, onChange }: TripCardProps) {
  const display = useDisplay();
  const [isAddingUpdate, setIsAddingUpdate] = useState(false);
  const contacts = useRead('contact:list', {}).value ?? [];
  const removing = useWrite('trip:delete');
  const others = othersInPackage(contacts, trip);
  return (
    <li className={layout['part']}>
      <div className={layout['partHead']}>
        <Link to={`/sent-out/${trip.contactId}`} className={layout['name']}>
          {trip.withWhom}
        </Link>
        <span className={layout['row']}>
          <Button look="quiet" isSmall onClick={onChange}>
            Change
          </Button>
          <Button look="quiet" isSmall onClick={() => void removing.write({ tripId: trip.id })}>
            Delete
          </Button>
        </span>
      </div>
      <p>{tripDays(trip, stage, display)}</p>
      {others.length > 0 && (
        <p className={layout['quiet']}>
          In one package with {others.map(({ projectName }) => projectName).join(', ')}
        </p>
      )}
      <TripFacts trip={trip} />
      <TripUpdates trip={trip} />
      {trip.backOn === null && !isBookedAhead(trip, stage.state) && (
        <div>
          <Button isSmall onClick={() => setIsAddingUpdate(true)}>
            Add an update
          </Button>
        </div>
      )}
      {trip.packing.length > 0 && <TripPacking trip={trip} />}
      <TripPhotos trip={trip} photos={photos} />
      <ProblemNotice problem={removing.problem} />
      {isAddingUpdate && (
        <TripUpdateDialog
          trip={trip}
          startsWith={nextUpdate(trip)}
          others={others.length}
          onClose={() => setIsAddingUpdate(false)}
        />
      )}
    </li>
  );
}

/** The packing list of a trip; every tick is saved at once. */
function TripPacking({ trip }: { readonly trip: Trip }) {
  const packing = useWrite('trip:pack');
  const [lines, show, revert] = useOptimisticValue(trip.packing);
  const save = async (next: Trip['packing']) => {
    show(next);
    const saved = await packing.write({ tripId: trip.id, packing: next });
    if (!saved.ok) revert();
  };
  return (
    <details className={layout['fold']}>
      <summary>{packedWords(lines)}</summary>
      <Packing packageId={trip.id} lines={lines} onChange={(next) => void save(next)} />
      <ProblemNotice problem={packing.problem} />
    </details>
  );
}

function TripFacts({ trip }: { readonly trip: Trip }) {
  const { currency, locale } = useDisplay();
  const money = (minor: number | null) =>
    minor === null ? '' : formatMoney(moneyFromMinor(minor, currency), locale);
  const facts: readonly (readonly [string, string])[] = [
    ['Backing', trip.backing],
    ['Batting', trip.batting],
    ['Pattern', trip.patternName],
    ['Thread', trip.thread],
    ['Instructions', trip.askedFor],
    ['Also sent along', trip.sentAlong],
    ['Tracking number', trip.trackingNumber],
    ['Price quoted', money(trip.priceAskedMinor)],
    ['Price paid', money(trip.priceMinor)],
  ];
  return <FactList facts={facts} look="lines" />;
}

/** `Sent Oct 3, promised Nov 10: 5 days late`. */
function tripDays(trip: Trip, stage: Stage, { locale }: Display): string {
  if (isBookedAhead(trip, stage.state)) return 'Reserved, not sent yet';
  const on = today();
  const sent = trip.sentOn === null ? 'Sent' : `Sent ${dateWords(trip.sentOn, locale, on)}`;
  if (trip.backOn !== null) return `${sent}, back ${dateWords(trip.backOn, locale, on)}`;
  if (trip.promisedOn === null) return `${sent}, no date promised`;
  const late = lateWords(trip.promisedOn, on);
  return `${sent}, promised ${dateWords(trip.promisedOn, locale, on)}${late === '' ? '' : `: ${late} late`}`;
}

function packedWords(packing: Trip['packing']): string {
  const packed = packing.filter(({ isPacked }) => isPacked).length;
  return `Packing list: ${String(packed)} of ${String(packing.length)} packed`;
}

const USUAL_ORDER: readonly TripEventKind[] = ['arrived', 'on-the-frame', 'ready', 'sent-back'];

/** The kind of update that usually comes next. */
function nextUpdate(trip: Trip): TripEventKind {
  const latest = trip.events.map(({ kind }) => USUAL_ORDER.indexOf(kind));
  return USUAL_ORDER[Math.max(-1, ...latest) + 1] ?? 'heard';
}
