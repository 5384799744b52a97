import { screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { StashPage } from '#renderer/features/stash/stash-page';
import { renderPage, workshopBehindWindow } from '#test/helpers/page-on-store';
import { addStock } from '#test/helpers/workshop';

const fill = async (name: RegExp, text: string) => {
  const field = await screen.findByRole('textbox', { name });
  await userEvent.clear(field);
  await userEvent.type(field, `${text}{Enter}`);
};
const choose = (name: string, words: string) =>
  userEvent.selectOptions(screen.getByRole('combobox', { name }), words);
const address = () => screen.getByTestId('address').textContent;

/** Two fabrics: two yards for 20.00, and one for 30.00. */
async function openFilters(): Promise<void> {
  const workshop = workshopBehindWindow();
  addStock(workshop);
  addStock(workshop, { yards: 1, costMinor: 3000 });
  renderPage(<StashPage />, '/stash');
  expect(await screen.findByText('2 fabrics')).toBeVisible();
  await userEvent.click(screen.getByRole('button', { name: 'Filters' }));
}

describe('the filters of the stash', () => {
  it('filter by the price of a yard, today or as paid', async () => {
    await openFilters();
    await fill(/^A yard costs at most/, '12');
    expect(await screen.findByText('1 fabric found')).toBeVisible();
    await fill(/^A yard costs at least/, '11');
    expect(await screen.findByText('0 fabrics found')).toBeVisible();
    await fill(/^A yard costs at most/, '40');
    expect(await screen.findByText('1 fabric found')).toBeVisible();
    await choose('Which price', 'As paid');
    expect(await screen.findByText('1 fabric found')).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'Clear filters' }));
    expect(await screen.findByText('2 fabrics')).toBeVisible();
  });

  it('find what is big enough for typed patches, and report what cannot be read', async () => {
    await openFilters();
    await fill(/^Big enough for/, '2 of 40 x 30 in');
    expect(await screen.findByText('1 fabric found')).toBeVisible();
    await fill(/^Big enough for/, 'two of something');
    expect(await screen.findByText(/two of something/)).toBeVisible();
  });

  it('are in the address, so that the way back leads to the same list', async () => {
    await openFilters();
    await choose('Order', 'Most free first');
    await choose('Groups', 'By kind');
    await fill(/^Free in one piece/, '40 in');
    expect(await screen.findByText('1 fabric found')).toBeVisible();
    expect(address()).toMatch(/by=kind/);
    expect(address()).toMatch(/most-free/);
  });
});
