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
    const stray = workshop.get('trip:add', { stageId: closed, details: { ...DETAILS, sentOn: null } });
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

describe('a trip of a stage', () => {
  const booked = { ...DETAILS, sentOn: null, promisedOn: null };

  function bookedTop() {
    const { workshop, pieces } = tops(1);
    const piece = pieces[0]!;
    const { tripId } = workshop.get('trip:add', { stageId: piece.stageId, details: booked });
    const now = () => standing(workshop, piece as never);
    const trips = () => workshop.get('project:open', { projectId: piece.projectId }).trips;
    return { workshop, stageId: piece.stageId, tripId, now, trips };
  }

  test('sends its stage out when it gets the day it was sent, and finishes it with the day it came back', () => {
    const { workshop, tripId, now } = bookedTop();
    expect(now().state).toBe('planned');
    workshop.get('trip:change', { tripId, details: DETAILS });
    expect(now()).toMatchObject({ state: 'out', trip: { sentOn: TODAY } });
    workshop.get('change:undo', {});
    expect(now()).toMatchObject({ state: 'planned', trip: { sentOn: null } });
    workshop.get('change:redo', {});
    workshop.get('trip:change', { tripId, details: { ...DETAILS, backOn: TODAY } });
    expect(now()).toMatchObject({ state: 'done', trip: { backOn: TODAY } });
  });

  test('stays at home while its day is still to come, and is then sent as the same trip', () => {
    const { workshop, stageId, tripId, now, trips } = bookedTop();
    const sentOn = addDays(TODAY, 2);
    workshop.get('trip:change', { tripId, details: { ...DETAILS, sentOn } });
    expect(now().state).toBe('planned');
    expect(workshop.get('trip:send', { stageId, details: DETAILS }).tripId).toBe(tripId);
    expect(trips()).toHaveLength(1);
  });

  test('does not go out through a gate that is shut', () => {
    const workshop = openWorkshop();
    const { stages } = addProject(workshop);
    const stageId = stages.find(({ kind }) => kind === 'longarm')!.id;
    expect(workshop.fail('trip:add', { stageId, details: DETAILS })).toMatchObject({ code: 'gate-closed' });
    const { tripId } = workshop.get('trip:add', { stageId, details: booked });
    expect(workshop.fail('trip:change', { tripId, details: DETAILS })).toMatchObject({ code: 'gate-closed' });
  });

  test('is the only one while it is booked or away', () => {
    const { workshop, stageId, tripId, trips } = bookedTop();
    const other = tripWith('Wren Oakley');
    const open = { code: 'trip-open', withWhom: DETAILS.withWhom };
    expect(workshop.fail('trip:add', { stageId, details: other })).toEqual({ ...open, isAway: false });
    workshop.get('trip:send', { stageId, details: DETAILS });
    expect(workshop.fail('trip:send', { stageId, details: DETAILS })).toEqual({ ...open, isAway: true });
    expect(workshop.fail('trip:add', { stageId, details: other })).toEqual({ ...open, isAway: true });
    expect(trips()).toHaveLength(1);
    workshop.get('trip:receive', { stageId, tripId, details: { ...DETAILS, backOn: TODAY } });
    workshop.get('trip:add', { stageId, details: { ...DETAILS, backOn: TODAY } });
    expect(trips()).toHaveLength(2);
  });

  test('keeps its project from being sent with another stage while it is away', () => {
    const { workshop, stageId, now } = bookedTop();
    workshop.get('trip:send', { stageId, details: DETAILS });
    const projectId = now().trip!.projectId;
    const again = workshop.get('stage:repeat', { stageId }).stageId;
    const { stages } = workshop.get('project:open', { projectId });
    for (const { id, isGate } of stages.find(({ id: one }) => one === again)!.checklist) {
      if (isGate) workshop.get('checklist:tick', { checklistItemId: id, ticked: true });
    }
    expect(workshop.fail('trip:send', { stageId: again, details: DETAILS })).toMatchObject({
      code: 'trip-open',
    });
  });

  test('is not promised back before it is sent', () => {
    const { workshop, stageId, tripId } = bookedTop();
    const details = { ...DETAILS, promisedOn: addDays(TODAY, -1) };
    const problem = { code: 'promised-before-sent' };
    expect(workshop.fail('trip:change', { tripId, details })).toEqual(problem);
    expect(workshop.fail('trip:send', { stageId, details })).toEqual(problem);
    expect(workshop.fail('trip:add', { stageId, details })).toEqual(problem);
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
