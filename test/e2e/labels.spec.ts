import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { expect, test } from '@playwright/test';
import { STARTING_LABEL_SHEET } from '#core/domain/label-sheet';
import type { ProjectDetails } from '#core/domain/project';
import { STARTING_PLANS } from '#core/domain/starting-plans';
import { codeOfPiece, formatPieceCode } from '#core/stash/piece-code';
import { calendarDate } from '#core/units/calendar-date';
import { lengthFromInches, UNITS_PER_INCH } from '#core/units/length';
import { askStore } from '#test/helpers/ask-store';
import { type DevelopedProgram, launchProgram } from '#test/helpers/launch';
import { readPdf } from '#test/helpers/read-pdf';
import { decode, scan } from '#test/helpers/scan';
import { fabricDetails } from '#test/helpers/workshop';

const on = calendarDate('2027-02-28');
const inches = lengthFromInches;

async function addFabric({ page }: DevelopedProgram, name: string, lengths: readonly number[]) {
  const details = fabricDetails({ name });
  const { fabricId } = await askStore(page, 'fabric:create', { details });
  const pieceIds = [];
  for (const length of lengths) {
    const size = { width: inches(42), length: inches(length) };
    const bought = { fabricId, kind: 'yardage', size, costMinor: 2000, on, note: '' } as const;
    pieceIds.push((await askStore(page, 'ledger:buy', bought)).pieceId);
  }
  return { fabricId, pieceIds };
}

async function addProject({ page }: DevelopedProgram, name: string) {
  const details: ProjectDetails = {
    name,
    purpose: 'own',
    forWhom: '',
    dueOn: null,
    outline: { shape: 'circle', diameter: inches(50) },
    hole: null,
    hasSlit: false,
    settingChanges: {},
    notes: '',
  };
  const plan = STARTING_PLANS[0];
  if (plan === undefined) throw new Error('No plan');
  return (await askStore(page, 'project:create', { details, stagePlanId: plan.id })).projectId;
}

async function goTo({ page }: DevelopedProgram, hash: string) {
  await page.evaluate((to) => {
    window.location.hash = to;
  }, `#${hash}`);
}

test('from the scanner to the ledger in two key presses, and back by undo', async () => {
  const program = await launchProgram();
  const { page } = program;
  await addProject(program, 'Porch ring');
  const projectId = await addProject(program, 'Winter ring');
  const { fabricId, pieceIds } = await addFabric(program, 'Kettle blue', [72, 30]);
  const [pieceId] = pieceIds;
  if (pieceId === undefined) throw new Error('No piece');
  const held = { pieceId, projectId, length: inches(24), on, note: '' };
  await askStore(page, 'ledger:set-aside', held);
  // The page did not make this change, so it must read everything again.
  await page.reload();
  await goTo(program, '/days');
  await expect(page.getByRole('heading', { level: 1, name: 'Days' })).toBeVisible();

  let pressed = 0;
  const press = async (key: string) => {
    pressed += 1;
    await page.keyboard.press(key);
  };
  const amount = page.getByRole('textbox', { name: 'How long a cut' });
  const thereAndHeld = async () => {
    const { pieces } = await askStore(page, 'fabric:open', { fabricId });
    const piece = pieces.find(({ id }) => id === pieceId);
    return [piece?.there, piece?.held];
  };
  await scan(program, codeOfPiece(pieceId));
  await expect(amount).toBeFocused();
  await expect(page.getByRole('combobox', { name: 'For which project' })).toHaveValue(projectId);
  await expect(amount).toHaveValue(/^24/);
  await press('9');
  await press('Enter');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  expect(pressed).toBeLessThanOrEqual(3);
  expect(await thereAndHeld()).toEqual([inches(63), inches(15)]);
  await expect(page.getByRole('heading', { level: 1, name: 'Kettle blue' })).toBeVisible();
  await expect(page.locator('[aria-current=true]')).toContainText(formatPieceCode(codeOfPiece(pieceId)));
  await expect(page.getByRole('region', { name: 'Ledger' }).getByRole('listitem').first()).toContainText(
    'Winter ring',
  );

  // Scanned again while its fabric is open: what is still set aside is suggested, and Enter alone records it.
  await scan(program, codeOfPiece(pieceId));
  await expect(amount).toBeFocused();
  await expect(amount).toHaveValue(/^15/);
  await press('Enter');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  expect(await thereAndHeld()).toEqual([inches(48), 0]);

  // More than there is cannot be recorded, and nothing typed is lost.
  await scan(program, codeOfPiece(pieceId));
  await expect(amount).toBeFocused();
  await page.keyboard.type('99');
  await page.keyboard.press('Enter');
  await expect(amount).toHaveValue('99');
  await expect(amount).toBeFocused();
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toHaveCount(0);

  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await expect.poll(thereAndHeld).toEqual([inches(72), inches(24)]);
  await program.close();
});

test('a code typed into the search finds the piece; a used-up piece leads to its ledger; a scan in a field submits nothing', async () => {
  const program = await launchProgram();
  const { page } = program;
  await addProject(program, 'Winter ring');
  const { fabricId, pieceIds } = await addFabric(program, 'Kettle blue', [72, 30]);
  const [pieceId, gone] = pieceIds;
  if (pieceId === undefined || gone === undefined) throw new Error('No piece');
  await askStore(page, 'ledger:discard', { pieceId: gone, length: inches(30), on, note: '' });
  await goTo(program, '/stash');
  const find = page.getByRole('textbox', { name: 'Find' });
  await find.fill(formatPieceCode(codeOfPiece(pieceId)).toLowerCase());
  const coded = page.getByRole('list', { name: /^Pieces with the code/ });
  await expect(coded).toContainText('Kettle blue');
  await expect(coded).toContainText('42 × 72 in');
  await find.press('Enter');
  await expect(page.getByRole('dialog', { name: 'Use “Kettle blue”' })).toBeVisible();
  await page.keyboard.press('Escape');

  // A used-up piece, scanned into the search.
  await goTo(program, '/stash');
  await find.focus();
  await scan(program, codeOfPiece(gone));
  const dialog = page.getByRole('dialog');
  await expect(dialog).toContainText('This piece is used up.');
  await dialog.getByRole('link', { name: 'Open its ledger' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Kettle blue' })).toBeVisible();
  await expect(dialog).toHaveCount(0);

  await page.getByRole('button', { name: 'Change' }).click();
  const name = page.getByRole('textbox', { name: 'Name' });
  await name.focus();
  await scan(program, codeOfPiece(pieceId));
  await expect(name).toHaveValue(new RegExp(codeOfPiece(pieceId)));
  await expect(dialog).toBeVisible();
  expect((await askStore(page, 'fabric:open', { fabricId })).fabric.name).toBe('Kettle blue');
  await program.close();
});

test('the labels on the sheet decode to their pieces, at their nominal size', async () => {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'ringbound-test-'));
  const program = await launchProgram();
  const { page, electron } = program;
  const { fabricId, pieceIds } = await addFabric(
    program,
    'Kettle blue with a long name to read',
    [72, 30, 18],
  );
  await goTo(program, `/stash/${fabricId}`);
  await page.getByRole('button', { name: 'Labels', exact: true }).click();
  await expect(page.getByRole('status').filter({ hasText: '3 labels on 1 sheet' })).toBeVisible();
  const start = page.getByRole('textbox', { name: 'Start at label number' });
  await start.fill('14');
  await start.press('Enter');
  await expect(page.getByRole('status').filter({ hasText: '3 labels on 2 sheets' })).toBeVisible();
  const file = path.join(folder, 'labels.pdf');
  await electron.evaluate(({ dialog }, filePath) => {
    dialog.showSaveDialog = () => Promise.resolve({ canceled: false, filePath });
  }, file);
  await page.getByRole('button', { name: 'Print the labels' }).click();
  await expect.poll(() => readPdf(file).catch(() => [])).toHaveLength(2);
  const [first, second] = await readPdf(file);
  expect([first?.width, first?.height]).toEqual([8.5, 11]);
  const squares = (sheet = first) =>
    (sheet?.boxes ?? []).filter(({ width, height }) => Math.abs(width - height) < 0.002 && width > 0.5);
  // Each code is drawn as two squares: the dark one of 21 modules, and the light one with a quiet zone of 4 around it.
  expect(squares()).toHaveLength(4);
  const [dark = 0, light = 0] = squares(second)
    .map(({ width }) => width)
    .sort((one, other) => one - other);
  expect(dark / light).toBeCloseTo(21 / 29, 3);

  await goTo(program, `/sheets/labels/fabric/${fabricId}?paper=letter&start=14&lines=1`);
  const labels = page.getByRole('article');
  await expect(labels).toHaveCount(3);
  for (const [index, pieceId] of pieceIds.entries()) {
    const label = labels.nth(index);
    expect(await decode(program, label)).toBe(codeOfPiece(pieceId));
    await expect(label).toContainText(formatPieceCode(codeOfPiece(pieceId)));
    const box = await label.boundingBox();
    expect(box?.width).toBeCloseTo((96 * STARTING_LABEL_SHEET.width) / UNITS_PER_INCH, 0);
    expect(box?.height).toBeCloseTo((96 * STARTING_LABEL_SHEET.height) / UNITS_PER_INCH, 0);
  }
  await program.close();
  await rm(folder, { recursive: true, force: true });
});
