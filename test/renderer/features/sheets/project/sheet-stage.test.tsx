import { screen } from '@testing-library/react';
import { expect, it } from 'vitest';
import { stageSteps } from '#core/calculators/stage-steps/stage-steps';
import type { ProjectId } from '#core/domain/ids';
import { measurementsOfProject } from '#core/domain/measurements';
import { kindsBefore } from '#core/domain/stage';
import { useRead } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { paperAnswers } from '#renderer/features/sheets/project/sheet-lines';
import { SheetStage } from '#renderer/features/sheets/project/sheet-stage';
import { renderPage, workshopBehindWindow } from '#test/helpers/page-on-store';
import { addProject } from '#test/helpers/workshop';

interface PrintedProps {
  readonly projectId: ProjectId;
  readonly kind: string;
}

/** A stage of the project as it is printed. */
function PrintedStage({ projectId, kind }: PrintedProps) {
  const { settings } = useWorkshop();
  const spread = useRead('project:open', { projectId }).value;
  const stage = spread?.stages.find((one) => one.kind === kind);
  const answers = useRead(
    'calculation:list',
    { stageId: stage?.id as never },
    { isOn: stage !== undefined },
  ).value;
  if (spread === undefined || stage === undefined || answers === undefined) return null;
  const measurements = measurementsOfProject(spread.project, settings);
  return (
    <SheetStage
      stage={stage}
      spread={spread}
      answers={paperAnswers(answers, measurements)}
      steps={stageSteps({ stage, before: kindsBefore(stage, spread.stages), measurements, answers })}
      estimate={undefined}
    />
  );
}

it('prints the steps of the current stage once, and its other tables', async () => {
  const workshop = workshopBehindWindow();
  const { projectId, stages } = addProject(workshop);
  const stageId = stages[0]!.id;
  workshop.get('calculation:save', { stageId, calculator: 'wedge-ring', ownInput: {} });
  renderPage(<PrintedStage projectId={projectId} kind="piecing" />);
  expect(await screen.findByRole('heading', { name: 'Cutting' })).toBeInTheDocument();
  expect(screen.getByRole('heading', { name: 'A ring of wedges, step by step' })).toBeInTheDocument();
  expect(screen.getAllByText(/Sew the wedges in pairs/)).toHaveLength(1);
  expect(screen.getByRole('table', { name: 'One wedge' })).toBeInTheDocument();
  expect(screen.queryByRole('table', { name: 'How to do it' })).toBeNull();
});

it('prints no steps of a stage that is still to come', async () => {
  const workshop = workshopBehindWindow();
  const { projectId } = addProject(workshop);
  renderPage(<PrintedStage projectId={projectId} kind="center-cut" />);
  expect(await screen.findByRole('heading', { name: 'Cut the center' })).toBeInTheDocument();
  expect(screen.queryByRole('heading', { name: 'Cutting the hole' })).toBeNull();
});
