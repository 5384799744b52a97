import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import type { FabricId } from '#core/domain/ids';
import { LineDialog } from '#renderer/features/cutting/desk/line-dialog';
import { renderPage, workshopBehindWindow } from '#test/helpers/page-on-store';
import { addProject, addStock } from '#test/helpers/workshop';

it('takes patches from the fabric of the stash that is named, and says when a name is to be bought', async () => {
  const workshop = workshopBehindWindow();
  const { projectId } = addProject(workshop);
  const { fabricId } = addStock(workshop);
  const { name } = workshop.get('fabric:open', { fabricId }).fabric;
  const saved: (FabricId | null)[] = [];
  renderPage(
    <LineDialog
      line={null}
      projects={[{ id: projectId, name: 'Autumn ring' }]}
      fabrics={[]}
      onSave={(_line, fabric) => saved.push(fabric)}
      onClose={() => undefined}
    />,
  );
  const field = await screen.findByRole('combobox', { name: 'Fabric' });
  await userEvent.type(field, name.slice(0, 4));
  expect(screen.getByText(/a name that is not there is to be bought/)).toBeVisible();
  await waitFor(() =>
    expect([...document.querySelectorAll('option')].map(({ value }) => value)).toContain(name),
  );
  await userEvent.type(field, name.slice(4).toUpperCase());
  expect(await screen.findByText('It is in the stash.')).toBeVisible();
  for (const [label, text] of [
    ['Across the fabric', '3 1/2'],
    ['Along the fabric', '3 1/2'],
    ['How many', '12'],
  ] as const)
    await userEvent.type(screen.getByRole('textbox', { name: new RegExp(`^${label}`, 'u') }), text);
  await userEvent.click(screen.getByRole('button', { name: 'Save' }));
  expect(saved).toEqual([fabricId]);
});
