import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from '@playwright/test';
import { launchProgram } from '#test/helpers/launch';
import { axeFaults } from './axe-faults';

test('a spreadsheet file is previewed, imported, exported again, and undone in one step', async () => {
  const program = await launchProgram();
  const { page, electron, workshop } = program;
  fs.mkdirSync(workshop, { recursive: true });
  const [given, exported] = [path.join(workshop, 'fabric.csv'), path.join(workshop, 'exported.csv')];
  fs.writeFileSync(
    given,
    'Name,Color,Size,Paid\r\nMoss,green,1 1/2 yd,15.00\r\n"=Fern, tall",green,FQ,3\r\n',
  );
  await electron.evaluate(
    ({ dialog }, files) => {
      dialog.showOpenDialog = () => Promise.resolve({ canceled: false, filePaths: [files.given] });
      dialog.showSaveDialog = () => Promise.resolve({ canceled: false, filePath: files.exported });
    },
    { given, exported },
  );
  await page.getByRole('navigation').getByRole('link', { name: 'Stash' }).click();
  await page.getByRole('link', { name: 'Import a spreadsheet' }).click();
  await page.getByRole('button', { name: 'Choose a file' }).click();
  await expect(page.getByText('2 pieces of fabric, 2 new fabrics, worth $18.00, from 2 rows')).toBeVisible();
  await expect(page.getByRole('rowheader', { name: '=Fern, tall' })).toBeVisible();
  await page.getByRole('button', { name: 'Add to stash' }).click();
  await expect(page.getByText('2 fabrics', { exact: true })).toBeVisible();
  await page.getByRole('link', { name: 'Export your stash' }).click();
  await page.getByRole('button', { name: 'Save file' }).click();
  await expect(page.getByText(`Saved as ${exported}`)).toBeVisible();
  const text = fs.readFileSync(exported, 'utf8');
  expect(text.split('\r\n')[2]).toContain(`"'=Fern, tall"`);
  await page.getByRole('button', { name: /^Undo/ }).click();

  await test.step('a messy one: one cell is mended in place, and its columns are known the next time', async () => {
    await page.getByRole('main').getByRole('link', { name: 'Stash' }).click();
    await page.getByRole('link', { name: 'Import a spreadsheet' }).click();
    fs.copyFileSync('test/fixtures/messy-stash.csv', given);
    await page.getByRole('button', { name: 'Choose a file' }).click();
    await expect(page.getByText('1 row left out: a cell can’t be read.')).toBeVisible();
    await page.getByRole('combobox', { name: 'Remarks' }).selectOption('Leave out');
    await page.getByRole('textbox', { name: 'Size, row 16' }).fill('2 yd');
    await page.getByRole('button', { name: 'Use this' }).click();
    await expect(page.getByText(/^14 pieces of fabric, 15 new fabrics.*from 15 rows$/)).toBeVisible();
    expect(await axeFaults(page)).toEqual([]);
    await page.getByRole('button', { name: 'Add to stash' }).click();
    await expect(page.getByText('15 fabrics', { exact: true })).toBeVisible();
    await page.getByRole('link', { name: 'Import a spreadsheet' }).click();
    await page.getByRole('button', { name: 'Choose a file' }).click();
    await expect(page.getByRole('combobox', { name: 'Remarks' })).toHaveValue('left-out');
    await page.getByRole('button', { name: /^Undo/ }).click();
  });
  await page.getByRole('main').getByRole('link', { name: 'Stash' }).click();
  await expect(page.getByText('No fabrics yet')).toBeVisible();
  await program.close();
});
