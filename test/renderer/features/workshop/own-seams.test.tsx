import { screen } from '@testing-library/react';
import { expect, it } from 'vitest';
import type { ProjectId } from '#core/domain/ids';
import { measurementsOfProject } from '#core/domain/measurements';
import { useRead } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { Numbers } from '#renderer/features/stage/calculators/numbers';
import { OwnSeams } from '#renderer/features/workshop/own-seams';
import userEvent from '@testing-library/user-event';
import { renderPage, workshopBehindWindow } from '#test/helpers/page-on-store';
import { blocksOff } from '#test/helpers/seam-checks';
import { addProject, inches, type TestWorkshop } from '#test/helpers/workshop';

function measureProjects(workshop: TestWorkshop, count: number): ProjectId {
  const projects = Array.from({ length: count }, (_, at) =>
    addProject(workshop, { name: `Ring ${String(at)}` }),
  );
  for (const { stages } of projects)
    workshop.get('calculation:save', {
      stageId: stages.find(({ kind }) => kind === 'piecing')!.id,
      calculator: 'seam-check',
      ownInput: { ...blocksOff(-1 / 8, -1 / 8, -1 / 8, -1 / 8), readTo: inches(1 / 254) },
    });
  return projects[0]!.projectId;
}

/** The calculators of the piecing stage. */
function PiecingNumbers({ projectId }: { readonly projectId: ProjectId }) {
  const { settings } = useWorkshop();
  const spread = useRead('project:open', { projectId }).value;
  const stage = spread?.stages.find(({ kind }) => kind === 'piecing');
  if (spread === undefined || stage === undefined) return null;
  return <Numbers stage={stage} measurements={measurementsOfProject(spread.project, settings)} />;
}

it('shows what was learned on the page of the workshop, and from how many projects', async () => {
  measureProjects(workshopBehindWindow(), 3);
  renderPage(<OwnSeams />);
  const section = await screen.findByRole('region', { name: 'Your seams' });
  expect(section).toHaveTextContent(/On average 1\/32 in too wide on each side/);
  expect(section).toHaveTextContent('Measured in 3 projects.');
  expect(section).toHaveTextContent('In use');
});

it('says so while it is too little', async () => {
  measureProjects(workshopBehindWindow(), 1);
  renderPage(<OwnSeams />);
  const section = await screen.findByRole('region', { name: 'Your seams' });
  expect(section).toHaveTextContent('Measured in 1 project.');
  expect(section).toHaveTextContent('Not used yet');
});

it.each([
  [
    2,
    'Your seams and cuts are those of the settings. Once 3 projects are measured, they are learned from them; so far there are 2.',
  ],
  [3, 'Your seams and cuts are learned: from what you measured in 3 projects.'],
])('says beside the numbers of accuracy where they come from, with %i projects', async (count, words) => {
  const projectId = measureProjects(workshopBehindWindow(), count);
  renderPage(<PiecingNumbers projectId={projectId} />);
  await userEvent.click(await screen.findByRole('button', { name: /How accurate to sew/ }));
  expect(await screen.findByText(words)).toBeVisible();
});
