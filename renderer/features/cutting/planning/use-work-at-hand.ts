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
  /** What the projects hold themselves, by piece, 1/320 mm. */
  readonly ownHolds: ReadonlyMap<FabricPieceId, number>;
  readonly heldFabrics: readonly FabricId[];
}

/** What the notebook knows of these projects that a cutting plan asks for; undefined until all of it is read. */
export function useWorkAtHand(projects: readonly ProjectId[]): WorkAtHand | undefined {
  const { settings } = useWorkshop();
  const asked = projects.map((projectId) => ({ projectId }));
  const opened = useReadEach('project:open', asked);
  const used = useReadEach('ledger:of-project', asked);
  const spreads = (opened ?? []).filter((spread) => spread !== null);
  const stages = spreads.flatMap((spread) => spread.stages);
  const kept = useReadEach(
    'calculation:list',
    stages.map(({ id }) => ({ stageId: id })),
  );
  if (opened === undefined || used === undefined || kept === undefined) return undefined;
  const keptOf = new Map(stages.map(({ id }, place) => [id, kept[place] ?? []]));
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

/** The fabrics of the stash with their pieces; undefined until all are read. One that is gone is left out. */
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

/** Fabrics of the stash that are called exactly as in a list, by that name in small letters. */
export function useFabricsNamed(names: readonly string[]): ReadonlyMap<string, FabricId> | undefined {
  const found = useReadEach(
    'fabric:list',
    names.map((name) => ({ search: name.slice(0, 200), limit: 50 })),
  );
  if (found === undefined) return undefined;
  const named = names.flatMap((name, place) => {
    const small = name.toLowerCase();
    const match = found[place]?.items.find(({ fabric }) => fabric.name.toLowerCase() === small);
    return match === undefined ? [] : [[small, match.fabric.id] as const];
  });
  return new Map(named);
}
