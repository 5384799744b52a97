import type { Booking } from '#core/contract/stash';
import type { FabricPieceId, ProjectId } from '#core/domain/ids';

/** Fabric of one piece that a project has spoken for, 1/320 mm. */
export interface Hold {
  readonly projectId: ProjectId;
  readonly projectName: string;
  readonly held: number;
}

/** Who holds how much of a piece: the sum of the ledger, projects in the order they first came to it, none that holds nothing. */
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
