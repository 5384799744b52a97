import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { ImportPage } from '#renderer/features/stash/table/import-page';
import { renderPage, workshopBehindWindow } from '#test/helpers/page-on-store';

const paste = async (text: string) => {
  await userEvent.click(screen.getByRole('textbox', { name: /^Paste a table/ }));
  await userEvent.paste(text);
};

it('shows what a pasted table would add, lets the maker correct a column, and imports it', async () => {
  const workshop = workshopBehindWindow();
  renderPage(<ImportPage />, '/stash/import');
  await paste('Name\tHow big\nMoss\tFQ\nFern\t1 yd\n');
  expect(
    await screen.findByText('0 pieces of fabric, 2 new fabrics, worth $0.00, from 2 rows'),
  ).toBeVisible();
  await userEvent.selectOptions(screen.getByRole('combobox', { name: 'How big' }), 'Size');
  expect(
    await screen.findByText('2 pieces of fabric, 2 new fabrics, worth $0.00, from 2 rows'),
  ).toBeVisible();
  await waitFor(() => expect(screen.getByRole('button', { name: 'Add to stash' })).toBeEnabled());
  await userEvent.click(screen.getByRole('button', { name: 'Add to stash' }));
  await waitFor(() => expect(screen.getByTestId('address')).toHaveTextContent(/^\/stash$/));
  expect(workshop.get('fabric:list', { search: '' }).total).toBe(2);
});

it('lists every cell that cannot be read, and adds nothing until then', async () => {
  const workshop = workshopBehindWindow();
  renderPage(<ImportPage />, '/stash/import');
  await paste('Name,Size,Paid\nMoss,44 lightyears,-3\n');
  expect(await screen.findByText('Nothing yet: 2 cells can’t be read')).toBeVisible();
  expect(screen.getByText('Line 2, column 2 (Size)').parentElement).toHaveTextContent(
    /The unit in “44 lightyears” is not known/,
  );
  expect(screen.getByText('Line 2, column 3 (Cost)').parentElement).toHaveTextContent(
    /“-3” is less than zero/,
  );
  expect(screen.getByRole('button', { name: 'Add to stash' })).toBeDisabled();
  expect(workshop.get('fabric:list', { search: '' }).total).toBe(0);
});
