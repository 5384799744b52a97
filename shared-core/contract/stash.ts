import { z } from 'zod';
import { calendarDateSchema, partialDateSchema } from '#core/domain/dates';
import {
  bookingIdSchema,
  fabricPieceIdSchema,
  fabricIdSchema,
  projectIdSchema,
  stageIdSchema,
  stashKindIdSchema,
} from '#core/domain/ids';
import type { BookingId, FabricPieceId, FabricId, ProjectId, StageId } from '#core/domain/ids';
import { placePathSchema } from '#core/domain/place';
import {
  pieceKindSchema,
  pieceLengthSchema,
  pieceWidthSchema,
  fabricDetailsSchema,
  printRunsSchema,
} from '#core/domain/stash';
import type { PieceKind, FabricPiece, StashPrice, Fabric, LedgerEntry } from '#core/domain/stash';
import {
  stashFilterSchema,
  stashGroupSchema,
  stashGroupingSchema,
  stashOrderSchema,
} from '#core/domain/stash-filter';
import { pieceCode } from '#core/stash/piece-code';
import type { KnownCost } from '#core/units/known-cost';
import { UNITS_PER_METER } from '#core/units/length';
import type { PartialDate } from '#core/units/partial-date';
import { type Page, pageRequest, reads, writes } from './channel';
import type { Changed } from './projects';

export interface FabricGlance {
  readonly fabric: Fabric;
  readonly pieces: readonly FabricPiece[];
  /** What is there, and what of it is free, over all pieces, in (1/320 mm)². */
  readonly areaThere: number;
  readonly areaFree: number;
  readonly value: KnownCost;
}

/** A piece found by its code; it may be used up. */
export interface PieceWithCode {
  readonly piece: FabricPiece;
  readonly fabric: Fabric;
}

/** A group of fabrics: `key` as in `stashGroup`, `name` as the maker reads it. The name of a kind is only its code. */
export interface FabricGroup {
  readonly key: string;
  readonly name: string;
  readonly fabrics: number;
}

/** One booking of the ledger with its entries. */
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
  /** The day it happened, and the moment it was recorded. Fabric may be bought in a month or year, or when is not known. */
  readonly on: PartialDate | null;
  readonly recordedAt: number;
  readonly entries: readonly (LedgerEntry & {
    readonly pieceWidth: number;
    readonly pieceKind: PieceKind;
    readonly unitLength: number | null;
  })[];
  /**
   * The area this booking used up, in (1/320 mm)²: cut less leftovers, or thrown out; and its cost: the price paid, or else the value that
   * left with the fabric. Negative for a booking that undoes another.
   */
  readonly usedArea: number;
  readonly cost: KnownCost;
  readonly isUndone: boolean;
}

/** The price of an area of a fabric. */
export interface FabricPrice extends StashPrice {
  /** Set by the maker; otherwise it is the last price paid. */
  readonly isOwn: boolean;
}

/** The cost of fabric, worked out in two other ways than by the price paid for the piece itself. */
export interface FabricCost {
  /** First in, first out: at the cost of the fabric that came in first. */
  readonly firstIn: KnownCost;
  /** What as much fabric would cost now; null if a fabric has no price. */
  readonly replacementMinor: number | null;
}

export interface FabricPage extends FabricGlance {
  /** Newest first. */
  readonly ledger: readonly Booking[];
  readonly price: FabricPrice | null;
  /** The cost of what is there. */
  readonly worth: FabricCost;
}

/** What a project has used and what is set aside for it, from the ledger. */
export interface ProjectFabric {
  readonly bookings: readonly Booking[];
  readonly held: readonly { readonly piece: FabricPiece; readonly fabric: Fabric; readonly held: number }[];
  readonly usedArea: number;
  /** The cost of what was used: as paid, and counted in other ways. */
  readonly paid: KnownCost;
  readonly cost: FabricCost;
}

const size = z.object({ width: pieceWidthSchema, length: pieceLengthSchema });
const note = z.string().trim().max(500);

/** What a purchase cost and when it was; null if that is not known. */
export const paid = {
  costMinor: z.int().min(0).max(100_000_000).nullable(),
  on: partialDateSchema.nullable(),
};

export const stashChannels = {
  /**
   * The fabrics that pass `filter` and have, for every word of `search`, a word that begins with it; if no word does, one that begins with
   * it but for one letter. By name unless `order` says otherwise.
   */
  'fabric:list': reads<Page<FabricGlance>>()(
    z.object({
      search: z.string().max(200),
      filter: stashFilterSchema.optional(),
      order: stashOrderSchema.optional(),
      inGroup: stashGroupSchema.optional(),
      ...pageRequest,
    }),
  ),
  /** The groups of the fabrics that `search` and `filter` find, in the order of the page. */
  'fabric:groups': reads<readonly FabricGroup[]>()(
    z.object({ search: z.string().max(200), filter: stashFilterSchema.optional(), by: stashGroupingSchema }),
  ),
  'fabric:open': reads<FabricPage>()(z.object({ fabricId: fabricIdSchema })),
  'fabric:create': writes<Changed & { readonly fabricId: FabricId }>()(
    z.object({ details: fabricDetailsSchema }),
  ),
  'fabric:change': writes<Changed>()(z.object({ fabricId: fabricIdSchema, details: fabricDetailsSchema })),
  /** Only a fabric whose bookings are all undone, or that has none, can be deleted. */
  'fabric:delete': writes<Changed>()(z.object({ fabricId: fabricIdSchema })),
  'fabric:set-photo': writes<Changed>()(
    z.object({ fabricId: fabricIdSchema, bytes: z.instanceof(Uint8Array).nullable() }),
  ),
  /** The price of `length` across the usable width; null deletes it, and the last price paid counts again. */
  'fabric:set-price': writes<Changed>()(
    z.object({
      fabricId: fabricIdSchema,
      price: z.object({ minor: z.int().min(1).max(100_000_000), length: pieceLengthSchema }).nullable(),
    }),
  ),

  /** The pieces with this code, used up or not: nearly always one, because a code is part of an id. */
  'piece:find': reads<readonly PieceWithCode[]>()(z.object({ code: pieceCode })),

  /** Whether the print runs along a piece or across it. Leftovers cut from the piece inherit this. */
  'piece:set-print': writes<Changed>()(z.object({ pieceId: fabricPieceIdSchema, runs: printRunsSchema })),

  /** `kindId` is one of the maker's kinds. For fabric counted in items, `unitLength` is the length of one item; `size` is a whole multiple of it. */
  'ledger:buy': writes<Changed & { readonly pieceId: FabricPieceId }>()(
    z.object({
      fabricId: fabricIdSchema,
      kind: pieceKindSchema,
      kindId: stashKindIdSchema.nullable().optional(),
      size,
      unitLength: pieceLengthSchema.nullable().optional(),
      place: placePathSchema.optional(),
      ...paid,
      note,
    }),
  ),
  /** Sets fabric aside for a project. More than is free is refused as short-of-fabric unless `knowingly` is set. */
  'ledger:set-aside': writes<Changed>()(
    z.object({
      pieceId: fabricPieceIdSchema,
      projectId: projectIdSchema,
      length: pieceLengthSchema,
      knowingly: z.boolean().optional(),
      on: calendarDateSchema,
      note,
    }),
  ),
  'ledger:release': writes<Changed>()(
    z.object({
      pieceId: fabricPieceIdSchema,
      projectId: projectIdSchema,
      length: pieceLengthSchema,
      on: calendarDateSchema,
      note,
    }),
  ),
  /**
   * Cuts `length` across the whole width off a piece for a project's stage, and keeps `leftovers` of the cut as new pieces. More than is free
   * is refused as short-of-fabric unless `knowingly` is set; what is set aside for this project is free to it. More than is there is always
   * refused.
   */
  'ledger:cut': writes<Changed & { readonly bookingId: BookingId }>()(
    z.object({
      pieceId: fabricPieceIdSchema,
      projectId: projectIdSchema,
      stageId: stageIdSchema.nullable(),
      length: pieceLengthSchema,
      leftovers: z.array(size).max(20).readonly(),
      knowingly: z.boolean(),
      on: calendarDateSchema,
      note,
    }),
  ),
  'ledger:discard': writes<Changed>()(
    z.object({ pieceId: fabricPieceIdSchema, length: pieceLengthSchema, on: calendarDateSchema, note }),
  ),
  /** Corrects what is there to the length that was measured. */
  'ledger:count': writes<Changed>()(
    z.object({
      pieceId: fabricPieceIdSchema,
      there: z
        .int()
        .min(0)
        .max(300 * UNITS_PER_METER),
      on: calendarDateSchema,
      note,
    }),
  ),
  'ledger:undo': writes<Changed>()(z.object({ bookingId: bookingIdSchema, on: calendarDateSchema })),
  'ledger:of-project': reads<ProjectFabric>()(z.object({ projectId: projectIdSchema })),
};
