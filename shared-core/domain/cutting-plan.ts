import { z } from 'zod';
import type { CalendarDate } from '#core/units/calendar-date';
import { cuttingSetupSchema } from './cutting-setup';
import type { FabricPieceId } from './ids';
import { fabricPieceIdSchema } from './ids';

const size = { width: z.int().min(0), height: z.int().min(0) };

interface Sized {
  readonly width: number;
  readonly height: number;
}

/** `across`: the cut runs across the fabric and the parts follow one another along it; `along`: the parts are side by side. */
export type CutDirection = 'across' | 'along';

/** What happens to fabric that is not part of a patch: kept, thrown out, or trimmed off as selvage or to straighten the end. */
export type RestUse = 'leftover' | 'scrap' | 'margin';

/**
 * How a rectangle of fabric is cut: a patch of exactly this size, a rest, or parts that fill it without a gap, in order from
 * the near edge (across) or the left edge (along). A part never splits again in the direction of its parent. Patches are
 * numbered by their index in the list they come from.
 */
export type CutTree =
  | (Sized & { readonly kind: 'patch'; readonly patch: number; readonly turned: boolean })
  | (Sized & { readonly kind: 'rest'; readonly use: RestUse })
  | (Sized & {
      readonly kind: 'split';
      readonly direction: CutDirection;
      readonly parts: readonly CutTree[];
    });

/** The sheets taken from a pack, in order, all of one size and each cut by itself. */
export type SheetsTree = Sized & { readonly kind: 'sheets'; readonly parts: readonly CutTree[] };

/** How one piece is cut: a single piece of fabric, or the sheets taken from a pack. */
export type PieceTree = CutTree | SheetsTree;

const cutTreeSchema: z.ZodType<CutTree> = z.lazy(() =>
  z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('patch'), ...size, patch: z.int().min(0).max(499), turned: z.boolean() }),
    z.object({ kind: z.literal('rest'), ...size, use: z.enum(['leftover', 'scrap', 'margin']) }),
    z.object({
      kind: z.literal('split'),
      ...size,
      direction: z.enum(['across', 'along']),
      parts: z.array(cutTreeSchema).min(1).max(5_000).readonly(),
    }),
  ]),
);

const sheetsTreeSchema = z.object({
  kind: z.literal('sheets'),
  ...size,
  parts: z.array(cutTreeSchema).min(1).max(5_000).readonly(),
});

/** How one piece is cut: a piece of the stash, or (null) one to be bought. `fabric` is the planner's name for its fabric. */
const keptPieceSchema = z
  .object({
    pieceId: fabricPieceIdSchema.nullable(),
    fabric: z.string().min(1).max(200),
    tree: z.union([cutTreeSchema, sheetsTreeSchema]),
  })
  .readonly();
export type KeptPiece = z.infer<typeof keptPieceSchema>;

const purchase = z
  .object({
    fabric: z.string().min(1).max(200),
    width: z.int().min(0),
    exactLength: z.int().min(0),
    length: z.int().min(0),
    leastLength: z.number().min(0),
  })
  .readonly();

const patchHelp = z.discriminatedUnion('code', [
  z.object({ code: z.literal('turn-it') }).readonly(),
  z.object({ code: z.literal('piece-it') }).readonly(),
  z.object({ code: z.literal('wider-fabric'), width: z.number().min(0) }).readonly(),
  z.object({ code: z.literal('longer-fabric'), length: z.number().min(0) }).readonly(),
]);

const unplaced = z
  .object({
    patch: z.string().min(1).max(160),
    copies: z.int().min(1),
    reason: z.enum(['no-fabric', 'wider-than-any-fabric', 'longer-than-any-fabric', 'stash-used-up']),
    helps: z.array(patchHelp).readonly(),
  })
  .readonly();

/** The size a piece of the stash had for the plan when it was made: its free length plus what the plan had already cut. */
const piecePlannedWithSchema = z
  .object({ pieceId: fabricPieceIdSchema, width: z.int().min(0), length: z.int().min(0) })
  .readonly();

/** A saved cutting plan, with its question and the fabric it was made for. */
export const keptPlanSchema = z
  .object({
    setup: cuttingSetupSchema,
    rule: z.enum(['2-stage', 'guillotine']),
    pieces: z.array(keptPieceSchema).max(500).readonly(),
    purchases: z.array(purchase).max(500).readonly(),
    unplaced: z.array(unplaced).max(500).readonly(),
    plannedWith: z.array(piecePlannedWithSchema).max(5_000).readonly(),
  })
  .readonly();
export type KeptPlan = z.infer<typeof keptPlanSchema>;

/** A ticked cut of a saved plan: the number of parts of the piece's tree from the near end, in the order of ticking. */
export interface TickedStep {
  readonly pieceId: FabricPieceId;
  readonly place: number;
  readonly parts: number;
  /** False when its booking was undone elsewhere. */
  readonly isBooked: boolean;
  readonly on: CalendarDate;
  /** The pieces it added to the stash. */
  readonly leftovers: readonly FabricPieceId[];
}
