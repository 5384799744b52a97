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

/** The calculators of the piecing stage. */
function PiecingNumbers({ projectId }: { readonly projectId: ProjectId }) {
  const { settings } = useWorkshop();
  const spread = useRead('project:open', { projectId }).value;
  const stage = spread?.stages.find(({ kind }) => kind === 'piecing');
  if (spread === undefined || stage === undefined) return null;
  return <Numbers stage={stage} measurements={measurementsOfProject(spread.project, settings)} />;
}

it('fills in the sizes of a saved answer with one press, so that only the measured ones are typed', async () => {
  const workshop = workshopBehindWindow();
  const { projectId, stages } = addProject(workshop);
  const stageId = stages.find(({ kind }) => kind === 'piecing')!.id;
  const ownInput = { blockSize: inches(12), patchesAcross: 4, blocksAcross: 4 };
  workshop.get('calculation:save', { stageId, calculator: 'accuracy', ownInput });
  renderPage(<PiecingNumbers projectId={projectId} />);
  await userEvent.click(await screen.findByText(/^More questions/));
  await userEvent.click(screen.getByRole('button', { name: /What your seams take/ }));
  const take = await screen.findByRole('button', { name: 'Take the sizes from “How accurate to sew”' });
  await userEvent.click(take);
  await waitFor(() => expect(take).not.toBeInTheDocument());

  await userEvent.click(screen.getByRole('button', { name: 'Save this answer' }));
  await waitFor(() => expect(workshop.get('calculation:list', { stageId })).toHaveLength(2));
  const saved = workshop.get('calculation:list', { stageId }).find((one) => one.calculator === 'seam-check');
  expect(saved?.input).toMatchObject({ top: { size: inches(48.5), seams: 15, patches: 16 } });
});

it('offers nothing without a saved answer', async () => {
  const { projectId } = addProject(workshopBehindWindow());
  renderPage(<PiecingNumbers projectId={projectId} />);
  await userEvent.click(await screen.findByText(/^More questions/));
  await userEvent.click(screen.getByRole('button', { name: /What your seams take/ }));
  expect(await screen.findByText('From these numbers')).toBeInTheDocument();
  expect(screen.queryByRole('button', { name: /^Take the sizes/ })).toBeNull();
});
