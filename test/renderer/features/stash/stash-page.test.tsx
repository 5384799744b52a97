import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { StashPage } from '#renderer/features/stash/stash-page';
import { renderPage, workshopBehindWindow } from '#test/helpers/page-on-store';
import { addStock, inches } from '#test/helpers/workshop';

const field = (name: RegExp) => screen.findByRole('textbox', { name });
const press = (name: string) => userEvent.click(screen.getByRole('button', { name }));
const list = { search: '' };

describe('the stash', () => {
  it('explains what to do while it is empty', async () => {
    workshopBehindWindow();
    renderPage(<StashPage />, '/stash');
    expect(await screen.findByRole('heading', { name: 'No fabrics yet' })).toBeVisible();
    expect(screen.queryByRole('textbox', { name: 'Find' })).toBeNull();
  });

  it('finds while typing, and shows how many', async () => {
    const workshop = workshopBehindWindow();
    addStock(workshop);
    renderPage(<StashPage />, '/stash');
    expect(await screen.findByText('1 fabric')).toBeVisible();
    await userEvent.type(await field(/^Find/), 'brow leav');
    expect(await screen.findByText('1 fabric found')).toBeVisible();
    expect(screen.getByTestId('address')).toHaveTextContent('/stash?search=brow+leav');
    await userEvent.type(await field(/^Find/), 'xyz');
    expect(await screen.findByRole('heading', { name: 'No fabric found' })).toBeVisible();
  });
});

describe('a code in the search of the stash', () => {
  const found = () => screen.findByRole('list', { name: /^Pieces with the code/ });

  it('finds its piece in any spelling, and Enter opens it for use', async () => {
    const workshop = workshopBehindWindow();
    const { fabricId, pieceId } = addStock(workshop);
    renderPage(<StashPage />, '/stash');
    // The ids in a test all start the same way.
    await userEvent.type(await field(/^Find/), 'ooo-000 OOO');
    expect(within(await found()).getByText(/42 × 72 in, stored in Shelf 2/)).toBeVisible();
    await userEvent.keyboard('{Enter}');
    const address = `/stash/${fabricId}?piece=${pieceId}&use`;
    await waitFor(() => expect(screen.getByTestId('address')).toHaveTextContent(address));
  });

  it('offers all pieces that share it', async () => {
    const workshop = workshopBehindWindow();
    const fabrics = [addStock(workshop), addStock(workshop)];
    renderPage(<StashPage />, '/stash?search=000-000-000');
    await userEvent.type(await field(/^Find/), '{Enter}');
    const links = within(await screen.findByRole('dialog')).getAllByRole('link', { name: 'Use it' });
    expect(links.map((link) => link.getAttribute('href'))).toEqual(
      fabrics.map(({ fabricId, pieceId }) => `/stash/${fabricId}?piece=${pieceId}&use`),
    );
  });

  it('tells a code without a piece from a mistyped code', async () => {
    addStock(workshopBehindWindow());
    renderPage(<StashPage />, '/stash');
    await userEvent.type(await field(/^Find/), 'FWX-0RP-WH1');
    expect(await screen.findByText(/No piece in your stash has the code FWX-0RP-WH1/)).toBeVisible();
    await userEvent.type(await field(/^Find/), '{Backspace}2');
    expect(await screen.findByText(/one of its characters differs from the label/)).toBeVisible();
  });
});

describe('a new fabric', () => {
  it('is saved with its first piece, and its page opens', async () => {
    const workshop = workshopBehindWindow();
    renderPage(<StashPage />, '/stash?new');
    await userEvent.type(await field(/^Name/), 'Kettle blue');
    await userEvent.type(await field(/^Size/), '1 1/4 yd');
    await userEvent.type(await field(/^What it cost/), '12.50');
    await press('Save');
    await waitFor(() => expect(screen.getByTestId('address')).toHaveTextContent(/^\/stash\/[0-9a-f-]{36}$/));
    const [added] = workshop.get('fabric:list', list).items;
    expect(added).toMatchObject({
      fabric: { name: 'Kettle blue', width: inches(42) },
      pieces: [{ kind: 'yardage', width: inches(42), there: inches(45), valueMinor: 1250 }],
    });
  });

  it('may be saved without a piece, and the next one added at once', async () => {
    const workshop = workshopBehindWindow();
    renderPage(<StashPage />, '/stash?new');
    await userEvent.type(await field(/^Name/), 'Kettle blue');
    await press('Save and add another');
    await waitFor(async () => expect(await field(/^Name/)).toHaveValue(''));
    expect(workshop.get('fabric:list', list).items).toMatchObject([{ pieces: [] }]);
    await userEvent.type(await field(/^Name/), 'Oat straw');
    await press('Save');
    await waitFor(() => expect(workshop.get('fabric:list', list).total).toBe(2));
  });

  it('is not saved with a size that cannot be read, and closing loses nothing typed', async () => {
    const workshop = workshopBehindWindow();
    renderPage(<StashPage />, '/stash?new');
    await userEvent.type(await field(/^Name/), 'Kettle blue');
    await userEvent.type(await field(/^Size/), 'as it lay');
    await press('Save');
    expect(await field(/^Size/)).toHaveAccessibleDescription(/“as it lay” could not be read/);
    expect(workshop.get('fabric:list', list).total).toBe(0);
    await press('Finish later');
    expect(screen.queryByRole('dialog')).toBeNull();
    await press('Add fabric');
    expect(await field(/^Name/)).toHaveValue('Kettle blue');
  });
});
