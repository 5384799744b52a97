import type { StagePlan } from '#core/contract/projects';
import type { Project, ProjectDetails } from '#core/domain/project';
import { sidesFault } from '#core/domain/outline';
import { isOver } from '#core/domain/stage';
import { minutesForSize, type Piece, stagesForSize } from '#core/learned/size-estimate';
import { updateRow, type WritableStore } from '../base/handles';
import { listedStagesByProject } from './stage-rows';

/** The stages of a plan with the hours for a project: those of a starting plan follow its size, the maker's own are taken as they are. */
export function stagesForProject({ isOwn, stages }: StagePlan, piece: Piece): StagePlan['stages'] {
  return isOwn ? stages : stagesForSize(stages, piece);
}

/** Lets the hours of a project follow its new size, where the maker has not set them. */
export function resizeEstimates(store: WritableStore, before: Project, after: ProjectDetails): void {
  // Sides that cannot close have no area. They could be saved once.
  if (sidesFault(before.outline) !== null) return;
  for (const stage of listedStagesByProject(store, [before.id]).get(before.id) ?? []) {
    if (stage.isOwnEstimate || isOver(stage)) continue;
    const minutes = minutesForSize(stage, before, after);
    if (minutes !== stage.estimateMinutes) updateRow(store, 'stage', stage.id, { estimate_minutes: minutes });
  }
}
