import { z } from 'zod';
import { calendarDate } from '#core/domain/dates';
import { bookingId, fabricPieceId, fabricId, projectId, stageId, stashKindId } from '#core/domain/ids';
import type { BookingId, FabricPieceId, FabricId, ProjectId, StageId } from '#core/domain/ids';
import { placePath } from '#core/domain/place';
import {
  pieceKindSchema,
  pieceLengthSchema,
  pieceWidthSchema,
  fabricDetails,
  printRuns,
} from '#core/domain/stash';
import type { PieceKind, FabricPiece, StashPrice, Fabric, LedgerEntry } from '#core/domain/stash';
import { stashFilter, stashGroup, stashGrouping, stashOrder } from '#core/domain/stash-filter';
import { pieceCode } from '#core/stash/piece-code';
import type { CalendarDate } from '#core/units/calendar-date';
import { type Page, pageRequest, reads, writes } from './channel';
import type { Changed } from './projects';

export interface FabricGlance {
  readonly fabric: Fabric;
  readonly pieces: readonly FabricPiece[];
  /** (1/320 mm)² there and free of it, over all pieces. */
  readonly areaThere: number;
  readonly areaFree: number;
  readonly valueMinor: number;
}

/** A piece that bears a code; of one that is used up nothing is there. */
export interface CodedPiece {
  readonly piece: FabricPiece;
  readonly fabric: Fabric;
}

/** A group of fabrics: `key` as in `stashGroup`, `name` as it is read, a kind's own word left to the reader. */
export interface FabricGroup {
  readonly key: string;
  readonly name: string;
  readonly fabrics: number;
}

/** One step of the ledger with the entries booked in it. */
export interface Booking {
  readonly id: BookingId;
  readonly fabricId: FabricId;
  readonly fabricName: string;
  readonly swatch: string;
  readonly projectId: ProjectId | null;
  readonly projectName: string | null;
  readonly stageId: StageId | null;
  readonly stageName: string | null;
  readonly note: string;
  /** The day it happened, and when it was written down. */
  readonly on: CalendarDate;
  readonly recordedAt: number;
  readonly entries: readonly (LedgerEntry & {
    readonly pieceWidth: number;
    readonly pieceKind: PieceKind;
    readonly unitLength: number | null;
  })[];
  /**
   * Fabric used up by this step, (1/320 mm)²: cut less leftovers, or discarded; and what the step cost: the price of fabric
   * bought, else the value that left with the fabric. Negative where something was taken back.
   */
  readonly usedArea: number;
  readonly costMinor: number;
  readonly isTakenBack: boolean;
}

/** What a shop asks for an area of a fabric. */
export interface FabricPrice extends StashPrice {
  /** Written down by the maker; otherwise it is what was paid last. */
  readonly isOwn: boolean;
}

/** What fabric is worth in two other ways than by what was paid for the very piece. */
export interface FabricCost {
  /** At the cost of the fabric that came in first. */
  readonly firstInMinor: number;
  /** What as much of it would cost now; null while no price of a fabric is known. */
  readonly againMinor: number | null;
}

export interface FabricPage extends FabricGlance {
  /** Newest first. */
  readonly ledger: readonly Booking[];
  readonly price: FabricPrice | null;
  /** What is there, counted in the other ways. */
  readonly worth: FabricCost;
}

/** What a project has used and set aside, from the ledger alone. */
export interface FabricOfProject {
  readonly bookings: readonly Booking[];
  readonly held: readonly { readonly piece: FabricPiece; readonly fabric: Fabric; readonly held: number }[];
  readonly usedArea: number;
  readonly costMinor: number;
  /** What was used, counted in the other ways. */
  readonly cost: FabricCost;
}

const size = z.object({ width: pieceWidthSchema, length: pieceLengthSchema });
const note = z.string().trim().max(500);

export const stashChannels = {
  /**
   * The fabrics that have, for every word of `search`, a word that begins with it (give or take a letter, where none does) and
   * that pass `filter`; by name unless `order` says otherwise.
   */
  'fabric:list': reads<Page<FabricGlance>>()(
    z.object({
      search: z.string().max(200),
      filter: stashFilter.optional(),
      order: stashOrder.optional(),
      inGroup: stashGroup.optional(),
      ...pageRequest,
    }),
  ),
  /** The groups among what `search` and `filter` find, in the order they are laid out in. */
  'fabric:groups': reads<readonly FabricGroup[]>()(
    z.object({ search: z.string().max(200), filter: stashFilter.optional(), by: stashGrouping }),
  ),
  'fabric:open': reads<FabricPage>()(z.object({ fabricId })),
  'fabric:create': writes<Changed & { readonly fabricId: FabricId }>()(z.object({ details: fabricDetails })),
  'fabric:change': writes<Changed>()(z.object({ fabricId, details: fabricDetails })),
  /** Only a fabric whose ledger is empty, or taken back to the last booking, can be deleted; others stay, used up. */
  'fabric:delete': writes<Changed>()(z.object({ fabricId })),
  'fabric:set-photo': writes<Changed>()(z.object({ fabricId, bytes: z.instanceof(Uint8Array).nullable() })),
  /** What a shop asks now for `length` across the usable width; null forgets it, and what was paid last counts again. */
  'fabric:set-price': writes<Changed>()(
    z.object({
      fabricId,
      price: z.object({ minor: z.int().min(1).max(100_000_000), length: pieceLengthSchema }).nullable(),
    }),
  ),

  /** The pieces whose code this is, used up or not: nearly always one, as a code is only a part of an id. */
  'piece:find': reads<readonly CodedPiece[]>()(z.object({ code: pieceCode })),

  /** Along a piece or across it; leftovers that are cut from it take it on. */
  'piece:set-print': writes<Changed>()(z.object({ pieceId: fabricPieceId, runs: printRuns })),

  /** `kindId` names one of the maker's kinds; `unitLength` is the length of one of what is told by number, of which `size` holds a whole number. */
  'ledger:buy': writes<Changed & { readonly pieceId: FabricPieceId }>()(
    z.object({
      fabricId,
      kind: pieceKindSchema,
      kindId: stashKindId.nullable().optional(),
      size,
      unitLength: pieceLengthSchema.nullable().optional(),
      place: placePath.optional(),
      costMinor: z.int().min(0).max(100_000_000),
      on: calendarDate,
      note,
    }),
  ),
  /** Holds fabric for a project. More than is free is refused as short-of-fabric unless `knowingly` is set. */
  'ledger:set-aside': writes<Changed>()(
    z.object({
      pieceId: fabricPieceId,
      projectId,
      length: pieceLengthSchema,
      knowingly: z.boolean().optional(),
      on: calendarDate,
      note,
    }),
  ),
  'ledger:release': writes<Changed>()(
    z.object({ pieceId: fabricPieceId, projectId, length: pieceLengthSchema, on: calendarDate, note }),
  ),
  /**
   * Cuts `length` across the whole width off a piece for a project's stage and keeps `leftovers` of the cut as pieces of
   * their own. Refused as short-of-fabric when more is asked than is free (what this project holds counts as free to it),
   * unless `knowingly` is set; never more than is there.
   */
  'ledger:cut': writes<Changed & { readonly bookingId: BookingId }>()(
    z.object({
      pieceId: fabricPieceId,
      projectId,
      stageId: stageId.nullable(),
      length: pieceLengthSchema,
      leftovers: z.array(size).max(20).readonly(),
      knowingly: z.boolean(),
      on: calendarDate,
      note,
    }),
  ),
  'ledger:discard': writes<Changed>()(
    z.object({ pieceId: fabricPieceId, length: pieceLengthSchema, on: calendarDate, note }),
  ),
  /** Corrects what is there to what was counted. */
  'ledger:count': writes<Changed>()(
    z.object({
      pieceId: fabricPieceId,
      there: z
        .int()
        .min(0)
        .max(300 * 320_000),
      on: calendarDate,
      note,
    }),
  ),
  'ledger:take-back': writes<Changed>()(z.object({ bookingId, on: calendarDate })),
  'ledger:of-project': reads<FabricOfProject>()(z.object({ projectId })),
};
