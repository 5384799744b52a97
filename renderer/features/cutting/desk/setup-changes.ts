import {
  type FabricChoice,
  type CuttingLine,
  type CuttingSetup,
  cuttingSetupSchema,
  STARTING_TABLE,
} from '#core/domain/cutting-setup';
import type { FabricPieceId, ProjectId } from '#core/domain/ids';
import { isSameSource, linesOfSource, type PatchSource, startingSources } from './patch-sources';

export function isSetup(stored: unknown): stored is CuttingSetup {
  return cuttingSetupSchema.safeParse(stored).success;
}

/** A new plan for one project, with the lists of its saved answers. */
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

/** Adds another project, with the lists of its saved answers. */
export function withProject(
  setup: CuttingSetup,
  project: ProjectId,
  sources: readonly PatchSource[],
): CuttingSetup {
  if (setup.projects.includes(project)) return setup;
  return startingSources(sources).reduce(withSource, { ...setup, projects: [...setup.projects, project] });
}

/** Removes a project and all its lines. The first one stays, because the plan is stored with it. */
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

/** Uses the list of a saved answer, in place of what came from that answer before. */
export function withSource(setup: CuttingSetup, source: PatchSource): CuttingSetup {
  const { stageId, calculator, savedAt } = source;
  const without = withoutSource(setup, source);
  return {
    ...without,
    taken: [...without.taken, { source: { stageId, calculator }, keptAt: savedAt }],
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

/** Whether the answer was saved again since the plan took its list. */
export function isBehind(setup: CuttingSetup, source: PatchSource): boolean {
  const taken = setup.taken.find((one) => isSameSource(one.source, source));
  return taken !== undefined && taken.keptAt !== source.savedAt;
}

/** Replaces the line with the same id, or adds a new one at the end. */
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

/** Sets which fabric of the stash a fabric of a list is cut from; null means it is bought new. */
export function withFabricChoice(setup: CuttingSetup, choice: FabricChoice): CuttingSetup {
  const others = setup.fabricChoices.filter(
    ({ projectId, fabric }) => projectId !== choice.projectId || fabric !== choice.fabric,
  );
  return { ...setup, fabricChoices: [...others, choice] };
}

export function withPiece(setup: CuttingSetup, piece: FabricPieceId, mayBeCut: boolean): CuttingSetup {
  const others = setup.leftOut.filter((one) => one !== piece);
  return { ...setup, leftOut: mayBeCut ? others : [...others, piece] };
}

/** Allows one of these pieces to be cut and leaves the others alone. */
export function withOnlyPiece(
  setup: CuttingSetup,
  piece: FabricPieceId,
  pieces: readonly FabricPieceId[],
): CuttingSetup {
  return pieces.reduce((changed, one) => withPiece(changed, one, one === piece), setup);
}

/** Lines with the same project and fabric, in the order of their first line. */
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
