import { screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import type { ProjectId } from '#core/domain/ids';
import { measurementsOfProject } from '#core/domain/measurements';
import { useRead } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { HowItIsDone } from '#renderer/features/stage/how-it-is-done';
import { renderPage, workshopBehindWindow } from '#test/helpers/page-on-store';
import { addProject, inches } from '#test/helpers/workshop';

function CenterCutSteps({ projectId }: { readonly projectId: ProjectId }) {
  const { settings } = useWorkshop();
  const spread = useRead('project:open', { projectId }).value;
  const stage = spread?.stages.find(({ kind }) => kind === 'center-cut');
  if (spread === undefined || stage === undefined) return null;
  const measurements = measurementsOfProject(spread.project, settings);
  return <HowItIsDone stage={stage} stages={spread.stages} measurements={measurements} />;
}

it('shows the steps with the project’s numbers and the cautions of the stage', async () => {
  const workshop = workshopBehindWindow();
  const { projectId } = addProject(workshop, { hole: { diameter: inches(7) } });
  renderPage(<CenterCutSteps projectId={projectId} />);
  await userEvent.click(await screen.findByText('How it is done, step by step'));
  expect(screen.getByText(/Draw the cut line: a circle 7 in across/)).toBeInTheDocument();
  expect(screen.getByRole('note')).toHaveTextContent('Close the blade every time you set it down');
  expect(screen.getByRole('heading', { name: 'Cutting the hole' })).toBeInTheDocument();
});
