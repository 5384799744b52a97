import { isOutOfDate } from '#core/calculators/complete-input';
import { calculatorByName } from '#core/calculators/registry';
import { answersThatCount, cutsOfSavedAnswer } from '#core/calculators/saved-answer';
import type { KeptCalculation } from '#core/contract/calculations';
import type { ProjectSpread } from '#core/contract/projects';
import type { CuttingLine, LineSource } from '#core/domain/cutting-setup';
import type { ProjectId } from '#core/domain/ids';
import { measurementsOfProject } from '#core/domain/measurements';
import type { PatchList } from '#core/domain/patch-list';
import type { Settings } from '#core/domain/workshop';

/** A kept answer that says what to cut. */
export interface PatchSource extends LineSource {
  readonly projectId: ProjectId;
  readonly stageName: string;
  readonly title: string;
  readonly patches: PatchList;
  readonly keptAt: number;
  /** The project has changed since it was kept. */
  readonly isOld: boolean;
}

/** The kept answers of a project's stages that say what to cut; `kept` holds those of each stage, in the same order. */
export function sourcesOf(
  { project, stages }: Pick<ProjectSpread, 'project' | 'stages'>,
  kept: readonly (readonly KeptCalculation[])[],
  settings: Settings,
): readonly PatchSource[] {
  const measurements = measurementsOfProject(project, settings);
  return stages.flatMap((stage, place) =>
    (kept[place] ?? []).flatMap((one) => {
      const patches = cutsOfSavedAnswer(one);
      const calculator = calculatorByName(one.calculator);
      if (patches.length === 0 || calculator === undefined) return [];
      return [
        {
          stageId: stage.id,
          calculator: one.calculator,
          projectId: project.id,
          stageName: stage.name,
          title: calculator.title,
          patches,
          keptAt: one.keptAt,
          isOld: isOutOfDate(one, calculator, measurements),
        },
      ];
    }),
  );
}

/** What a plan takes without asking: the answers of each stage that count, but not what is cut later. */
export function startingSources(sources: readonly PatchSource[]): readonly PatchSource[] {
  return sources.filter((source) => {
    const ofStage = sources.filter(({ stageId }) => stageId === source.stageId);
    const isLater = calculatorByName(source.calculator)?.isCutLater ?? false;
    return !isLater && answersThatCount(ofStage).includes(source);
  });
}

/** The lines of a kept answer's list, as they are taken into a cutting plan. */
export function linesOfSource({
  stageId,
  calculator,
  projectId,
  patches,
}: PatchSource): readonly CuttingLine[] {
  return patches.map((patch, index) => ({
    ...patch,
    id: `${stageId}/${calculator}/${String(index)}`,
    projectId,
    source: { stageId, calculator },
  }));
}

export function isSameSource(one: LineSource | null, other: LineSource): boolean {
  return one !== null && one.stageId === other.stageId && one.calculator === other.calculator;
}

export function copiesIn(patches: readonly { readonly count: number }[]): number {
  return patches.reduce((sum, { count }) => sum + count, 0);
}
