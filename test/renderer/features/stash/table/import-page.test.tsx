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
  await paste('Name\tHow big\tPile\nMoss\tFQ\tleft\nFern\t1 yd\tright\n');
  // A title that says nothing: what its cells look like says it.
  expect(await screen.findByRole('combobox', { name: 'How big' })).toHaveValue('size');
  expect(
    await screen.findByText('2 pieces of fabric, 2 new fabrics, all without a price, from 2 rows'),
  ).toBeVisible();
  await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Pile' }), 'Stored in');
  await waitFor(() => expect(screen.getByRole('button', { name: 'Add to stash' })).toBeEnabled());
  await userEvent.click(screen.getByRole('button', { name: 'Add to stash' }));
  await waitFor(() => expect(screen.getByTestId('address')).toHaveTextContent(/^\/stash$/));
  const { items } = workshop.get('fabric:list', { search: '' });
  expect(items.map(({ fabric }) => fabric.place).toSorted()).toEqual(['left', 'right']);
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

it('lists every cell that cannot be read, and takes what is written there instead', async () => {
  const workshop = workshopBehindWindow();
  renderPage(<ImportPage />, '/stash/import');
  await paste('Name,Size,Paid\nMoss,44 lightyears,-3\n');
  expect(await screen.findByText('2 cells can’t be read')).toBeVisible();
  expect(screen.getByText('Line 2, column 2 (Size)').parentElement).toHaveTextContent(
    /The unit in “44 lightyears” is not known/,
  );
  expect(screen.getByText('Line 2, column 3 (Cost)').parentElement).toHaveTextContent(
    /“-3” is less than zero/,
  );
  expect(screen.getByRole('button', { name: 'Add to stash' })).toBeDisabled();
  for (const [name, text] of [
    ['Size, row 2', '1 yd'],
    ['Cost, row 2', '3'],
  ] as const) {
    const field = await screen.findByRole('textbox', { name });
    await userEvent.clear(field);
    await userEvent.type(field, `${text}{Enter}`);
  }
  expect(await screen.findByText('1 piece of fabric, 1 new fabric, worth $3.00, from 1 row')).toBeVisible();
  await waitFor(() => expect(screen.getByRole('button', { name: 'Add to stash' })).toBeEnabled());
  await userEvent.click(screen.getByRole('button', { name: 'Add to stash' }));
  await waitFor(() => expect(workshop.get('fabric:list', { search: '' }).total).toBe(1));
});

it('remembers what the columns of a table with the same titles mean', async () => {
  workshopBehindWindow();
  renderPage(<ImportPage />, '/stash/import');
  await paste('Name,Remarks\nMoss,old\n');
  await userEvent.selectOptions(await screen.findByRole('combobox', { name: 'Remarks' }), 'Leave out');
  await waitFor(() => expect(screen.getByRole('button', { name: 'Add to stash' })).toBeEnabled());
  await userEvent.click(screen.getByRole('button', { name: 'Add to stash' }));
  await waitFor(() => expect(screen.getByTestId('address')).toHaveTextContent(/^\/stash$/));
  await userEvent.clear(screen.getByRole('textbox', { name: /^Paste a table/ }));
  await paste('Name,Remarks\nFern,new\n');
  await waitFor(() => expect(screen.getByRole('combobox', { name: 'Remarks' })).toHaveValue('left-out'));
});
