import { describe, expect, test } from 'vitest';
import type { StageId } from '#core/domain/ids';
import { tripWith } from '#core/domain/trip';
import { addDays } from '#core/units/calendar-date';
import {
  addProject,
  NO_SUCH_ID,
  openWorkshop,
  type TestWorkshop,
  TINY_PNG,
  TODAY,
} from '#test/helpers/workshop';

const DETAILS = {
  ...tripWith('Pell Tallowmere'),
  sentOn: TODAY,
  promisedOn: addDays(TODAY, 28),
  backing: '58 x 58 in, oatmeal',
  batting: 'Cotton blend',
  thread: 'Straw',
  patternName: 'Rings',
  priceAskedMinor: 9_000,
};

/** Tops ready to send out, each of its own project. */
function tops(count: number) {
  const workshop = openWorkshop();
  const pieces = Array.from({ length: count }, (_piece, index) => {
    const { projectId, stages } = addProject(workshop, { name: `Ring ${index + 1}` });
    const stage = stages.find(({ kind }) => kind === 'longarm')!;
    for (const { id, isGate } of stage.checklist) {
      if (isGate) workshop.get('checklist:tick', { checklistItemId: id, ticked: true });
    }
    return { projectId, stageId: stage.id };
  });
  return { workshop, pieces };
}

const standing = (workshop: TestWorkshop, piece: { projectId: never; stageId: StageId }) => {
  const { stages, trips } = workshop.get('project:open', { projectId: piece.projectId });
  return { state: stages.find(({ id }) => id === piece.stageId)!.state, trip: trips.at(-1) };
};

function packageOfThree() {
  const { workshop, pieces } = tops(3);
  const [first, second, third] = pieces as [never, never, never];
  const { tripId } = workshop.get('trip:send', {
    stageId: pieces[0]!.stageId,
    details: DETAILS,
    packing: [{ text: 'Top', isPacked: true }],
    alsoStageIds: [pieces[1]!.stageId, pieces[2]!.stageId],
  });
  return { workshop, pieces, tripId, first, second, third };
}

describe('several tops in one package', () => {
  test('are sent in one change, each on its own trip in the shared package', () => {
    const { workshop, pieces } = packageOfThree();
    const standings = pieces.map((piece) => standing(workshop, piece as never));
    expect(standings.map(({ state }) => state)).toEqual(['out', 'out', 'out']);
    expect(new Set(standings.map(({ trip }) => trip?.packageId)).size).toBe(1);
    expect(standings.map(({ trip }) => trip?.priceAskedMinor)).toEqual([9_000, null, null]);
    expect(standings[0]!.trip).toMatchObject({ ...DETAILS, packing: [{ text: 'Top', isPacked: true }] });
    expect(workshop.get('change:state', {}).undo).toBe(
      'Sent out “Quilting, sent out” and 2 more in the same package',
    );
    workshop.get('change:undo', {});
    expect(pieces.map((piece) => standing(workshop, piece as never).state)).toEqual([
      'planned',
      'planned',
      'planned',
    ]);
  });

  test('can come back in part: those named are done, the other is still out', () => {
    const { workshop, pieces, tripId, second } = packageOfThree();
    const other = standing(workshop, second).trip!.id;
    const details = { ...DETAILS, backOn: addDays(TODAY, 30), priceMinor: 9_200 };
    workshop.get('trip:receive', { stageId: pieces[0]!.stageId, tripId, details, alsoTripIds: [other] });
    const standings = pieces.map((piece) => standing(workshop, piece as never));
    expect(standings.map(({ state }) => state)).toEqual(['done', 'done', 'out']);
    expect(standings.map(({ trip }) => [trip?.backOn, trip?.priceMinor])).toEqual([
      [details.backOn, 9_200],
      [details.backOn, null],
      [null, null],
    ]);
    workshop.get('change:undo', {});
    expect(pieces.map((piece) => standing(workshop, piece as never).state)).toEqual(['out', 'out', 'out']);
  });

  test('are not sent while the gate of one is shut, and a trip of another package does not come back with them', () => {
    const { workshop, pieces, tripId } = packageOfThree();
    const { stages } = addProject(workshop);
    const closed = stages.find(({ kind }) => kind === 'longarm')!.id;
    expect(
      workshop.fail('trip:send', { stageId: pieces[0]!.stageId, details: DETAILS, alsoStageIds: [closed] }),
    ).toMatchObject({ code: 'gate-closed' });
    const stray = workshop.get('trip:add', { stageId: closed, details: DETAILS });
    expect(
      workshop.fail('trip:receive', {
        stageId: pieces[0]!.stageId,
        tripId,
        details: { ...DETAILS, backOn: TODAY },
        alsoTripIds: [stray.tripId],
      }),
    ).toEqual({ code: 'not-found', kind: 'trip' });
  });
});

describe('updates of a trip', () => {
  test('are listed by day, added for one project or for all of the package still out, and deleted again', () => {
    const { workshop, pieces, tripId, first, second, third } = packageOfThree();
    const word = { note: '', on: addDays(TODAY, 3) };
    workshop.get('trip:add-event', { tripId, kind: 'arrived', ofWholePackage: true, ...word });
    workshop.get('trip:add-event', { tripId, kind: 'packed', ofWholePackage: false, ...word, on: TODAY });
    expect(standing(workshop, first).trip!.events.map(({ kind }) => kind)).toEqual(['packed', 'arrived']);
    expect(standing(workshop, third).trip!.events.map(({ kind, on }) => [kind, on])).toEqual([
      ['arrived', word.on],
    ]);
    const details = { ...DETAILS, backOn: addDays(TODAY, 30) };
    workshop.get('trip:receive', {
      stageId: pieces[1]!.stageId,
      tripId: standing(workshop, second).trip!.id,
      details,
    });
    workshop.get('trip:add-event', { tripId, kind: 'ready', ofWholePackage: true, ...word });
    expect(standing(workshop, second).trip!.events).toHaveLength(1);
    const [packed] = standing(workshop, first).trip!.events;
    workshop.get('trip:delete-event', { tripEventId: packed!.id });
    expect(standing(workshop, first).trip!.events.map(({ kind }) => kind)).toEqual(['arrived', 'ready']);
    expect(workshop.fail('trip:delete-event', { tripEventId: packed!.id })).toMatchObject({
      code: 'not-found',
    });
  });

  test('stay with the trip, as do its packing list and its photos', () => {
    const { workshop, pieces, tripId, first } = packageOfThree();
    const packing = [
      { text: 'Top', isPacked: true },
      { text: 'Backing', isPacked: false },
    ];
    workshop.get('trip:pack', { tripId, packing });
    expect(standing(workshop, first).trip!.packing).toEqual(packing);
    const { stageId, projectId } = pieces[0]!;
    workshop.get('photo:add', {
      stageId,
      bytes: TINY_PNG,
      caption: 'Front',
      ofTrip: { tripId, moment: 'before' },
    });
    expect(workshop.get('project:open', { projectId }).photos).toEqual([
      expect.objectContaining({ tripId, moment: 'before', caption: 'Front' }),
    ]);
    const stray = { tripId: NO_SUCH_ID as never, moment: 'after' as const };
    expect(
      workshop.fail('photo:add', { stageId, bytes: TINY_PNG, caption: '', ofTrip: stray }),
    ).toMatchObject({
      code: 'not-found',
    });
    workshop.get('trip:delete', { tripId });
    expect(workshop.get('project:open', { projectId }).photos).toEqual([]);
    workshop.get('change:undo', {});
    expect(workshop.get('project:open', { projectId }).photos).toHaveLength(1);
  });
});
