import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { FabricPage } from '#renderer/features/stash/fabric/fabric-page';
import { renderPage, workshopBehindWindow } from '#test/helpers/page-on-store';
import { addStock, addProject, inches, TODAY } from '#test/helpers/workshop';

function openPage({ heldInches = 0 } = {}) {
  const workshop = workshopBehindWindow();
  const { projectId } = addProject(workshop);
  const { fabricId, pieceId } = addStock(workshop);
  const length = inches(heldInches);
  if (length > 0) workshop.get('ledger:set-aside', { pieceId, projectId, length, on: TODAY, note: '' });
  renderPage(<FabricPage fabricId={fabricId} />, `/stash/${fabricId}`);
  return { workshop, fabricId, projectId };
}

const button = (name: RegExp) => screen.findByRole('button', { name });
const field = (name: RegExp) => screen.getByRole('textbox', { name });
const press = async (name: RegExp) => userEvent.click(await button(name));

describe('the page of a fabric', () => {
  it('shows its stock, its value and where it is stored', async () => {
    openPage();
    expect(await screen.findByRole('heading', { level: 1, name: 'Rust leaves' })).toBeVisible();
    expect(screen.getByText(/all of it free · worth \$20\.00/)).toBeVisible();
    expect(screen.getByRole('img', { name: 'By the yard, 42 × 72 in, to scale' })).toBeVisible();
    expect(screen.getByText('Shelf 2')).toBeVisible();
  });

  it('opens the piece in its address for use, and asks before using what other projects have set aside', async () => {
    const workshop = workshopBehindWindow();
    const { projectId } = addProject(workshop, { name: 'Porch ring' });
    const { projectId: other } = addProject(workshop, { name: 'Winter ring' });
    const { fabricId, pieceId } = addStock(workshop);
    workshop.get('ledger:set-aside', { pieceId, projectId: other, length: inches(60), on: TODAY, note: '' });
    renderPage(<FabricPage fabricId={fabricId} />, `/stash/${fabricId}?piece=${pieceId}&use`);
    const forProject = await screen.findByRole('combobox', { name: 'For which project' });
    expect(forProject).toHaveValue(other);
    expect(field(/^How long a cut/)).toHaveValue('60 in');
    await userEvent.selectOptions(forProject, projectId);
    expect(field(/^How long a cut/)).toHaveValue('');
    await userEvent.type(field(/^How long a cut/), '20');
    await press(/^Record the use/);
    expect(await screen.findByText(/Not enough fabric/)).toBeVisible();
    await userEvent.click(screen.getByRole('checkbox', { name: /^Use it anyway/ }));
    await press(/^Record the use/);
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
    expect(screen.getByTestId('address')).toHaveTextContent(`/stash/${fabricId}?piece=${pieceId}`);
    const { pieces, ledger } = workshop.get('fabric:open', { fabricId });
    expect(pieces[0]).toMatchObject({ there: inches(52), held: inches(60) });
    expect(ledger[0]).toMatchObject({ projectId, entries: [{ kind: 'cut', lengthChange: 0 - inches(20) }] });
    expect(ledger[0]?.stageId).not.toBeNull();
    expect(screen.getByRole('link', { name: 'Stash' })).toHaveAttribute('href', '/stash');
  });

  it('cuts 5 in off the side of a piece, keeps what is left beside it, and can throw that out', async () => {
    const workshop = workshopBehindWindow();
    const { projectId } = addProject(workshop);
    const { fabricId, pieceId } = addStock(workshop);
    renderPage(<FabricPage fabricId={fabricId} />, `/stash/${fabricId}?piece=${pieceId}&use`);
    await userEvent.selectOptions(
      await screen.findByRole('combobox', { name: 'For which project' }),
      projectId,
    );
    await userEvent.type(field(/^How long a cut/), '8');
    await userEvent.type(field(/^Width, if less/), '5');
    await userEvent.tab();
    const ways = screen.getAllByRole('radio');
    expect(ways).toHaveLength(2);
    expect(screen.getByRole('checkbox', { name: 'Keep 37 × 8 in' })).toBeChecked();
    await userEvent.click(ways[1]!);
    expect(screen.getByRole('checkbox', { name: 'Keep 37 × 72 in' })).toBeChecked();
    await userEvent.click(screen.getByRole('checkbox', { name: 'Keep 5 × 64 in' }));
    await press(/^Record the use/);
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
    const { pieces } = workshop.get('fabric:open', { fabricId });
    // The piece itself is used up, and the narrow leftover was thrown out.
    expect(pieces.map(({ kind, width, there }) => [kind, width, there])).toEqual([
      ['leftover', inches(37), inches(72)],
    ]);
  });

  it('adds another piece with a size as people write it', async () => {
    const { workshop, fabricId } = openPage();
    await press(/^Add another piece/);
    await userEvent.type(field(/^Size/), 'FQ');
    await userEvent.type(field(/^What it cost/), '3.75');
    await press(/^Save/);
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
    const { pieces } = workshop.get('fabric:open', { fabricId });
    const size = { kind: 'fat-quarter', width: inches(22), there: inches(18), valueMinor: 375 };
    expect(pieces[1]).toMatchObject(size);
  });

  it('leaves a size it cannot read as typed, and books nothing', async () => {
    const { workshop, fabricId } = openPage();
    await press(/^Add another piece/);
    await userEvent.type(field(/^Size/), 'about a yard');
    await press(/^Save/);
    expect(field(/^Size/)).toHaveValue('about a yard');
    expect(field(/^Size/)).toHaveAccessibleDescription(/“about a yard” could not be read/);
    expect(workshop.get('fabric:open', { fabricId }).pieces).toHaveLength(1);
  });

  it('sets some aside for a project, and releases it again', async () => {
    const { workshop, fabricId, projectId } = openPage();
    await press(/^Set aside/);
    await screen.findByRole('combobox', { name: 'For which project' });
    await userEvent.clear(field(/^How much/));
    await userEvent.type(field(/^How much/), '3 yd');
    await press(/^Set it aside/);
    expect(await screen.findByText(/you need 108 in, but only 72 in is free/)).toBeVisible();
    expect(workshop.get('fabric:open', { fabricId }).pieces).toMatchObject([{ held: 0 }]);
    await userEvent.clear(field(/^How much/));
    await userEvent.type(field(/^How much/), '1/2 yd');
    await press(/^Set it aside/);
    await press(/^Release from Autumn ring/);
    const held = () => workshop.get('ledger:of-project', { projectId }).held;
    expect(held()).toMatchObject([{ held: inches(18) }]);
    await press(/^Release it/);
    await waitFor(() => expect(held()).toEqual([]));
    expect(workshop.get('fabric:open', { fabricId }).ledger).toHaveLength(3);
  });

  it('sets more aside than there is only after confirming, and shows by how much', async () => {
    openPage({ heldInches: 60 });
    await press(/^Set aside/);
    await screen.findByRole('combobox', { name: 'For which project' });
    await userEvent.clear(field(/^How much/));
    await userEvent.type(field(/^How much/), '20');
    await press(/^Set it aside/);
    await userEvent.click(await screen.findByRole('checkbox', { name: /^Set it aside anyway/ }));
    await press(/^Set it aside/);
    expect(await screen.findByText('8 in more set aside than there is')).toBeVisible();
  });

  it('shows its worth in three ways, the last one at a price the maker sets', async () => {
    openPage();
    const worth = async (name: string) =>
      (await screen.findByText(name)).nextElementSibling?.textContent ?? '';
    expect(await worth('Oldest fabric first')).toBe('$20.00');
    expect(await worth('Price now')).toBe('$10.00 a yard, as last paid');
    await press(/^Set a price/);
    await userEvent.clear(field(/^Price of a yard/));
    await userEvent.type(field(/^Price of a yard/), '12.50');
    await press(/^Save/);
    await waitFor(async () => expect(await worth('Price now')).toBe('$12.50 a yard'));
    expect(await worth('To buy it again')).toBe('$25.00');
    expect(await worth('As paid')).toBe('$20.00');
  });

  it('corrects a piece to what was counted, down to nothing', async () => {
    const { workshop, fabricId } = openPage();
    await press(/^Count/);
    await userEvent.clear(field(/^Length you have/));
    await userEvent.type(field(/^Length you have/), '0');
    await press(/^Save/);
    expect(await screen.findByText('Used up')).toBeVisible();
    expect(workshop.get('fabric:open', { fabricId }).pieces).toEqual([]);
  });

  it('undoes a booking once, and says why it cannot', async () => {
    const { workshop, fabricId } = openPage({ heldInches: 36 });
    await press(/^Undo: Bought 2 yd/);
    expect(await screen.findByText(/its fabric is set aside for a project/)).toBeVisible();
    await press(/^Undo: Set 1 yd aside for Autumn ring/);
    expect(await screen.findByText('undone')).toBeVisible();
    expect(screen.queryByRole('button', { name: /^Undo: Set/ })).toBeNull();
    expect(workshop.get('fabric:open', { fabricId }).pieces).toMatchObject([{ held: 0 }]);
  });

  it('can be deleted only once all its bookings are undone', async () => {
    openPage();
    await press(/^Delete$/);
    expect(await screen.findByText(/still has ledger entries/)).toBeVisible();
    await press(/^Undo: Bought/);
    await screen.findByText('undone');
    await press(/^Delete$/);
    await waitFor(() => expect(screen.getByTestId('address')).toHaveTextContent(/^\/stash$/));
  });

  it('changes its details', async () => {
    const { workshop, fabricId } = openPage();
    await press(/^Change$/);
    const dialog = within(screen.getByRole('dialog'));
    await userEvent.clear(dialog.getByRole('textbox', { name: 'Name' }));
    await userEvent.click(dialog.getByRole('button', { name: 'Save' }));
    expect(dialog.getByRole('textbox', { name: 'Name' })).toHaveAccessibleDescription(
      /Give the fabric a name/,
    );
    await userEvent.type(dialog.getByRole('textbox', { name: 'Name' }), 'Rust oak');
    await press(/^Save/);
    expect(await screen.findByRole('heading', { level: 1, name: 'Rust oak' })).toBeVisible();
    expect(workshop.get('fabric:open', { fabricId }).fabric.name).toBe('Rust oak');
  });
});
