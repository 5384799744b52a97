import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import type { FabricPieceId } from '#core/domain/ids';
import { freeOf, isWholeCount } from '#core/domain/stash';
import { failure, type Result, success } from '#core/result';
import { allocate } from '#core/units/allocate';
import { recordChange } from '../history/changes';
import { insertRow, type ReadableStore, type WritableStore } from '../base/handles';
import { appendBooking, type NewEntry, setAsideEntry } from '../ledger/ledger-append';
import { storePiece } from '../stash/places';
import { findFabric, findPiece, findProject, heldBy, type PieceRef } from '../base/lookups';

/** Adds a new piece of fabric with the price paid for it. */
export function buyFabric(
  store: ReadableStore,
  {
    fabricId,
    kind,
    kindId = null,
    size,
    unitLength = null,
    place,
    costMinor,
    on,
    note,
  }: ChannelInput<'ledger:buy'>,
): Result<ChannelOutput<'ledger:buy'>, Problem> {
  const fabric = findFabric(store, fabricId);
  if (!fabric.ok) return fabric;
  if (unitLength !== null && !isWholeCount(size.length, unitLength)) {
    return failure<Problem>({ code: 'uneven-count', unitLength });
  }
  return recordChange(store, `Bought “${fabric.value.name}”`, (writable) => {
    const piece = { kind, kindId, size, unitLength, costMinor, on, note };
    const { pieceId } = addBought(writable, fabric.value.seq, piece);
    storePiece(writable, pieceId, place ?? '');
    return success({ pieceId });
  });
}

/** Adds a purchased piece to a fabric and books it. */
export function addBought(
  store: WritableStore,
  fabricSeq: number,
  {
    kind,
    kindId,
    size,
    unitLength,
    costMinor,
    on,
    note,
  }: Required<Pick<ChannelInput<'ledger:buy'>, 'kind' | 'size' | 'costMinor' | 'on' | 'note'>> & {
    readonly kindId: string | null;
    readonly unitLength: number | null;
  },
): { readonly pieceId: FabricPieceId; readonly pieceSeq: number } {
  const pieceId = store.clockAndIds.newId() as FabricPieceId;
  const pieceSeq = insertRow(store, 'fabric_piece', {
    id: pieceId,
    fabric_seq: fabricSeq,
    kind,
    kind_id: kindId,
    width: size.width,
    unit_length: unitLength,
  });
  const booking = { fabricSeq, projectSeq: null, stage: null, note, on };
  const entry = { lengthChange: size.length, heldChange: 0, valueChange: costMinor } as const;
  appendBooking(store, booking, [{ pieceSeq, kind: 'bought', ...entry }]);
  return { pieceId, pieceSeq };
}

/** Sets fabric aside for a project; more than is free only if `knowingly` is set. */
export function setAsideFabric(
  store: ReadableStore,
  { pieceId, projectId, length, knowingly = false, on, note }: ChannelInput<'ledger:set-aside'>,
): Result<Changed, Problem> {
  const [piece, project] = [findPiece(store, pieceId), findProject(store, projectId)];
  if (!piece.ok) return piece;
  if (!project.ok) return project;
  const isOver = length > freeOf(piece.value);
  if (isOver && !knowingly) return shortOfFabric(piece.value, 0, length);
  const words = `Set “${piece.value.fabric.name}” aside for “${project.value.name}”`;
  return recordOnPiece(store, words, {
    piece: piece.value,
    projectSeq: project.value.seq,
    on,
    note,
    isKnowing: knowingly && isOver,
    entry: setAsideEntry(piece.value.seq, length),
  });
}

/** Releases fabric that is set aside for a project. */
export function releaseFabric(
  store: ReadableStore,
  { pieceId, projectId, length, on, note }: ChannelInput<'ledger:release'>,
): Result<Changed, Problem> {
  const [piece, project] = [findPiece(store, pieceId), findProject(store, projectId)];
  if (!piece.ok) return piece;
  if (!project.ok) return project;
  const held = heldBy(store, piece.value.seq, project.value.seq);
  if (length > held) return failure<Problem>({ code: 'more-than-set-aside', held });
  const words = `Released “${piece.value.fabric.name}” from “${project.value.name}”`;
  return recordOnPiece(store, words, {
    piece: piece.value,
    projectSeq: project.value.seq,
    on,
    note,
    entry: { kind: 'released', lengthChange: 0, heldChange: 0 - length, valueChange: 0 },
  });
}

/** Throws out fabric with its share of the value. What is set aside must be released first. */
export function discardFabric(
  store: ReadableStore,
  { pieceId, length, on, note }: ChannelInput<'ledger:discard'>,
): Result<Changed, Problem> {
  const piece = findPiece(store, pieceId);
  if (!piece.ok) return piece;
  if (length > freeOf(piece.value)) return shortOfFabric(piece.value, 0, length);
  return recordOnPiece(store, `Threw out some of “${piece.value.fabric.name}”`, {
    piece: piece.value,
    projectSeq: null,
    on,
    note,
    entry: {
      kind: 'discarded',
      lengthChange: 0 - length,
      heldChange: 0,
      valueChange: takenValue(valueOfLength(piece.value, length)),
    },
  });
}

/**
 * Corrects a piece to the length that was measured. The value stays with what is left; with nothing left it is written off.
 */
export function countFabric(
  store: ReadableStore,
  { pieceId, there, on, note }: ChannelInput<'ledger:count'>,
): Result<Changed, Problem> {
  const piece = findPiece(store, pieceId);
  if (!piece.ok) return piece;
  const { valueMinor } = piece.value;
  return recordOnPiece(store, `Corrected the amount of “${piece.value.fabric.name}”`, {
    piece: piece.value,
    projectSeq: null,
    on,
    note,
    entry: {
      kind: 'counted',
      lengthChange: there - piece.value.there,
      heldChange: 0,
      valueChange: takenValue(valueMinor === null || there === 0 ? valueMinor : 0),
    },
  });
}

/**
 * The part of a piece's value that goes with `length` of it, in whole minor units; the rest of the piece takes all that is left. Null if it
 * is not known what the piece cost.
 */
export function valueOfLength({ valueMinor, there }: PieceRef, length: number): number | null {
  if (valueMinor === null || length >= there) return valueMinor;
  return allocate(valueMinor, [length, there - length])[0] ?? 0;
}

/** The change of a piece's value when this value leaves it. */
function takenValue(value: number | null): number | null {
  return value === null ? null : -value;
}

/** `ownHold` is set aside for the project that asks, so it is free to that project. */
export function shortOfFabric(
  piece: PieceRef,
  ownHold: number,
  asked: number,
): { readonly ok: false; readonly error: Problem } {
  return failure<Problem>({
    code: 'short-of-fabric',
    free: freeOf(piece, ownHold),
    there: piece.there,
    asked,
  });
}

interface PieceBooking extends Pick<ChannelInput<'ledger:count'>, 'on' | 'note'> {
  readonly piece: PieceRef;
  readonly projectSeq: number | null;
  readonly isKnowing?: boolean;
  readonly entry: Omit<NewEntry, 'pieceSeq'>;
}

/** Books one entry on one piece. */
function recordOnPiece(
  store: ReadableStore,
  words: string,
  { piece, projectSeq, on, note, isKnowing = false, entry }: PieceBooking,
): Result<Changed, Problem> {
  return recordChange(store, words, (writable) => {
    const booking = { fabricSeq: piece.fabric.seq, projectSeq, stage: null, note, on, isKnowing };
    appendBooking(writable, booking, [{ ...entry, pieceSeq: piece.seq }]);
    return success({});
  });
}
