import { z } from 'zod';
import { lengthFromInches, lengthFromUnits } from '#core/units/length';
import { countField, flagField, lengthField, textField } from './fields';
import { fabricPieceIdSchema, type FabricId, fabricIdSchema, projectIdSchema, stageIdSchema } from './ids';
import { pieceWidthSchema } from './stash';

const inches = lengthFromInches;

/** What a cutting plan can be optimized for. */
const cuttingWishSchema = z.enum([
  'buy-least',
  'least-fabric',
  'fewest-pieces',
  'fewest-cuts',
  'largest-leftover',
]);
export type CuttingWish = z.infer<typeof cuttingWishSchema>;

/** The answer a line comes from: its stage and its calculator. */
const lineSourceSchema = z
  .object({ stageId: stageIdSchema, calculator: z.string().min(1).max(80) })
  .readonly();
export type LineSource = z.infer<typeof lineSourceSchema>;

/** Patches of one size for one project, with the answer they come from; null when they were entered by hand. */
export const cuttingLineSchema = z
  .object({
    id: z.string().min(1).max(160),
    projectId: projectIdSchema,
    source: lineSourceSchema.nullable(),
    fabric: textField({ title: 'Fabric', minimum: 1, maximum: 120 }),
    width: pieceWidthSchema,
    length: lengthField({ title: 'Length' }),
    count: countField({ title: 'How many', minimum: 1, maximum: 1_000_000 }),
    mayTurn: flagField({ title: 'Can be turned' }),
  })
  .readonly();
export type CuttingLine = z.infer<typeof cuttingLineSchema>;

/** Which fabric of the stash is used for a fabric on a project's list; without one the plan counts on new fabric. */
const fabricChoiceSchema = z
  .object({
    projectId: projectIdSchema,
    fabric: z.string().min(1).max(120),
    fabricId: fabricIdSchema.nullable(),
  })
  .readonly();
export type FabricChoice = z.infer<typeof fabricChoiceSchema>;

/** The cutting table and its settings. */
export const cuttingTableSchema = z
  .object({
    rulerLength: lengthField({
      title: 'Ruler',
      help: 'The longest cut you can make without moving it.',
      minimum: inches(4),
    }),
    matLength: lengthField({ title: 'Mat', help: 'The longer side.', minimum: inches(4) }),
    mayFold: flagField({ title: 'Fold the fabric once, so two strips are cut at a time' }),
    straighten: lengthField({
      title: 'Trim to straighten the end',
      help: 'Trimmed from the near end of fabric by the yard and of fat quarters. 0 for none.',
      minimum: lengthFromUnits(0),
      maximum: inches(12),
    }),
    selvage: lengthField({
      title: 'Selvage on each side',
      help: 'Only if the width you entered includes the selvages. 0 for none.',
      minimum: lengthFromUnits(0),
      maximum: inches(4),
    }),
    keepShort: lengthField({ title: 'Smallest leftover kept, short side', minimum: inches(1 / 2) }),
    keepLong: lengthField({ title: 'Smallest leftover kept, long side', minimum: inches(1 / 2) }),
    /** All of them, most important first. */
    wishes: z
      .array(cuttingWishSchema)
      .length(cuttingWishSchema.options.length)
      .refine((wishes) => new Set(wishes).size === wishes.length)
      .readonly(),
  })
  .readonly();
export type CuttingTableSettings = z.infer<typeof cuttingTableSchema>;

/** Common practice, in inches, except the leftover sizes, which are a matter of taste. */
export const STARTING_TABLE: CuttingTableSettings = {
  rulerLength: inches(24),
  matLength: inches(35),
  mayFold: true,
  straighten: inches(1 / 2),
  selvage: lengthFromUnits(0),
  keepShort: inches(3),
  keepLong: inches(6),
  wishes: cuttingWishSchema.options,
};

/** The question of a cutting plan, for the project it started from (the first) and those cut with it. */
export const cuttingSetupSchema = z
  .object({
    projects: z.array(projectIdSchema).min(1).max(20).readonly(),
    /** The answers whose cut lists were taken, and when each was saved. */
    taken: z
      .array(z.object({ source: lineSourceSchema, keptAt: z.int() }).readonly())
      .max(200)
      .readonly(),
    lines: z.array(cuttingLineSchema).max(500).readonly(),
    fabricChoices: z.array(fabricChoiceSchema).max(500).readonly(),
    /** Pieces of the stash that must not be cut. */
    leftOut: z.array(fabricPieceIdSchema).max(2_000).readonly(),
    table: cuttingTableSchema,
  })
  .readonly();
export type CuttingSetup = z.infer<typeof cuttingSetupSchema>;

/** The fabric chosen for a fabric on a project's list; undefined before a choice was made. */
export function fabricOf(
  setup: Pick<CuttingSetup, 'fabricChoices'>,
  { projectId, fabric }: Pick<FabricChoice, 'projectId' | 'fabric'>,
): FabricId | null | undefined {
  return setup.fabricChoices.find((one) => one.projectId === projectId && one.fabric === fabric)?.fabricId;
}

/** The planner's name for the fabric a line is cut from: a fabric of the stash, or new fabric for this name on the list. */
export function fabricKeyOf(
  setup: Pick<CuttingSetup, 'fabricChoices'>,
  line: Pick<CuttingLine, 'projectId' | 'fabric'>,
): string {
  return fabricOf(setup, line) ?? `new ${line.projectId} ${line.fabric}`;
}

/** The name of the planner's fabric on the cut list; undefined for fabric that is on no list. */
export function listNameOf(
  setup: Pick<CuttingSetup, 'fabricChoices' | 'lines'>,
  key: string,
): string | undefined {
  return setup.lines.find((line) => fabricKeyOf(setup, line) === key)?.fabric;
}
