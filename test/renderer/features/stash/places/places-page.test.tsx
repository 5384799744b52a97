import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { PlacesPage } from '#renderer/features/stash/places/places-page';
import { renderPage, workshopBehindWindow } from '#test/helpers/page-on-store';
import { addStock } from '#test/helpers/workshop';

const press = (name: string | RegExp) => userEvent.click(screen.getByRole('button', { name }));

describe('the page of places', () => {
  it('starts with a room, and adds a shelf in it and a bin on the shelf', async () => {
    const workshop = workshopBehindWindow();
    renderPage(<PlacesPage />);
    expect(await screen.findByRole('heading', { name: 'No places yet' })).toBeVisible();
    await press('Add a room');
    await userEvent.type(await screen.findByRole('textbox', { name: 'Name' }), 'Loft{Enter}');
    await userEvent.click(await screen.findByRole('button', { name: 'Add a shelf in Loft' }));
    await userEvent.type(await screen.findByRole('textbox', { name: 'Name' }), 'Shelf 2{Enter}');
    await userEvent.click(await screen.findByRole('button', { name: 'Add a bin in Loft, Shelf 2' }));
    await userEvent.type(await screen.findByRole('textbox', { name: 'Name' }), 'Scraps{Enter}');
    expect(await screen.findByText('Scraps')).toBeVisible();
    expect(workshop.get('place:list', {}).map(({ path }) => path)).toEqual([
      'Loft',
      'Loft, Shelf 2',
      'Loft, Shelf 2, Scraps',
    ]);
  });

  it('makes a label for each piece stored in a place or inside it', async () => {
    const workshop = workshopBehindWindow();
    const [, inside, elsewhere] = [addStock(workshop), addStock(workshop), addStock(workshop)];
    workshop.get('piece:store-in', { pieceId: inside.pieceId, path: 'Shelf 2, bin' });
    workshop.get('piece:store-in', { pieceId: elsewhere.pieceId, path: 'Shelf 20' });
    renderPage(<PlacesPage />);
    await userEvent.click(await screen.findByRole('button', { name: 'Labels for Shelf 2' }));
    expect(await screen.findByText('2 labels on 1 sheet')).toBeVisible();
    await press('Close');
    await press('Labels for Shelf 20');
    expect(await screen.findByText('1 label on 1 sheet')).toBeVisible();
    await userEvent.click(screen.getByText('Layout of the sheet'));
    const across = screen.getByRole('textbox', { name: 'Labels across' });
    await userEvent.clear(across);
    await userEvent.type(across, '4{Enter}');
    expect(await screen.findByText(/wider than the paper/)).toBeVisible();
    expect(screen.queryByRole('button', { name: 'Print the labels' })).toBeNull();
    expect(workshop.get('workshop:opening', {}).workshop.labelSheet.across).toBe(4);
  });

  it('reports a taken name at its field, and moves, renames and deletes', async () => {
    const workshop = workshopBehindWindow();
    addStock(workshop);
    for (const path of ['Loft', 'Hall']) workshop.get('place:add', { path });
    renderPage(<PlacesPage />);
    expect(await screen.findByRole('link', { name: '1 fabric' })).toBeVisible();
    await press('Rename Hall');
    await userEvent.clear(screen.getByRole('textbox', { name: 'Name' }));
    await userEvent.type(screen.getByRole('textbox', { name: 'Name' }), 'loft{Enter}');
    await waitFor(() =>
      expect(screen.getByRole('textbox', { name: 'Name' })).toHaveAccessibleDescription(/already/),
    );
    await press('Discard what you entered');
    await press('Cancel');
    await press('Move Shelf 2');
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Move it into' }), 'Loft');
    await press('Move');
    await waitFor(() => expect(screen.getByRole('button', { name: 'Move Loft, Shelf 2' })).toBeVisible());
    await press('Delete Loft');
    await waitFor(() => expect(workshop.get('place:list', {}).map(({ path }) => path)).toEqual(['Hall']));
    expect(workshop.get('change:state', {}).undo).toBe('Deleted the place “Loft”');
  });
});
