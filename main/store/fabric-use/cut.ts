import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import { type Result, success } from '#core/result';
import { allocate } from '#core/units/allocate';
import { recordChange } from '../history/changes';
import { insertRow, type ReadableStore, type WritableStore } from '../base/handles';
import { shortOfFabric, valueOfLength } from './ledger';
import { appendBooking, type NewEntry } from '../ledger/ledger-append';
import { notePrint, turnedPrint } from '../stash/print-directions';
import {
  findPiece,
  findProject,
  findStage,
  heldBy,
  notFound,
  type PieceRef,
  wrongField,
} from '../base/lookups';

type CutInput = ChannelInput<'ledger:cut'>;

/**
 * Cuts across the whole width of a piece and keeps the leftovers as pieces of their own, in one booking. The cut takes
 * its share of the piece's value along, and each leftover its share of that, by area and to the last minor unit.
 */
export function cutFabric(
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
    return shortOfFabric(piece.value, ownHold, input.length);
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
    const [entries = []] = cutEntries(writable, piece.value, input.leftovers, [
      { length: input.length, ownHold },
    ]);
    return success({ bookingId: appendBooking(writable, booking, entries) });
  });
}

export interface CutShare {
  readonly length: number;
  /** What this project holds of the piece: its cut is taken from that first. */
  readonly ownHold: number;
}

/**
 * The entries of one cut that is shared among some projects, the booking of each for itself. The leftovers come out of the
 * first share, which must be large enough for them; their print runs as the piece's does, turned where only so they fit the cut.
 * Value is shared out by area, to the last minor unit.
 */
export function cutEntries(
  store: WritableStore,
  piece: PieceRef,
  leftovers: CutInput['leftovers'],
  shares: readonly CutShare[],
): readonly (readonly NewEntry[])[] {
  const areas = leftovers.map(({ width, length }) => width * length);
  const cutLength = sum(shares.map(({ length }) => length));
  const value = valueOfLength(piece, cutLength);
  const used = shares.map(({ length }, index) => piece.width * length - (index === 0 ? sum(areas) : 0));
  const values = allocate(value, [...used, ...areas]);
  const kept = leftovers.map(({ width, length }, index): NewEntry => {
    const id = store.surroundings.newId();
    const leftover = { id, fabric_seq: piece.fabric.seq, kind: 'leftover', width };
    const pieceSeq = insertRow(store, 'fabric_piece', leftover);
    const liesAsCut = width <= piece.width && length <= cutLength;
    notePrint(store, id, liesAsCut ? piece.printRuns : turnedPrint(piece.printRuns));
    return {
      pieceSeq,
      kind: 'leftover',
      lengthChange: length,
      heldChange: 0,
      valueChange: values[shares.length + index] ?? 0,
    };
  });
  return shares.map(({ length, ownHold }, index) => {
    const leftWith = index === 0 ? sum(kept.map(({ valueChange }) => valueChange)) : 0;
    const cut: NewEntry = {
      pieceSeq: piece.seq,
      kind: 'cut',
      lengthChange: 0 - length,
      heldChange: -Math.min(length, ownHold),
      valueChange: -((values[index] ?? 0) + leftWith),
    };
    return index === 0 ? [cut, ...kept] : [cut];
  });
}

/** A leftover may be kept turned round; together they are at most what was cut. */
export function firstMisfit(
  piece: PieceRef,
  { length, leftovers }: Pick<CutInput, 'length' | 'leftovers'>,
): ReturnType<typeof wrongField> | null {
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
