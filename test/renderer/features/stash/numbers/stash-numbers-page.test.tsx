import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { StashNumbersPage } from '#renderer/features/stash/numbers/stash-numbers-page';
import { renderPage, workshopBehindWindow } from '#test/helpers/page-on-store';
import { addStock } from '#test/helpers/workshop';

describe('the stash in numbers', () => {
  it('explains what to do before anything is booked', async () => {
    workshopBehindWindow();
    renderPage(<StashNumbersPage />);
    expect(await screen.findByRole('heading', { name: 'No numbers yet' })).toBeVisible();
    expect(screen.queryByRole('figure')).toBeNull();
  });

  it('gives every chart as a table too, in money and in fabric', async () => {
    const workshop = workshopBehindWindow();
    addStock(workshop, { yards: 2, costMinor: 2_000 });
    renderPage(<StashNumbersPage />);
    const drawn = await screen.findByRole('figure', { name: 'Bought and used' });
    const table = within(drawn).getByRole('table', { name: 'Bought and used' });
    expect(within(table).getByRole('row', { name: /Feb 2027 \$20\.00 \$0\.00/ })).toBeInTheDocument();
    expect(within(table).getAllByRole('row')).toHaveLength(13);
    await userEvent.click(within(drawn).getByRole('radio', { name: 'In fabric' }));
    // Two yards of 42 in are 2⅓ square yards (arithmetic).
    expect(within(table).getByRole('row', { name: /Feb 2027 2\.33 sq yd/ })).toBeInTheDocument();
    expect(screen.getByRole('table', { name: 'Fabric you’ve had longest' })).toHaveTextContent('Rust leaves');
  });

  it('shows the numbers of a chart on request', async () => {
    const workshop = workshopBehindWindow();
    addStock(workshop);
    renderPage(<StashNumbersPage />);
    const drawn = await screen.findByRole('figure', { name: /^Value of your stash/ });
    await userEvent.click(within(drawn).getByRole('button', { name: 'Show the numbers' }));
    expect(within(drawn).getByRole('button', { name: 'Hide the numbers', expanded: true })).toBeVisible();
  });
});
