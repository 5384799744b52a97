import { z } from 'zod';
import { checklistItemId, photoId, projectId, stageId, stagePlanId, tripId } from '#core/domain/ids';
import type { ChangeId, ContactId, PackageId, PhotoId, ProjectId, StageId, TripId } from '#core/domain/ids';
import { type Project, projectDetails } from '#core/domain/project';
import { plannedStage, type PlannedStage, type Stage, stageKind, stageState } from '#core/domain/stage';
import { photoMoment, type PhotoMoment } from '#core/domain/photo';
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
  /** The trip before or after which it was taken; null when it was taken of the stage itself. */
  readonly tripId: TripId | null;
  readonly moment: PhotoMoment | null;
  readonly caption: string;
  readonly addedAt: number;
}

/** One line of a project's history, newest first. */
export interface StageEvent {
  readonly stageId: StageId;
  readonly stageName: string;
  readonly from: Stage['state'];
  readonly to: Stage['state'];
  readonly why: string;
  readonly at: number;
}

/** A stage as a list shows it: of its checklist only whether a gate line still forbids its start. */
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

/** A project as a list or the bench shows it. `swatches` are the colors of the fabrics it used, most used first. */
export interface ProjectGlance {
  readonly project: Project;
  readonly stages: readonly StageGlance[];
  readonly trips: readonly Trip[];
  readonly swatches: readonly string[];
  readonly costMinor: number;
}

export interface ProjectSpread extends ProjectGlance {
  readonly stages: readonly (StageGlance & Stage)[];
  readonly photos: readonly StagePhoto[];
  readonly history: readonly StageEvent[];
}

export interface StagePlan {
  readonly id: z.infer<typeof stagePlanId>;
  readonly name: string;
  readonly says: string;
  /** Plans that came with the notebook can be copied and left alone, not deleted. */
  readonly isOwn: boolean;
  readonly stages: readonly PlannedStage[];
}

/**
 * A stage as it would be under another plan. stays: with everything recorded of it; fresh: not begun; kept: the plan does not
 * know it, but something is recorded of it; gone: neither.
 */
export interface ForeseenStage {
  readonly how: 'stays' | 'fresh' | 'kept' | 'gone';
  readonly name: string;
  /** Where it would be skipped though it is not over yet. */
  readonly isSkipped: boolean;
}

/** What every change answers with: the change's own id, for undoing just that. */
export interface Changed {
  readonly changeId: ChangeId;
}

export const projectChannels = {
  /** Open projects by due date, those without one last; archived ones the latest first. */
  'project:list': reads<Page<ProjectGlance>>()(z.object({ archived: z.boolean(), ...pageRequest })),
  'project:open': reads<ProjectSpread>()(z.object({ projectId })),
  'project:create': writes<Changed & { readonly projectId: ProjectId }>()(
    z.object({ details: projectDetails, stagePlanId }),
  ),
  'project:change': writes<Changed>()(z.object({ projectId, details: projectDetails })),
  'project:duplicate': writes<Changed & { readonly projectId: ProjectId }>()(z.object({ projectId })),
  'project:archive': writes<Changed>()(z.object({ projectId, archived: z.boolean() })),
  /** Brings a piece to stand at a stage of its plan, or past the last one; what comes before is done, what comes after planned. */
  'project:stand-at': writes<Changed>()(z.object({ projectId, stageId: stageId.nullable() })),
  /** What following a plan would change, in the new order; nothing is changed. */
  'project:foresee-plan': reads<readonly ForeseenStage[]>()(z.object({ projectId, stagePlanId })),
  /**
   * Gives a running project the stages of a plan. Stages that match (same kind, same name first) keep everything recorded of
   * them; a stage the plan does not know goes if nothing is recorded of it, else it stays at its place as skipped, or as done.
   */
  'project:follow-plan': writes<Changed>()(z.object({ projectId, stagePlanId })),
  'project:delete': writes<Changed>()(z.object({ projectId })),

  /** Moves a stage to a state. A closed gate refuses `in-hand`, `out` and `done` unless `passGateWhy` says why. */
  'stage:move': writes<Changed>()(
    z.object({ stageId, to: stageState, passGateWhy: z.string().trim().max(1_000).optional() }),
  ),
  /** An estimate other than before is then the maker's own. */
  'stage:change': writes<Changed>()(
    z.object({
      stageId,
      name: z.string().trim().min(1).max(120),
      estimateMinutes: z.int().min(0).max(100_000),
      heldUpBy: z.string().trim().max(300),
      notes: z.string().max(20_000),
    }),
  ),
  /** Reckons a stage by the maker's own rates again, or holds to the hours that stand with it whatever the rates say. */
  'stage:reckon': writes<Changed>()(z.object({ stageId, by: z.enum(['rates', 'own']) })),
  /** How long each stage of a project that is not over will take, and what that comes from. */
  'stage:estimates': reads<Readonly<Record<StageId, StageEstimate>>>()(z.object({ projectId })),
  /** Puts a new stage at `position` of the project's plan. */
  'stage:add': writes<Changed & { readonly stageId: StageId }>()(
    z.object({
      projectId,
      position: z.int().min(0),
      kind: stageKind,
      name: z.string().trim().min(1).max(120),
    }),
  ),
  /** A fresh copy of the stage, not begun, right after it. */
  'stage:repeat': writes<Changed & { readonly stageId: StageId }>()(z.object({ stageId })),
  'stage:reorder': writes<Changed>()(z.object({ stageId, position: z.int().min(0) })),
  /** Whether it may run beside the stage before it, and which calculators stand on its page; null: those of its kind. */
  'stage:set-up': writes<Changed>()(
    z.object({
      stageId,
      isBeside: z.boolean(),
      calculators: z.array(z.string().max(60)).max(40).readonly().nullable(),
    }),
  ),
  'stage:remove': writes<Changed>()(z.object({ stageId })),

  'checklist:add': writes<Changed>()(
    z.object({ stageId, text: z.string().trim().min(1).max(300), isGate: z.boolean() }),
  ),
  'checklist:tick': writes<Changed>()(z.object({ checklistItemId, ticked: z.boolean() })),
  'checklist:remove': writes<Changed>()(z.object({ checklistItemId })),

  /** Keeps a picture (JPEG, PNG or WebP, 40 MB at most) with a stage; the same picture is stored once. */
  'photo:add': writes<Changed & { readonly photoId: PhotoId }>()(
    z.object({
      stageId,
      bytes: z.instanceof(Uint8Array),
      caption: z.string().trim().max(300),
      ofTrip: z.object({ tripId, moment: photoMoment }).optional(),
    }),
  ),
  'photo:remove': writes<Changed>()(z.object({ photoId })),

  'stage-plan:list': reads<readonly StagePlan[]>()(z.object({})),
  'stage-plan:keep': writes<Changed & { readonly stagePlanId: StagePlan['id'] }>()(
    z.object({
      stagePlanId: stagePlanId.nullable(),
      name: z.string().trim().min(1).max(120),
      says: z.string().trim().max(300),
      stages: z.array(plannedStage).min(1).max(40).readonly(),
    }),
  ),
  'stage-plan:delete': writes<Changed>()(z.object({ stagePlanId })),
};
