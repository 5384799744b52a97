import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import { freeOf } from '#core/domain/stash';
import { failure, type Result, success } from '#core/result';
import { allocate } from '#core/units/allocate';
import { recordChange } from '../history/changes';
import { insertRow, type ReadableStore, type WritableStore } from '../base/handles';
import { shortOfFabric, valueOfLength } from './ledger';
import { appendBooking, type NewEntry } from '../ledger/ledger-append';
import { setPrintDirection, turnedPrint } from '../stash/print-directions';
import { findPiece, findProject, findStage, heldBy, notFound, type PieceRef } from '../base/lookups';

type CutInput = ChannelInput<'ledger:cut'>;

/**
 * Cuts across the whole width of a piece and keeps the leftovers as new pieces, in one booking. The cut takes its share of the piece's
 * value, and each leftover takes its share of that, by area and to the last minor unit.
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
  const free = freeOf(piece.value, ownHold);
  if (input.length > piece.value.there || (input.length > free && !input.knowingly)) {
    return shortOfFabric(piece.value, ownHold, input.length);
  }
  const misfit = leftoverMisfit(piece.value, input);
  if (misfit !== null) return failure(misfit);

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

interface CutShare {
  readonly length: number;
  /** What is set aside of the piece for this project: its cut is taken from that first. */
  readonly ownHold: number;
}

/**
 * The entries of one cut shared by projects, one booking each. The leftovers come out of the first share, which must be large enough for
 * them. The print of a leftover runs as on the piece, turned if the leftover only fits the cut turned. Value is shared by area, to the
 * last minor unit.
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
  const values = value === null ? null : allocate(value, [...used, ...areas]);
  const kept = leftovers.map(({ width, length }, index): NewEntry => {
    const id = store.clockAndIds.newId();
    const leftover = { id, fabric_seq: piece.fabric.seq, kind: 'leftover', width };
    const pieceSeq = insertRow(store, 'fabric_piece', leftover);
    const fitsUnturned = width <= piece.width && length <= cutLength;
    setPrintDirection(store, id, fitsUnturned ? piece.printRuns : turnedPrint(piece.printRuns));
    return {
      pieceSeq,
      kind: 'leftover',
      lengthChange: length,
      heldChange: 0,
      valueChange: values === null ? null : (values[shares.length + index] ?? 0),
    };
  });
  return shares.map(({ length, ownHold }, index) => {
    const leftoverValue = index === 0 ? sum(kept.map(({ valueChange }) => valueChange ?? 0)) : 0;
    const cut: NewEntry = {
      pieceSeq: piece.seq,
      kind: 'cut',
      lengthChange: 0 - length,
      heldChange: -Math.min(length, ownHold),
      valueChange: values === null ? null : -((values[index] ?? 0) + leftoverValue),
    };
    return index === 0 ? [cut, ...kept] : [cut];
  });
}

/** The problem if a leftover fits the cut neither as it is nor turned, or if together they are larger than the cut; null if all is well. */
export function leftoverMisfit(
  { width: cutWidth }: PieceRef,
  { length: cutLength, leftovers }: Pick<CutInput, 'length' | 'leftovers'>,
): Problem | null {
  const tooLarge = leftovers.find(
    ({ width, length }) =>
      !(width <= cutWidth && length <= cutLength) && !(width <= cutLength && length <= cutWidth),
  );
  if (tooLarge !== undefined) return { code: 'leftover-too-large', ...tooLarge, cutWidth, cutLength };
  const area = sum(leftovers.map(({ width, length }) => width * length));
  return area > cutWidth * cutLength ? { code: 'leftovers-too-large', cutWidth, cutLength } : null;
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
