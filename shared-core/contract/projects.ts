import { z } from 'zod';
import type { PlanPiece, PlanSize } from '#core/domain/fitting-plans';
import {
  checklistItemIdSchema,
  photoIdSchema,
  projectIdSchema,
  stageIdSchema,
  stagePlanIdSchema,
  tripIdSchema,
} from '#core/domain/ids';
import type { ChangeId, ContactId, PackageId, PhotoId, ProjectId, StageId, TripId } from '#core/domain/ids';
import { decidedFactsSchema, type UnsettledFact } from '#core/domain/project-facts';
import { type Project, projectDetailsSchema } from '#core/domain/project';
import {
  plannedStageSchema,
  type PlannedStage,
  type Stage,
  stageKindSchema,
  stageStateSchema,
} from '#core/domain/stage';
import { photoMomentSchema, type PhotoMoment } from '#core/domain/photo';
import type { PackingLine, TripDetails, TripEvent } from '#core/domain/trip';
import type { StageEstimate } from '#core/learned/stage-estimate';
import { type Page, pageRequest, reads, writes } from './channel';

export interface Trip extends TripDetails {
  readonly id: TripId;
  readonly stageId: StageId;
  readonly projectId: ProjectId;
  readonly contactId: ContactId;
  /** Shared by the trips that went in one package. */
  readonly packageId: PackageId;
  readonly packing: readonly PackingLine[];
  /** By day. */
  readonly events: readonly TripEvent[];
}

export interface StagePhoto {
  readonly id: PhotoId;
  readonly stageId: StageId;
  /** The trip before or after which it was taken; null for a photo of the stage itself. */
  readonly tripId: TripId | null;
  readonly moment: PhotoMoment | null;
  readonly caption: string;
  readonly addedAt: number;
}

/** One line of a project's log. */
export interface StageEvent {
  readonly stageId: StageId;
  readonly stageName: string;
  readonly from: Stage['state'];
  readonly to: Stage['state'];
  readonly why: string;
  readonly at: number;
}

/** A stage as a list shows it; of its checklist only whether a gate is still closed. */
export interface StageGlance extends Pick<
  Stage,
  | 'id'
  | 'projectId'
  | 'position'
  | 'kind'
  | 'name'
  | 'state'
  | 'estimateMinutes'
  | 'isOwnEstimate'
  | 'heldUpBy'
  | 'isBeside'
> {
  readonly isGateShut: boolean;
}

/** A project as a list or the bench shows it. `swatches` are the colors of the fabrics it used, the most used first. */
export interface ProjectGlance {
  readonly project: Project;
  readonly stages: readonly StageGlance[];
  readonly trips: readonly Trip[];
  readonly swatches: readonly string[];
}

export interface ProjectSpread extends ProjectGlance {
  readonly stages: readonly (StageGlance & Stage)[];
  readonly photos: readonly StagePhoto[];
  readonly history: readonly StageEvent[];
}

export interface StagePlan {
  readonly id: z.infer<typeof stagePlanIdSchema>;
  readonly name: string;
  readonly says: string;
  /** False for a plan that came with Ringbound: it can be copied, but not changed or deleted. */
  readonly isOwn: boolean;
  /** What it is for; null for a plan of the maker's own. */
  readonly piece: PlanPiece | null;
  readonly size: PlanSize | null;
  readonly stages: readonly PlannedStage[];
}

/**
 * A stage as it would be under another stage plan. stays: with its records. fresh: new, not started. kept: not in the plan, but it has
 * records. gone: not in the plan and without records.
 */
export interface PreviewedStage {
  readonly how: 'stays' | 'fresh' | 'kept' | 'gone';
  readonly name: string;
  /** It would be skipped although it is not finished. */
  readonly isSkipped: boolean;
}

/** Every change returns its own id, so that just this one can be undone. */
export interface Changed {
  readonly changeId: ChangeId;
}

export const projectChannels = {
  /** Open projects by due day, those without one last; archived ones latest first. */
  'project:list': reads<Page<ProjectGlance>>()(z.object({ archived: z.boolean(), ...pageRequest })),
  'project:open': reads<ProjectSpread>()(z.object({ projectId: projectIdSchema })),
  'project:create': writes<Changed & { readonly projectId: ProjectId }>()(
    z.object({ details: projectDetailsSchema, stagePlanId: stagePlanIdSchema }),
  ),
  'project:change': writes<Changed>()(
    z.object({ projectId: projectIdSchema, details: projectDetailsSchema }),
  ),
  /** The facts on which saved answers disagree with the project. */
  'project:unsettled': reads<readonly UnsettledFact[]>()(z.object({ projectId: projectIdSchema })),
  /** Decides facts for the project; everything that reads them follows. */
  'project:decide': writes<Changed>()(z.object({ projectId: projectIdSchema, decided: decidedFactsSchema })),
  'project:duplicate': writes<Changed & { readonly projectId: ProjectId }>()(
    z.object({ projectId: projectIdSchema }),
  ),
  'project:archive': writes<Changed>()(z.object({ projectId: projectIdSchema, archived: z.boolean() })),
  /** Moves a project to one of its stages, or past the last one. Earlier stages become done, later ones planned. */
  'project:move-to-stage': writes<Changed>()(
    z.object({ projectId: projectIdSchema, stageId: stageIdSchema.nullable() }),
  ),
  /** The stages as they would be under a stage plan, in their new order. Nothing is changed. */
  'project:preview-plan-change': reads<readonly PreviewedStage[]>()(
    z.object({ projectId: projectIdSchema, stagePlanId: stagePlanIdSchema }),
  ),
  /**
   * Gives a project the stages of another stage plan. Stages that match (same kind, same name first) keep their records. A stage that is
   * not in the plan is deleted if it has no records; otherwise it stays where it was, skipped or done.
   */
  'project:follow-plan': writes<Changed>()(
    z.object({ projectId: projectIdSchema, stagePlanId: stagePlanIdSchema }),
  ),
  'project:delete': writes<Changed>()(z.object({ projectId: projectIdSchema })),

  /** Moves a stage to a state. A closed gate refuses `in-hand`, `out` and `done` unless `passGateWhy` says why. */
  'stage:move': writes<Changed>()(
    z.object({
      stageId: stageIdSchema,
      to: stageStateSchema,
      passGateWhy: z.string().trim().max(1_000).optional(),
    }),
  ),
  /** A changed estimate becomes the maker's own. */
  'stage:change': writes<Changed>()(
    z.object({
      stageId: stageIdSchema,
      name: z.string().trim().min(1).max(120),
      estimateMinutes: z.int().min(0).max(100_000),
      heldUpBy: z.string().trim().max(300),
      notes: z.string().max(20_000),
    }),
  ),
  /** Estimates a stage by the maker's rates again, or keeps its present hours whatever the rates say. */
  'stage:set-estimate-source': writes<Changed>()(
    z.object({ stageId: stageIdSchema, by: z.enum(['rates', 'own']) }),
  ),
  /** How long each unfinished stage of a project will take, and where that figure comes from. */
  'stage:estimates': reads<Readonly<Record<StageId, StageEstimate>>>()(
    z.object({ projectId: projectIdSchema }),
  ),
  /** Adds a new stage at `position` among the project's stages. */
  'stage:add': writes<Changed & { readonly stageId: StageId }>()(
    z.object({
      projectId: projectIdSchema,
      position: z.int().min(0),
      kind: stageKindSchema,
      name: z.string().trim().min(1).max(120),
    }),
  ),
  /** Adds a copy of the stage, not started, right after it. */
  'stage:repeat': writes<Changed & { readonly stageId: StageId }>()(z.object({ stageId: stageIdSchema })),
  'stage:reorder': writes<Changed>()(z.object({ stageId: stageIdSchema, position: z.int().min(0) })),
  /** Whether it may run beside the stage before it, and which calculators its page shows; null: those of its kind. */
  'stage:set-up': writes<Changed>()(
    z.object({
      stageId: stageIdSchema,
      isBeside: z.boolean(),
      calculators: z.array(z.string().max(60)).max(40).readonly().nullable(),
    }),
  ),
  'stage:delete': writes<Changed>()(z.object({ stageId: stageIdSchema })),

  'checklist:add': writes<Changed>()(
    z.object({ stageId: stageIdSchema, text: z.string().trim().min(1).max(300), isGate: z.boolean() }),
  ),
  'checklist:tick': writes<Changed>()(
    z.object({ checklistItemId: checklistItemIdSchema, ticked: z.boolean() }),
  ),
  'checklist:delete': writes<Changed>()(z.object({ checklistItemId: checklistItemIdSchema })),

  /** Saves a picture (JPEG, PNG or WebP, at most 40 MB) with a stage. The same picture is stored once. */
  'photo:add': writes<Changed & { readonly photoId: PhotoId }>()(
    z.object({
      stageId: stageIdSchema,
      bytes: z.instanceof(Uint8Array),
      caption: z.string().trim().max(300),
      ofTrip: z.object({ tripId: tripIdSchema, moment: photoMomentSchema }).optional(),
    }),
  ),
  'photo:delete': writes<Changed>()(z.object({ photoId: photoIdSchema })),

  'stage-plan:list': reads<readonly StagePlan[]>()(z.object({})),
  'stage-plan:save': writes<Changed & { readonly stagePlanId: StagePlan['id'] }>()(
    z.object({
      stagePlanId: stagePlanIdSchema.nullable(),
      name: z.string().trim().min(1).max(120),
      says: z.string().trim().max(300),
      stages: z.array(plannedStageSchema).min(1).max(40).readonly(),
    }),
  ),
  'stage-plan:delete': writes<Changed>()(z.object({ stagePlanId: stagePlanIdSchema })),
};
