import { useMemo } from 'react';
import type { ProjectSpread } from '#core/contract/projects';
import type { CuttingLine } from '#core/domain/cutting-setup';
import type { FabricPieceId, FabricId, ProjectId } from '#core/domain/ids';
import { useReadEach } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import type { FabricInStash } from './job-of-setup';
import { isSameSource, type PatchSource, sourcesOf } from '../desk/patch-sources';

export interface WorkAtHand {
  readonly spreads: readonly ProjectSpread[];
  readonly sources: readonly PatchSource[];
  /** What is set aside for these projects, by piece, 1/320 mm. */
  readonly ownHolds: ReadonlyMap<FabricPieceId, number>;
  readonly heldFabrics: readonly FabricId[];
}

/** All that a cutting plan needs to know about these projects; undefined until it is read. */
export function useWorkAtHand(projects: readonly ProjectId[]): WorkAtHand | undefined {
  const { settings } = useWorkshop();
  const asked = projects.map((projectId) => ({ projectId }));
  const opened = useReadEach('project:open', asked);
  const used = useReadEach('ledger:of-project', asked);
  const spreads = (opened ?? []).filter((spread) => spread !== null);
  const stages = spreads.flatMap((spread) => spread.stages);
  const saved = useReadEach(
    'calculation:list',
    stages.map(({ id }) => ({ stageId: id })),
  );
  if (opened === undefined || used === undefined || saved === undefined) return undefined;
  const keptOf = new Map(stages.map(({ id }, place) => [id, saved[place] ?? []]));
  const held = used.flatMap((one) => one?.held ?? []);
  const ownHolds = new Map<FabricPieceId, number>();
  for (const one of held) ownHolds.set(one.piece.id, (ownHolds.get(one.piece.id) ?? 0) + one.held);
  return {
    spreads,
    sources: spreads.flatMap((spread) =>
      sourcesOf(
        spread,
        spread.stages.map(({ id }) => keptOf.get(id) ?? []),
        settings,
      ),
    ),
    ownHolds,
    heldFabrics: [...new Set(held.map(({ fabric }) => fabric.id))],
  };
}

/** What patches are for: `“The whole top” of Autumn ring, Dark`. */
export function purposeOf({ spreads, sources }: WorkAtHand, line: CuttingLine): string {
  const project = spreads.find((spread) => spread.project.id === line.projectId)?.project.name ?? '';
  const source = sources.find((one) => isSameSource(line.source, one));
  const list = source === undefined ? '' : `“${source.title}” of `;
  return `${list}${project}, ${line.fabric}`;
}

/** The fabrics of the stash with their pieces; undefined until all are read. A deleted fabric is left out. */
export function useFabricsInStash(
  fabrics: readonly FabricId[],
): ReadonlyMap<FabricId, FabricInStash> | undefined {
  const opened = useReadEach(
    'fabric:open',
    fabrics.map((fabricId) => ({ fabricId })),
  );
  return useMemo(
    () =>
      opened === undefined
        ? undefined
        : new Map(opened.flatMap((page) => (page === null ? [] : [[page.fabric.id, page] as const]))),
    [opened],
  );
}

/** Fabrics of the stash with exactly one of these names, by the name in lower case. */
export function useFabricsNamed(names: readonly string[]): ReadonlyMap<string, FabricId> | undefined {
  const found = useReadEach(
    'fabric:list',
    names.map((name) => ({ search: name.slice(0, 200), limit: 50 })),
  );
  if (found === undefined) return undefined;
  const named = names.flatMap((name, place) => {
    const lowerCase = name.toLowerCase();
    const match = found[place]?.items.find(({ fabric }) => fabric.name.toLowerCase() === lowerCase);
    return match === undefined ? [] : [[lowerCase, match.fabric.id] as const];
  });
  return new Map(named);
}
