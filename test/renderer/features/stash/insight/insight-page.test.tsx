import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { InsightPage } from '#renderer/features/stash/insight/insight-page';
import { renderPage, workshopBehindWindow } from '#test/helpers/page-on-store';
import { addStock } from '#test/helpers/workshop';

describe('insight', () => {
  it('says what belongs here while nothing was booked', async () => {
    workshopBehindWindow();
    renderPage(<InsightPage />);
    expect(await screen.findByRole('heading', { name: 'Nothing to tell yet' })).toBeVisible();
    expect(screen.queryByRole('figure')).toBeNull();
  });

  it('gives every drawing as a table too, in money and in fabric', async () => {
    const workshop = workshopBehindWindow();
    addStock(workshop, { yards: 2, costMinor: 2_000 });
    renderPage(<InsightPage />);
    const drawn = await screen.findByRole('figure', { name: 'Bought against used' });
    const table = within(drawn).getByRole('table', { name: 'Bought against used' });
    expect(within(table).getByRole('row', { name: /Feb 2027 \$20\.00 \$0\.00/ })).toBeInTheDocument();
    expect(within(table).getAllByRole('row')).toHaveLength(13);
    await userEvent.click(within(drawn).getByRole('radio', { name: 'In fabric' }));
    // Two yards of 42 in are 2⅓ square yards (arithmetic).
    expect(within(table).getByRole('row', { name: /Feb 2027 2\.33 sq yd/ })).toBeInTheDocument();
    expect(screen.getByRole('table', { name: 'What has lain longest' })).toHaveTextContent('Rust leaves');
  });

  it('shows the numbers to whoever wants them', async () => {
    const workshop = workshopBehindWindow();
    addStock(workshop);
    renderPage(<InsightPage />);
    const drawn = await screen.findByRole('figure', { name: /^Value on the shelf/ });
    await userEvent.click(within(drawn).getByRole('button', { name: 'Show the numbers' }));
    expect(within(drawn).getByRole('button', { name: 'Hide the numbers', expanded: true })).toBeVisible();
  });
});
