import { expect, type Page, test } from '@playwright/test';
import { launchProgram } from '#test/helpers/launch';
import { withTemporaryFolder } from '#test/helpers/temporary-folder';
import {
  dayFromNow,
  goTo,
  mainAction,
  openProject,
  openStage,
  stageRow,
  title,
} from '#test/helpers/notebook-steps';

const PROJECT = 'Hearth round';
const FABRIC = 'Rust stripe';
/** Shown beside a saved answer that is up to date; the day reads like “Oct 3”. */
const SAVED = /^Saved \S+ \S+$/;
/** Shown after the hole changed: the strip saved for a hole of 6 1/2 in was 65 in. */
const OUT_OF_DATE = /^Out of date: saved .* as 65 in, and the project has changed since$/;
const STAGES = [
  'Piece the top',
  'Quilting, sent out',
  'Sew the binding to the drawn hole and slit',
  'Cut slit and hole inside the binding',
  'Bind the outside',
  'Finish by hand',
] as const;

test('a ring-shaped project goes from an empty notebook through all its stages and is there after a restart', async () => {
  await withTemporaryFolder(async (workshop) => {
    const first = await launchProgram({ workshop });
    await beginNotebook(first.page);
    await writeDownProject(first.page);
    await test.step('fabric', () => buyFabric(first.page));
    await test.step('piecing', () => piecing(first.page));
    await test.step('longarm', () => longarm(first.page));
    await test.step('inner binding', () => innerBinding(first.page));
    await test.step('center cut', () => centerCut(first.page));
    await test.step('outer binding', () => outerBinding(first.page));
    await test.step('hand finish', () => handFinish(first.page));
    await test.step('the hole grows', () => holeGrows(first.page));
    await first.close();

    const second = await launchProgram({ workshop });
    await test.step('everything is still there', () => findEverything(second.page));
    await second.close();
  });
});

async function beginNotebook(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Start my notebook' }).click();
  const dialog = page.getByRole('dialog', { name: 'Start my notebook' });
  await dialog.getByRole('textbox', { name: 'Name of the workshop' }).fill('Attic table');
  await dialog.getByRole('radio', { name: 'inches' }).check();
  await dialog.getByRole('button', { name: 'Start', exact: true }).click();
  await expect(title(page, 'New project')).toBeFocused();
}

async function writeDownProject(page: Page): Promise<void> {
  await page.getByRole('textbox', { name: 'Name' }).fill(PROJECT);
  await page.getByRole('radio', { name: 'Gift' }).check();
  await page.getByRole('textbox', { name: 'Who it’s for' }).fill('Aunt Wren');
  await page.getByLabel('Due').fill(dayFromNow(60));
  await page.getByRole('radio', { name: 'Round', exact: true }).check();
  await page.getByRole('textbox', { name: 'Across' }).fill('48 1/2');
  await page.getByRole('checkbox', { name: 'It has a hole in the middle' }).check();
  await page.getByRole('textbox', { name: 'Hole across' }).fill('6 1/2 in');
  await page.getByRole('checkbox', { name: /A slit runs/ }).check();
  const plans = page.getByRole('group', { name: 'Stage plan' }).getByRole('radio');
  await expect(plans).toHaveCount(2);
  await page.getByRole('radio', { name: /^Tree skirt, bound before the cut/ }).check();
  await page.getByRole('button', { name: 'Start this project' }).click();
  await expect(title(page, PROJECT)).toBeFocused();
  const leaf = page.getByRole('region', { name: 'What it is' });
  await expect(leaf.getByText('Round, 48 1/2 in across, 6 1/2 in hole, slit.')).toBeVisible();
  await expect(page.getByText('Gift for Aunt Wren')).toBeVisible();
  await expect(page.getByText(/^Due .*in 8 weeks/)).toBeVisible();
  for (const stage of STAGES) await expect(stageRow(page, stage)).toContainText('planned');
}

/** Adds a new fabric with a purchase of two yards and its price. */
async function buyFabric(page: Page): Promise<void> {
  await goTo(page, 'Stash');
  await mainAction(page, 'Add fabric').click();
  const dialog = page.getByRole('dialog', { name: 'Add fabric' });
  await dialog.getByRole('textbox', { name: 'Name' }).fill(FABRIC);
  await dialog.getByRole('textbox', { name: 'Size' }).fill('2 yd');
  await dialog.getByRole('textbox', { name: 'What it cost' }).fill('24');
  await dialog.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(title(page, FABRIC)).toBeFocused();
  await openProject(page, PROJECT);
}

/** The large figure of the open calculator. */
const answer = (page: Page) =>
  page.getByRole('region', { name: 'Numbers', exact: true }).getByRole('strong').first();

const onward = (page: Page, stage: string) => page.getByRole('link', { name: `On to “${stage}”` });

async function saveAnswer(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Save this answer' }).click();
  await expect(page.getByText(SAVED)).toBeVisible();
}

async function recordCut(page: Page, length: string): Promise<void> {
  await page.getByRole('region', { name: 'Fabric' }).getByRole('button', { name: 'Record a cut' }).click();
  const dialog = page.getByRole('dialog', { name: 'Record a cut' });
  await dialog.getByRole('radio', { name: new RegExp(FABRIC) }).check();
  await dialog.getByRole('textbox', { name: 'How long a cut' }).fill(length);
  await dialog.getByRole('button', { name: 'Record cut' }).click();
  await expect(dialog).toBeHidden();
}

/** Ticks the lines of “Before you start” one by one; only then does the button start the stage. */
async function passGate(page: Page, opens: string, lines: readonly string[]): Promise<void> {
  await mainAction(page, opens).click();
  const dialog = page.getByRole('dialog');
  for (const line of lines) {
    await expect(dialog.getByRole('button', { name: 'Start anyway' })).toBeDisabled();
    await dialog.getByRole('checkbox', { name: line }).check();
  }
  await dialog.getByRole('button', { name: 'Start', exact: true }).click();
  await expect(dialog).toBeHidden();
}

async function piecing(page: Page): Promise<void> {
  await mainAction(page, 'Start piecing').click();
  await stageRow(page, 'Piece the top').getByRole('link').click();
  await expect(title(page, 'Piece the top')).toBeFocused();
  await page.getByRole('combobox', { name: 'Patch or unit' }).selectOption('Half-square triangles');
  await page.getByRole('textbox', { name: 'How many' }).fill('24');
  // A half-square triangle that finishes at 3 in is cut from a square of 3 7/8 in (common practice: finished + 7/8 in).
  await expect(answer(page)).toHaveText('3 7/8 in');
  await saveAnswer(page);
  await recordCut(page, '18');
  const fabric = page.getByRole('region', { name: 'Fabric' });
  await expect(fabric.getByRole('listitem')).toContainText(FABRIC);
  await expect(fabric.getByRole('listitem')).toContainText('$6.00');
  await mainAction(page, 'The top is done').click();
  await onward(page, 'Quilting, sent out').click();
}

async function longarm(page: Page): Promise<void> {
  await passGate(page, 'Check before you start', ['Top measured; backing and batting larger on every side']);
  await mainAction(page, 'Send it out').click();
  const sending = page.getByRole('dialog', { name: 'Send it out' });
  await sending.getByLabel('Who’s quilting it').fill('Copper Needle Longarm');
  await sending.getByLabel('Promised back on').fill(dayFromNow(21));
  await sending.getByRole('button', { name: 'Send', exact: true }).click();
  await expect(sending).toBeHidden();
  await expect(
    page.getByText(/at the quilter · With Copper Needle Longarm, back .*in 21 days/),
  ).toBeVisible();
  await goTo(page, 'Bench');
  await expect(page.getByText('1 at the quilter', { exact: true })).toBeVisible();
  await page.getByRole('contentinfo').getByRole('link', { name: 'It is back' }).click();
  await mainAction(page, 'It is back').click();
  const back = page.getByRole('dialog', { name: 'It is back' });
  await back.getByRole('textbox', { name: 'Price paid' }).fill('85');
  await back.getByRole('button', { name: 'Save' }).click();
  await expect(back).toBeHidden();
  await expect(page.getByRole('region', { name: 'Trips to the quilter' })).toContainText('$85.00');
  await onward(page, 'Sew the binding to the drawn hole and slit').click();
}

async function outerBinding(page: Page): Promise<void> {
  await passGate(page, 'Check before you start', ['Quilting finished and ends secured']);
  await saveAnswer(page);
  await mainAction(page, 'The edge is bound').click();
  await onward(page, 'Finish by hand').click();
}

/** Its only gate is that the binding is sewn to the drawn lines, which the stage before it has closed. */
async function centerCut(page: Page): Promise<void> {
  await mainAction(page, 'Cut the center').click();
  await mainAction(page, 'The center is cut').click();
  await onward(page, 'Bind the outside').click();
}

async function innerBinding(page: Page): Promise<void> {
  await passGate(page, 'Check before you start', [
    'Quilting finished and ends secured',
    'Center measured twice, on two days or in two ways',
    'Diameter tried on a practice piece',
    'Hole and slit drawn and basted, not cut',
  ]);
  await saveAnswer(page);
  await recordCut(page, '9 1/2 in');
  const cut = page.getByRole('region', { name: 'Fabric' }).getByRole('listitem');
  await page.getByRole('button', { name: `Undo the cut of ${FABRIC}` }).click();
  await expect(cut).toHaveCount(0);
  await page.getByRole('contentinfo').getByRole('button', { name: 'Undo' }).click();
  await expect(cut).toContainText('9 1/2 in cut');
  await mainAction(page, 'The hole is bound').click();
  await onward(page, 'Cut slit and hole inside the binding').click();
}

async function handFinish(page: Page): Promise<void> {
  await mainAction(page, 'Start the hand finish').click();
  await page.getByRole('checkbox', { name: 'Label sewn on' }).check();
  await mainAction(page, 'It is finished').click();
  await page.getByRole('link', { name: 'See the whole project' }).click();
  await expect(title(page, PROJECT)).toBeFocused();
  for (const stage of STAGES) await expect(stageRow(page, stage)).toContainText('done');
}

async function holeGrows(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Change' }).click();
  await page.getByRole('textbox', { name: 'Hole across' }).fill('7');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(title(page, PROJECT)).toBeFocused();
  await stageRow(page, 'Sew the binding to the drawn hole and slit').getByRole('link').click();
  await expect(page.getByText(OUT_OF_DATE)).toBeVisible();
}

async function findEverything(page: Page): Promise<void> {
  await expect(page.getByText('1 finished', { exact: true })).toBeVisible();
  await openProject(page, PROJECT);
  for (const stage of STAGES) await expect(stageRow(page, stage)).toContainText('done');
  const leaf = page.getByRole('region', { name: 'What it is' });
  await expect(leaf.getByText('Round, 48 1/2 in across, 7 in hole, slit.')).toBeVisible();
  // 18 in and 9 1/2 in of a fabric 42 in wide, bought 72 in long for 24.00.
  await expect(leaf.getByRole('listitem').filter({ hasText: FABRIC })).toContainText('1155 sq in');
  await expect(leaf.getByRole('listitem').filter({ hasText: 'Total' })).toContainText('$9.17');
  await leaf.getByRole('button', { name: /^Show all/ }).click();
  for (const stage of STAGES) {
    await expect(leaf.getByRole('listitem').filter({ hasText: `${stage}: done` })).toHaveCount(1);
  }
  await expect(
    leaf.getByRole('listitem').filter({ hasText: 'Quilting, sent out: sent to the quilter' }),
  ).toHaveCount(1);

  await openStage(page, PROJECT, 'Piece the top');
  await expect(answer(page)).toHaveText('3 7/8 in');
  await expect(page.getByText(SAVED)).toBeVisible();
  await expect(page.getByRole('region', { name: 'Fabric' }).getByRole('listitem')).toContainText('18 in cut');
  await openStage(page, PROJECT, 'Quilting, sent out');
  await expect(page.getByRole('region', { name: 'Trips to the quilter' })).toContainText(
    'Copper Needle Longarm',
  );
  await openStage(page, PROJECT, 'Bind the outside');
  await expect(answer(page)).toHaveText('22 × 22 in');
  await expect(page.getByRole('button', { name: 'Save the new answer' })).toBeVisible();
  await openStage(page, PROJECT, 'Sew the binding to the drawn hole and slit');
  await expect(page.getByRole('checkbox', { name: 'Hole and slit drawn and basted, not cut' })).toBeChecked();
  await expect(page.getByText(OUT_OF_DATE)).toBeVisible();
  await openStage(page, PROJECT, 'Finish by hand');
  await expect(page.getByRole('checkbox', { name: 'Label sewn on' })).toBeChecked();

  await goTo(page, 'Stash');
  await page.getByRole('link', { name: FABRIC }).click();
  await expect(title(page, FABRIC)).toBeVisible();
  await expect(page.getByRole('region', { name: 'Pieces of this fabric' })).toContainText('42 × 44 1/2 in');
  await expect(page.getByRole('region', { name: 'Ledger' }).getByRole('listitem')).toContainText([
    /Cut 9 1\/2 in for Hearth round/,
    /Undone: cut 9 1\/2 in for Hearth round/,
    /Cut 9 1\/2 in for Hearth round.*undone/,
    /Cut 1\/2 yd for Hearth round/,
    /Bought 2 yd/,
  ]);
}
