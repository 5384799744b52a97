import { stageSteps } from '#core/calculators/stage-steps/stage-steps';
import type { SheetPaper } from '#core/domain/paper';
import type { ProjectSpread } from '#core/contract/projects';
import type { ProjectId } from '#core/domain/ids';
import { kindsBefore } from '#core/domain/stage';
import { measurementsOfProject } from '#core/domain/measurements';
import { useRead, useReadEach } from '#renderer/bridge/query';
import { useOpening } from '#renderer/bridge/workshop';
import { problemWords } from '#renderer/text/problems';
import { useDisplay } from '#renderer/ui/base/display';
import { SettingsDisplay } from '#renderer/ui/base/settings-display';
import { RunningSheet } from '../paper/running-sheet';
import { SheetCautions } from './sheet-cautions';
import { SheetFabric } from './sheet-fabric';
import { ProjectFacts } from './project-facts';
import { SheetStage } from './sheet-stage';
import { EmptySheet } from '../paper/empty-sheet';
import { paperAnswers } from './sheet-lines';
import { defineSheet, readProject } from '../sheet';

interface ProjectSheetProps {
  readonly projectId: ProjectId;
  readonly paper: SheetPaper;
}

/** A project on paper: its sizes, its fabric, and every stage with its numbers and lines to tick by hand. */
function ProjectSheet({ projectId, paper }: ProjectSheetProps) {
  const { value: spread, problem } = useRead('project:open', { projectId });
  const { length } = useDisplay();
  if (problem !== null) return <EmptySheet paper={paper}>{problemWords(problem, length)}</EmptySheet>;
  return spread === undefined ? null : <WholeSheet spread={spread} paper={paper} />;
}

function WholeSheet({ spread, paper }: { readonly spread: ProjectSpread; readonly paper: SheetPaper }) {
  const { project, stages } = spread;
  const opening = useOpening();
  const { value: fabric, isLoading } = useRead('ledger:of-project', { projectId: project.id });
  const { value: estimates } = useRead('stage:estimates', { projectId: project.id });
  const saved = useReadEach(
    'calculation:list',
    stages.map(({ id }) => ({ stageId: id })),
  );
  if (opening === undefined || isLoading || saved === undefined || estimates === undefined) return null;
  const measurements = measurementsOfProject(project, opening.settingsInUse, stages);
  return (
    <SettingsDisplay settings={measurements.settings}>
      <RunningSheet paper={paper} name={project.name}>
        <ProjectFacts spread={spread} settings={measurements.settings} />
        {fabric !== undefined && <SheetFabric fabric={fabric} />}
        <SheetCautions stages={stages} />
        {stages
          .map((stage, place) => ({ stage, answers: saved[place] ?? [] }))
          .filter(({ stage }) => stage.state !== 'skipped')
          .map(({ stage, answers }) => (
            <SheetStage
              key={stage.id}
              stage={stage}
              spread={spread}
              answers={paperAnswers(answers, measurements)}
              steps={stageSteps({ stage, before: kindsBefore(stage, stages), measurements, answers })}
              estimate={estimates[stage.id]}
            />
          ))}
      </RunningSheet>
    </SettingsDisplay>
  );
}

export const projectSheet = defineSheet(readProject, ProjectSheet);
