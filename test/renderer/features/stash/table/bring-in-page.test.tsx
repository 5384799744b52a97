import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { BringInPage } from '#renderer/features/stash/table/bring-in-page';
import { renderPage, workshopBehindWindow } from '#test/helpers/page-on-store';

const paste = async (text: string) => {
  await userEvent.click(screen.getByRole('textbox', { name: /^Paste a table/ }));
  await userEvent.paste(text);
};

it('shows what a pasted table would add, lets a column be told what it says, and brings it in', async () => {
  const workshop = workshopBehindWindow();
  renderPage(<BringInPage />, '/stash/bring-in');
  await paste('Name\tHow big\nMoss\tFQ\nFern\t1 yd\n');
  expect(await screen.findByText('0 pieces, 2 new fabrics, $0.00 of value, from 2 lines')).toBeVisible();
  await userEvent.selectOptions(screen.getByRole('combobox', { name: 'How big' }), 'Size');
  expect(await screen.findByText('2 pieces, 2 new fabrics, $0.00 of value, from 2 lines')).toBeVisible();
  await waitFor(() => expect(screen.getByRole('button', { name: 'Add it to the stash' })).toBeEnabled());
  await userEvent.click(screen.getByRole('button', { name: 'Add it to the stash' }));
  await waitFor(() => expect(screen.getByTestId('address')).toHaveTextContent(/^\/stash$/));
  expect(workshop.get('fabric:list', { search: '' }).total).toBe(2);
});

it('names every cell that cannot be read, and adds nothing meanwhile', async () => {
  const workshop = workshopBehindWindow();
  renderPage(<BringInPage />, '/stash/bring-in');
  await paste('Name,Size,Paid\nMoss,44 lightyears,-3\n');
  expect(await screen.findByText('Nothing yet: 2 cells cannot be read')).toBeVisible();
  expect(screen.getByText('Line 2, column 2 (Size)').parentElement).toHaveTextContent(
    /The unit in “44 lightyears” is not known/,
  );
  expect(screen.getByText('Line 2, column 3 (Cost)').parentElement).toHaveTextContent(
    /“-3” is less than nothing/,
  );
  expect(screen.getByRole('button', { name: 'Add it to the stash' })).toBeDisabled();
  expect(workshop.get('fabric:list', { search: '' }).total).toBe(0);
});
