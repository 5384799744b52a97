import type { Booking } from '#core/contract/stash';
import type { FabricPieceId, ProjectId } from '#core/domain/ids';

/** Fabric of one piece that is set aside for a project, 1/320 mm. */
export interface Hold {
  readonly projectId: ProjectId;
  readonly projectName: string;
  readonly held: number;
}

/** How much of a piece is set aside for each project: sums of the ledger, in the order the projects first appear in it. */
export function holdsOf(ledger: readonly Booking[], pieceId: FabricPieceId): readonly Hold[] {
  const holds = new Map<ProjectId, Hold>();
  for (const { projectId, projectName, entries } of ledger.toReversed()) {
    if (projectId === null) continue;
    const change = entries
      .filter((entry) => entry.pieceId === pieceId)
      .reduce((sum, { heldChange }) => sum + heldChange, 0);
    const before = holds.get(projectId)?.held ?? 0;
    holds.set(projectId, { projectId, projectName: projectName ?? 'a project', held: before + change });
  }
  return [...holds.values()].filter(({ held }) => held > 0);
}
