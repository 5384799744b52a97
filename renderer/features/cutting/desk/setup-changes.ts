import {
  type FabricChoice,
  type CuttingLine,
  type CuttingSetup,
  cuttingSetup,
  STARTING_TABLE,
} from '#core/domain/cutting-setup';
import type { FabricPieceId, ProjectId } from '#core/domain/ids';
import { isSameSource, linesOfSource, type PatchSource, startingSources } from './patch-sources';

export function isSetup(stored: unknown): stored is CuttingSetup {
  return cuttingSetup.safeParse(stored).success;
}

/** A plan for one project from the answers kept with it. */
export function startingSetup(project: ProjectId, sources: readonly PatchSource[]): CuttingSetup {
  const empty: CuttingSetup = {
    projects: [],
    taken: [],
    lines: [],
    fabricChoices: [],
    leftOut: [],
    table: STARTING_TABLE,
  };
  return withProject(empty, project, sources);
}

/** Cuts for another project too, with the lists of its answers. */
export function withProject(
  setup: CuttingSetup,
  project: ProjectId,
  sources: readonly PatchSource[],
): CuttingSetup {
  if (setup.projects.includes(project)) return setup;
  return startingSources(sources).reduce(withSource, { ...setup, projects: [...setup.projects, project] });
}

/** Leaves a project out again, with all its lines. The first one stays: the plan is its own. */
export function withoutProject(setup: CuttingSetup, project: ProjectId): CuttingSetup {
  if (setup.projects[0] === project) return setup;
  const gone = setup.lines.filter((line) => line.projectId === project);
  return {
    ...setup,
    projects: setup.projects.filter((one) => one !== project),
    taken: setup.taken.filter(({ source }) => !gone.some((line) => isSameSource(line.source, source))),
    lines: setup.lines.filter((line) => line.projectId !== project),
    fabricChoices: setup.fabricChoices.filter((choice) => choice.projectId !== project),
  };
}

/** Takes the list of an answer, in place of what was taken from it before. */
export function withSource(setup: CuttingSetup, source: PatchSource): CuttingSetup {
  const { stageId, calculator, keptAt } = source;
  const without = withoutSource(setup, source);
  return {
    ...without,
    taken: [...without.taken, { source: { stageId, calculator }, keptAt }],
    lines: [...without.lines, ...linesOfSource(source)],
  };
}

export function withoutSource(setup: CuttingSetup, source: PatchSource): CuttingSetup {
  return {
    ...setup,
    taken: setup.taken.filter((one) => !isSameSource(one.source, source)),
    lines: setup.lines.filter((line) => !isSameSource(line.source, source)),
  };
}

export function isTaken(setup: CuttingSetup, source: PatchSource): boolean {
  return setup.taken.some((one) => isSameSource(one.source, source));
}

/** Whether the answer was kept anew since its list was taken. */
export function isBehind(setup: CuttingSetup, source: PatchSource): boolean {
  const taken = setup.taken.find((one) => isSameSource(one.source, source));
  return taken !== undefined && taken.keptAt !== source.keptAt;
}

/** Puts a line in the place of the one with its id, or at the end. */
export function withLine(setup: CuttingSetup, line: CuttingLine): CuttingSetup {
  const isNew = !setup.lines.some(({ id }) => id === line.id);
  return {
    ...setup,
    lines: isNew ? [...setup.lines, line] : setup.lines.map((one) => (one.id === line.id ? line : one)),
  };
}

export function withoutLine(setup: CuttingSetup, id: string): CuttingSetup {
  return { ...setup, lines: setup.lines.filter((line) => line.id !== id) };
}

/** Cuts a fabric of a project's list from this fabric of the stash; null plans it as new fabric. */
export function withStock(setup: CuttingSetup, choice: FabricChoice): CuttingSetup {
  const others = setup.fabricChoices.filter(
    ({ projectId, fabric }) => projectId !== choice.projectId || fabric !== choice.fabric,
  );
  return { ...setup, fabricChoices: [...others, choice] };
}

export function withPiece(setup: CuttingSetup, piece: FabricPieceId, mayBeCut: boolean): CuttingSetup {
  const others = setup.leftOut.filter((one) => one !== piece);
  return { ...setup, leftOut: mayBeCut ? others : [...others, piece] };
}

/** Cuts from this one of some pieces, and leaves the others alone. */
export function withOnlyPiece(
  setup: CuttingSetup,
  piece: FabricPieceId,
  pieces: readonly FabricPieceId[],
): CuttingSetup {
  return pieces.reduce((so, one) => withPiece(so, one, one === piece), setup);
}

/** Lines that share a fabric of a project's list, in the order they first come. */
export interface PatchGroup {
  readonly projectId: ProjectId;
  readonly fabric: string;
  readonly lines: readonly CuttingLine[];
}

export function patchGroups({ lines }: Pick<CuttingSetup, 'lines'>): readonly PatchGroup[] {
  const groups = new Map<string, PatchGroup>();
  for (const line of lines) {
    const { projectId, fabric } = line;
    const key = `${projectId} ${fabric}`;
    groups.set(key, { projectId, fabric, lines: [...(groups.get(key)?.lines ?? []), line] });
  }
  return [...groups.values()];
}
