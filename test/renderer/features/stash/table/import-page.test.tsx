import { screen, waitFor, within } from '@testing-library/react';
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
  expect(await screen.findByText('0 pieces of fabric, 2 new fabrics, from 2 rows')).toBeVisible();
  await userEvent.selectOptions(screen.getByRole('combobox', { name: 'How big' }), 'Size');
  expect(
    await screen.findByText('2 pieces of fabric, 2 new fabrics, all without a price, from 2 rows'),
  ).toBeVisible();
  await waitFor(() => expect(screen.getByRole('button', { name: 'Add to stash' })).toBeEnabled());
  await userEvent.click(screen.getByRole('button', { name: 'Add to stash' }));
  await waitFor(() => expect(screen.getByTestId('address')).toHaveTextContent(/^\/stash$/));
  expect(workshop.get('fabric:list', { search: '' }).total).toBe(2);
});

it('keeps a blank cost and day not known, and reads a day, a month or a year', async () => {
  workshopBehindWindow();
  renderPage(<ImportPage />, '/stash/import');
  await paste('Name\tSize\tCost\tBought on\nMoss\tFQ\t3\t2024-03\nFern\tFQ\t\t2019\nRust\tFQ\t0\t\n');
  expect(await screen.findByText(/worth \$3\.00 \(1 piece without a price\)/)).toBeVisible();
  const cells = (name: string) =>
    within(screen.getByRole('row', { name: new RegExp(`^${name}`) }))
      .getAllByRole('cell')
      .slice(-2)
      .map((cell) => cell.textContent);
  expect(cells('Moss')).toEqual(['$3.00', 'Mar 2024']);
  expect(cells('Fern')).toEqual(['not known', '2019']);
  expect(cells('Rust')).toEqual(['$0.00', 'day not known']);
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
