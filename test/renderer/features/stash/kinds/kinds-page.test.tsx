import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { CAUTIONS } from '#core/domain/cautions';
import { inches } from '#test/helpers/workshop';
import { KindsPage } from '#renderer/features/stash/kinds/kinds-page';
import { StashPage } from '#renderer/features/stash/stash-page';
import { renderPage, workshopBehindWindow } from '#test/helpers/page-on-store';

const press = (name: string | RegExp) => userEvent.click(screen.getByRole('button', { name }));

describe('the page of kinds', () => {
  it('adds a kind with its usual size, and hides one', async () => {
    const workshop = workshopBehindWindow();
    renderPage(<KindsPage />);
    expect(await screen.findByText('Batting, queen package')).toBeVisible();
    const strips = screen.getByRole('button', { name: 'Change Strips, 2½ in' }).closest('li');
    expect(strips).toHaveTextContent('42 × 2 1/2 in, pack of 40');
    await press('Add a kind');
    await userEvent.type(screen.getByRole('textbox', { name: 'Name' }), 'Squares, 8 in');
    await userEvent.type(screen.getByRole('textbox', { name: /^Usual size across/ }), '8');
    await userEvent.type(screen.getByRole('textbox', { name: /^Usual size along/ }), '8');
    await userEvent.type(screen.getByRole('textbox', { name: /^How many in a pack/ }), '30');
    await press('Save');
    expect(await screen.findByText('8 × 8 in, pack of 30')).toBeVisible();
    await press('Hide Panel');
    expect(await screen.findByText('hidden')).toBeVisible();
    expect(workshop.get('kind:list', {}).find(({ name }) => name === 'Panel')?.isHidden).toBe(true);
  });
});

describe('a crib size', () => {
  it('shows the safe-sleep caution where it is chosen', async () => {
    workshopBehindWindow();
    renderPage(<StashPage />, '/stash?new');
    const kind = await screen.findByRole('combobox', { name: 'Kind' });
    await waitFor(() =>
      expect(within(kind).getByRole('option', { name: 'Batting, crib package' })).toBeVisible(),
    );
    expect(screen.queryByText(CAUTIONS.crib)).toBeNull();
    await userEvent.selectOptions(kind, 'Batting, crib package');
    expect(screen.getByText(CAUTIONS.crib)).toBeVisible();
  });
});

describe('a new piece of one of the kinds', () => {
  it('starts with the usual size and number, and is saved as that many items of the size', async () => {
    const workshop = workshopBehindWindow();
    renderPage(<StashPage />, '/stash?new');
    await userEvent.type(await screen.findByRole('textbox', { name: 'Name' }), 'Autumn strips');
    const kind = await screen.findByRole('combobox', { name: 'Kind' });
    await waitFor(() => expect(within(kind).getByRole('option', { name: 'Strips, 2½ in' })).toBeVisible());
    await userEvent.selectOptions(kind, 'Strips, 2½ in');
    expect(screen.getByRole('textbox', { name: /^Size of one/ })).toHaveValue('42 in x 2 1/2 in');
    const many = screen.getByRole('textbox', { name: /^How many/ });
    expect(many).toHaveValue('40');
    await userEvent.clear(many);
    await userEvent.type(many, '38');
    await press('Save');
    await waitFor(() => expect(workshop.get('fabric:list', { search: '' }).total).toBe(1));
    await waitFor(() =>
      expect(workshop.get('fabric:list', { search: '' }).items[0]?.pieces).toMatchObject([
        { kind: 'precut-strips', width: inches(42), there: inches(95), unitLength: inches(2.5) },
      ]),
    );
  });
});
