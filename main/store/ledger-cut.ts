import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import { type Result, success } from '#core/result';
import { allocate } from '#core/units/allocate';
import { recordChange } from './changes';
import { insertRow, type ReadableStore, type WritableStore } from './handles';
import { shortOfCloth, valueOfLength } from './ledger';
import { appendBooking, type NewEntry } from './ledger-append';
import { findPiece, findProject, findStage, heldBy, notFound, type PieceRef, wrongField } from './lookups';

type CutInput = ChannelInput<'ledger:cut'>;

/**
 * Cuts across the whole width of a piece and keeps the leftovers as pieces of their own, in one booking. The cut takes
 * its share of the piece's value along, and each leftover its share of that, by area and to the last minor unit.
 */
export function cutCloth(
  store: ReadableStore,
  input: CutInput,
): Result<ChannelOutput<'ledger:cut'>, Problem> {
  const [piece, project, stage] = [
    findPiece(store, input.pieceId),
    findProject(store, input.projectId),
    input.stageId === null ? success(null) : findStage(store, input.stageId),
  ];
  if (!piece.ok) return piece;
  if (!project.ok) return project;
  if (!stage.ok) return stage;
  if (stage.value !== null && stage.value.projectId !== input.projectId) return notFound('stage');
  const ownHold = heldBy(store, piece.value.seq, project.value.seq);
  const free = piece.value.there - piece.value.held + ownHold;
  if (input.length > piece.value.there || (input.length > free && !input.knowingly)) {
    return shortOfCloth(piece.value, ownHold, input.length);
  }
  const misfit = firstMisfit(piece.value, input);
  if (misfit !== null) return misfit;

  return recordChange(store, `Cut “${piece.value.fabric.name}” for “${project.value.name}”`, (writable) => {
    const booking = {
      fabricSeq: piece.value.fabric.seq,
      projectSeq: project.value.seq,
      stage: stage.value,
      note: input.note,
      on: input.on,
      isKnowing: input.length > free,
    };
    return success({
      bookingId: appendBooking(writable, booking, cutEntries(writable, piece.value, input, ownHold)),
    });
  });
}

function cutEntries(
  store: WritableStore,
  piece: PieceRef,
  input: CutInput,
  ownHold: number,
): readonly NewEntry[] {
  const value = valueOfLength(piece, input.length);
  const areas = input.leftovers.map(({ width, length }) => width * length);
  const [, ...leftoverValues] = allocate(value, [piece.width * input.length - sum(areas), ...areas]);
  const cut: NewEntry = {
    pieceSeq: piece.seq,
    kind: 'cut',
    lengthChange: 0 - input.length,
    heldChange: -Math.min(input.length, ownHold),
    valueChange: -value,
  };
  const leftovers = input.leftovers.map(({ width, length }, index): NewEntry => {
    const leftover = {
      id: store.surroundings.newId(),
      fabric_seq: piece.fabric.seq,
      kind: 'leftover',
      width,
    };
    return {
      pieceSeq: insertRow(store, 'cloth_piece', leftover),
      kind: 'leftover',
      lengthChange: length,
      heldChange: 0,
      valueChange: leftoverValues[index] ?? 0,
    };
  });
  return [cut, ...leftovers];
}

/** A leftover may be kept turned round; together they are at most what was cut. */
function firstMisfit(piece: PieceRef, { length, leftovers }: CutInput): ReturnType<typeof wrongField> | null {
  const index = leftovers.findIndex(
    (one) =>
      !(one.width <= piece.width && one.length <= length) &&
      !(one.width <= length && one.length <= piece.width),
  );
  const one = leftovers[index];
  if (one !== undefined) {
    return wrongField(
      ['leftovers', index],
      `${one.width} by ${one.length}`,
      `a leftover that fits inside the cut, ${piece.width} by ${length}`,
    );
  }
  const area = sum(leftovers.map((leftover) => leftover.width * leftover.length));
  if (area <= piece.width * length) return null;
  return wrongField(
    ['leftovers'],
    String(area),
    `leftovers of at most the area cut, ${piece.width * length}`,
  );
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((so, number) => so + number, 0);
}
