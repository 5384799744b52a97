import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { expect, test } from '@playwright/test';
import { CAUTIONS } from '#core/domain/cautions';
import type { ProjectDetails } from '#core/domain/project';
import { STARTING_PLANS } from '#core/domain/starting-plans';
import { lengthFromInches } from '#core/units/length';
import { askStore } from '#test/helpers/ask-store';
import { type DevelopedProgram, launchProgram } from '#test/helpers/launch';
import { type PdfPage, readPdf } from '#test/helpers/read-pdf';
import { axeFaults } from './axe-faults';

/** A printed template is true to within 1/64 in over 6 in: our own limit. */
const TOLERANCE = 1 / 64;

/** Solid lines must be true to less than a printer’s dot. Dashed lines include their width in the PDF, 0.3 mm. */
const HAIR = 1 / 500;

const TWENTY_FIVE_MM = 25 / 25.4;

/** Answers the system’s save dialog; everything else is the real program. */
async function saveTo({ electron }: DevelopedProgram, file: string): Promise<void> {
  await electron.evaluate(({ dialog }, filePath) => {
    dialog.showSaveDialog = () => Promise.resolve({ canceled: false, filePath });
  }, file);
}

async function addRing({ page }: DevelopedProgram, holeInches: number) {
  const plan = STARTING_PLANS.find(({ stages }) => stages.some(({ kind }) => kind === 'center-cut'));
  if (plan === undefined) throw new Error('No plan cuts a center');
  const details: ProjectDetails = {
    name: 'Measured ring',
    purpose: 'own',
    forWhom: '',
    dueOn: null,
    outline: { shape: 'circle', diameter: lengthFromInches(50) },
    hole: { diameter: lengthFromInches(holeInches) },
    hasSlit: false,
    settingChanges: {},
    notes: '',
  };
  const { projectId } = await askStore(page, 'project:create', { details, stagePlanId: plan.id });
  return projectId;
}

/** Whether the page has a drawing of this width and height, to within the tolerance. */
function has({ boxes }: PdfPage, size: number, tolerance = TOLERANCE): boolean {
  return boxes.some(
    ({ width, height }) => Math.abs(width - size) <= tolerance && Math.abs(height - size) <= tolerance,
  );
}

test('the printed template is true to size: hole, seam line and both test squares measure in the PDF what they say', async () => {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'ringbound-test-'));
  const program = await launchProgram();
  const { page } = program;
  const projectId = await addRing(program, 6);
  const { stages } = await askStore(page, 'project:open', { projectId });
  const cut = stages.find(({ kind }) => kind === 'center-cut');
  const address = `#/projects/${projectId}/stages/${cut?.id ?? ''}`;
  await page.evaluate((hash) => {
    window.location.hash = hash;
  }, address);
  const file = path.join(folder, 'template.pdf');
  await saveTo(program, file);
  await page.getByRole('button', { name: 'Print the template' }).click();
  await expect.poll(() => readPdf(file).catch(() => [])).toHaveLength(1);
  const [letter] = await readPdf(file);
  if (letter === undefined) throw new Error('No page');
  expect([letter.width, letter.height]).toEqual([8.5, 11]);
  expect(has(letter, 6, HAIR)).toBe(true);
  expect(has(letter, 6.5)).toBe(true);
  expect(has(letter, 1, HAIR)).toBe(true);
  expect(has(letter, TWENTY_FIVE_MM, HAIR)).toBe(true);
  await program.close();
  await rm(folder, { recursive: true, force: true });
});

test('a hole that was worked out holds the template back until it is the project’s, and is then what is printed', async () => {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'ringbound-test-'));
  const program = await launchProgram();
  const { page } = program;
  const projectId = await addRing(program, 6);
  const { stages } = await askStore(page, 'project:open', { projectId });
  const cut = stages.find(({ kind }) => kind === 'center-cut');
  await page.evaluate(
    (hash) => {
      window.location.hash = hash;
    },
    `#/projects/${projectId}/stages/${cut?.id ?? ''}`,
  );
  const size = page.getByRole('textbox', { name: 'Size', exact: true });
  await size.fill('14');
  await size.press('Enter');
  await expect(page.getByText('just trying 14 in. The project has 6 in.')).toBeVisible();
  await page.getByRole('button', { name: 'Save this answer' }).click();
  const unsettled = page.getByRole('note').filter({ hasText: 'Not settled yet' });
  await expect(unsettled).toContainText('“Size of the hole” has 14 in, the project has 6 in.');
  await expect(page.getByRole('button', { name: 'Print the template' })).toHaveCount(0);
  expect(await axeFaults(page)).toEqual([]);
  await unsettled.getByRole('button', { name: 'Use 14 in' }).click();
  await expect(unsettled).toHaveCount(0);
  const file = path.join(folder, 'template.pdf');
  await saveTo(program, file);
  await page.getByRole('button', { name: 'Print a quarter template' }).click();
  await expect.poll(() => readPdf(file).catch(() => [])).toHaveLength(1);
  const [quarter] = await readPdf(file);
  expect(quarter !== undefined && has(quarter, 7, HAIR)).toBe(true);
  const { project } = await askStore(page, 'project:open', { projectId });
  expect(project.hole).toEqual({ diameter: lengthFromInches(14) });
  await program.close();
  await rm(folder, { recursive: true, force: true });
});

test('A4 is as true as letter, so is a quarter, and every sheet of a large hole has its own test squares', async () => {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'ringbound-test-'));
  const program = await launchProgram();
  const print = async (sheet: string) => {
    const file = path.join(folder, 'sheet.pdf');
    await saveTo(program, file);
    await askStore(program.page, 'shell:print-sheet', { path: sheet, name: 'Sheet' });
    return readPdf(file);
  };
  const small = `/sheets/center-template/${await addRing(program, 6)}`;
  const [a4, ...more] = await print(`${small}?paper=a4`);
  if (a4 === undefined) throw new Error('No page');
  expect(more).toEqual([]);
  expect(a4.width).toBeCloseTo(210 / 25.4, 1);
  expect(a4.height).toBeCloseTo(297 / 25.4, 1);
  expect(has(a4, 6, HAIR)).toBe(true);
  expect(has(a4, 6.5)).toBe(true);
  const [quarter] = await print(`${small}?paper=a4&part=quarter`);
  if (quarter === undefined) throw new Error('No page');
  expect(has(quarter, 3, HAIR)).toBe(true);
  // The last dash of the seam ends before the fold, so only its height can be measured.
  expect(quarter.boxes.some(({ height }) => Math.abs(height - 3.25) <= TOLERANCE)).toBe(true);
  const tiled = await print(`/sheets/center-template/${await addRing(program, 16)}?paper=letter`);
  expect(tiled.length).toBeGreaterThan(1);
  for (const sheet of tiled) expect(has(sheet, 1, HAIR) && has(sheet, TWENTY_FIVE_MM, HAIR)).toBe(true);
  await program.close();
  await rm(folder, { recursive: true, force: true });
});

test('the words at the bottom of a template fit beside its test squares, the caution too', async () => {
  const program = await launchProgram();
  const { page } = program;
  const small = await addRing(program, 6);
  const large = await addRing(program, 16);
  const addresses = ['letter', 'a4'].flatMap((paper) =>
    [small, large].flatMap((id) =>
      ['whole', 'quarter'].map((part) => `#/sheets/center-template/${id}?paper=${paper}&part=${part}`),
    ),
  );
  for (const address of addresses) {
    await page.evaluate((hash) => {
      window.location.hash = hash;
    }, address);
    const sheet = page.getByRole('region', { name: /^Sheet/ }).first();
    const caution = sheet.getByText(CAUTIONS.rotaryBlade);
    await expect(caution).toBeVisible();
    const isCut = await caution.evaluate((line) => {
      const foot = line.parentElement!;
      // Both heights are rounded to whole pixels.
      return foot.scrollHeight > foot.clientHeight + 1 || foot.scrollWidth > foot.clientWidth;
    });
    expect(isCut, address).toBe(false);
    if (address.includes('quarter')) await expect(sheet).toContainText('Unfold, then cut one layer.');
  }
  await program.close();
});
