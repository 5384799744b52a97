import { isOutOfDate } from '#core/calculators/complete-input';
import { calculatorByName } from '#core/calculators/registry';
import { answersThatCount, cutsOfSavedAnswer } from '#core/calculators/saved-answer';
import type { SavedCalculation } from '#core/contract/calculations';
import type { ProjectSpread } from '#core/contract/projects';
import type { CuttingLine, LineSource } from '#core/domain/cutting-setup';
import type { ProjectId } from '#core/domain/ids';
import { measurementsOfProject } from '#core/domain/measurements';
import type { PatchList } from '#core/domain/patch-list';
import type { Settings } from '#core/domain/workshop';

/** A saved answer with a list of patches. */
export interface PatchSource extends LineSource {
  readonly projectId: ProjectId;
  readonly stageName: string;
  readonly title: string;
  readonly patches: PatchList;
  readonly savedAt: number;
  /** The project has changed since the answer was saved. */
  readonly isOld: boolean;
}

/** The saved answers of a project that list patches. `saved` has the answers of each stage, in the order of the stages. */
export function sourcesOf(
  { project, stages }: Pick<ProjectSpread, 'project' | 'stages'>,
  saved: readonly (readonly SavedCalculation[])[],
  settings: Settings,
): readonly PatchSource[] {
  const measurements = measurementsOfProject(project, settings, stages);
  return stages.flatMap((stage, place) =>
    (saved[place] ?? []).flatMap((one) => {
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
          savedAt: one.savedAt,
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

/** The list of a saved answer as lines of a cutting plan. */
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
