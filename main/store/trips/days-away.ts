import { type ContactKind, contactKindSchema } from '#core/domain/contact';
import type { ContactId, StageId } from '#core/domain/ids';
import { stageKindRecord } from '#core/domain/stage-kinds';
import { type Settings, settingsOfProject } from '#core/domain/workshop';
import { type DaysAway, daysAway, daysAwayUnnamed, type ContactWithTrips } from '#core/learned/days-away';
import { allRows, type ReadableStore } from '../base/handles';
import type { OpenProject } from '../projects/open-projects';
import { choiceOf, dateOrNullOf, groupRows, idOf, numberOrNullOf, textOf } from '../base/rows';

/** How long each stage at the quilter, or still to be sent there, is away. */
export function daysAwayOf(
  store: ReadableStore,
  open: readonly OpenProject[],
  settings: Settings,
): readonly DaysAway[] {
  const contacts = readContacts(store);
  const quilters = [...contacts.values()].filter(({ details }) => details.kind === 'longarm');
  return open.flatMap(({ project, stages, trips }) => {
    const { turnaroundDays } = settingsOfProject(settings, project.settingChanges);
    const tripOf = (id: StageId) => trips.findLast((trip) => trip.stageId === id && trip.backOn === null);
    return stages
      .filter(({ kind, state }) => state === 'out' || (stageKindRecord(kind).isSentOut && isAhead(state)))
      .map(({ id }) => {
        const trip = tripOf(id);
        const contact = trip && contacts.get(trip.contactId);
        return contact === undefined
          ? daysAwayUnnamed(id, quilters, turnaroundDays)
          : daysAway(id, trip, contact, turnaroundDays);
      });
  });
}

function isAhead(state: string): boolean {
  return state === 'planned' || state === 'in-hand';
}

/** All contacts with the days of their trips that have ended. */
function readContacts(store: ReadableStore) {
  const trips = groupRows(
    allRows(
      store,
      `SELECT contact_id, parcel_id, sent_on, back_on FROM trip JOIN stage ON stage.id = stage_id
      JOIN project ON project.id = project_id
      WHERE deleted_at IS NULL AND sent_on IS NOT NULL AND back_on IS NOT NULL ORDER BY contact_id`,
    ),
    'contact_id',
  );
  return new Map<ContactId, ContactWithTrips & { readonly details: { readonly kind: ContactKind } }>(
    allRows(store, 'SELECT id, name, kind, promised_days FROM contact').map((row) => [
      idOf<ContactId>(row, 'id'),
      {
        details: {
          name: textOf(row, 'name'),
          kind: choiceOf(row, 'kind', contactKindSchema.options),
          promisedDays: numberOrNullOf(row, 'promised_days'),
        },
        trips: (trips.get(textOf(row, 'id')) ?? []).map((trip) => ({
          packageId: textOf(trip, 'parcel_id'),
          sentOn: dateOrNullOf(trip, 'sent_on'),
          backOn: dateOrNullOf(trip, 'back_on'),
        })),
      },
    ]),
  );
}
