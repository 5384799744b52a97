import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import type { ProjectId } from '#core/domain/ids';
import { measurementsOfProject } from '#core/domain/measurements';
import { useRead } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { Numbers } from '#renderer/features/stage/calculators/numbers';
import { renderPage, workshopBehindWindow } from '#test/helpers/page-on-store';
import { addProject, inches } from '#test/helpers/workshop';

/** The calculators of the outer binding's stage. */
function BindingNumbers({ projectId }: { readonly projectId: ProjectId }) {
  const { settings } = useWorkshop();
  const spread = useRead('project:open', { projectId }).value;
  const stage = spread?.stages.find(({ kind }) => kind === 'outer-binding');
  if (spread === undefined || stage === undefined) return null;
  return <Numbers stage={stage} measurements={measurementsOfProject(spread.project, settings)} />;
}

it('says that a changed fact is only tried, and makes it the project’s with one press', async () => {
  const workshop = workshopBehindWindow();
  const { projectId } = addProject(workshop);
  renderPage(<BindingNumbers projectId={projectId} />);
  const [seam] = await screen.findAllByRole('textbox', { name: /^Seam allowance/ });
  if (seam === undefined) throw new Error('There is no field for the seam');
  await userEvent.clear(seam);
  await userEvent.type(seam, '3/8{Enter}');
  const trying = await screen.findByRole('list', { name: 'Just trying' });
  expect(trying).toHaveTextContent('Seam allowance: just trying 3/8 in. The project has 1/4 in.');
  expect(workshop.get('project:open', { projectId }).project.settingChanges).toEqual({});

  await userEvent.click(screen.getByRole('button', { name: 'Use ⅜ in for this project' }));
  await waitFor(() => expect(screen.queryByRole('list', { name: 'Just trying' })).toBeNull());
  expect(workshop.get('project:open', { projectId }).project.settingChanges).toEqual({
    seamAllowance: inches(3 / 8),
  });
});

it('puts a tried fact back to the project’s with one press', async () => {
  const workshop = workshopBehindWindow();
  const { projectId } = addProject(workshop);
  renderPage(<BindingNumbers projectId={projectId} />);
  const [seam] = await screen.findAllByRole('textbox', { name: /^Seam allowance/ });
  if (seam === undefined) throw new Error('There is no field for the seam');
  await userEvent.clear(seam);
  await userEvent.type(seam, '3/8{Enter}');
  await userEvent.click(await screen.findByRole('button', { name: 'Back to ¼ in' }));
  await waitFor(() => expect(screen.queryByRole('list', { name: 'Just trying' })).toBeNull());
  expect(seam).toHaveValue('1/4 in');
});
