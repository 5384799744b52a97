import type { FabricPieceId, FabricId, ProjectId, StageId } from '#core/domain/ids';
import type { Need } from '#core/domain/need';

/** What one saved answer, or one cutting plan, asks for, and for which project. */
export interface FabricNeed extends Need {
  readonly projectId: ProjectId;
  readonly projectName: string;
  /** Null where a cutting plan for the whole project asks for it. */
  readonly stageId: StageId | null;
  readonly stageName: string | null;
  /** `cutting-plan`, or the stage and the calculator. Together with the name it tells a project's needs apart. */
  readonly source: string;
  /** The fabric of the stash to use; null where none is chosen. */
  readonly fabricId: FabricId | null;
  /** Pieces of fabric that a cutting plan has counted already. */
  readonly ignores: readonly FabricPieceId[];
}

/** Tells the needs of all projects apart. */
export function needKey({
  projectId,
  source,
  name,
}: Pick<FabricNeed, 'projectId' | 'source' | 'name'>): string {
  return JSON.stringify([projectId, source, name]);
}
