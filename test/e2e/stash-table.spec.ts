import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from '@playwright/test';
import { launchProgram } from '#test/helpers/launch';

test('a table from a file is looked at, brought in, taken out again as a file, and undone in one step', async () => {
  const program = await launchProgram();
  const { page, electron, workshop } = program;
  fs.mkdirSync(workshop, { recursive: true });
  const [given, taken] = [path.join(workshop, 'fabric.csv'), path.join(workshop, 'taken.csv')];
  fs.writeFileSync(
    given,
    'Name,Color,Size,Paid\r\nMoss,green,1 1/2 yd,15.00\r\n"=Fern, tall",green,FQ,3\r\n',
  );
  await electron.evaluate(
    ({ dialog }, files) => {
      dialog.showOpenDialog = () => Promise.resolve({ canceled: false, filePaths: [files.given] });
      dialog.showSaveDialog = () => Promise.resolve({ canceled: false, filePath: files.taken });
    },
    { given, taken },
  );
  await page.getByRole('navigation').getByRole('link', { name: 'Stash' }).click();
  await page.getByRole('link', { name: 'Bring in a table' }).click();
  await page.getByRole('button', { name: 'Choose a file' }).click();
  await expect(page.getByText('2 pieces, 2 new fabrics, $18.00 of value, from 2 lines')).toBeVisible();
  await expect(page.getByRole('rowheader', { name: '=Fern, tall' })).toBeVisible();
  await page.getByRole('button', { name: 'Add it to the stash' }).click();
  await expect(page.getByText('2 fabrics', { exact: true })).toBeVisible();
  await page.getByRole('link', { name: 'Take it out' }).click();
  await page.getByRole('button', { name: 'Keep it as a file' }).click();
  await expect(page.getByText(`Kept as ${taken}`)).toBeVisible();
  const text = fs.readFileSync(taken, 'utf8');
  expect(text.split('\r\n')[2]).toContain(`"'=Fern, tall"`);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await page.getByRole('main').getByRole('link', { name: 'Stash' }).click();
  await expect(page.getByText('No fabrics yet')).toBeVisible();
  await program.close();
});
