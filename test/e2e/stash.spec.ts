import { expect, test } from '@playwright/test';
import { launchProgram } from '#test/helpers/launch';

test('a fabric is added with its first piece and found by its words, and a file that is not a photo is refused', async () => {
  const { page, close } = await launchProgram();
  await page.getByRole('navigation').getByRole('link', { name: 'Stash' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Stash' })).toBeFocused();
  await page.keyboard.press('Control+Enter');
  await expect(page.getByRole('textbox', { name: 'Name' })).toBeFocused();
  await page.keyboard.type('Kettle blue');
  await page.keyboard.press('Tab');
  await page.keyboard.type('deep blue');
  await page.getByRole('textbox', { name: 'Size' }).focus();
  await page.keyboard.type('18 x 22');
  await page.keyboard.press('Tab');
  await expect(page.getByText('18 in across, 22 in along')).toBeVisible();
  const notAPhoto = { name: 'fabric.png', mimeType: 'image/png', buffer: Buffer.from('no picture') };
  await page.getByLabel('Photo file').setInputFiles(notAPhoto);
  await expect(page.getByText(/isn’t a picture that Ringbound can store/)).toBeVisible();
  await page.getByRole('button', { name: 'No photo' }).click();
  await page.getByRole('textbox', { name: 'Size' }).press('Enter');
  await expect(page.getByRole('heading', { level: 1, name: 'Kettle blue' })).toBeVisible();
  await expect(page.getByRole('img', { name: 'By the yard, 18 × 22 in, to scale' })).toBeVisible();
  await page.getByRole('main').getByRole('link', { name: 'Stash' }).click();
  await page.getByRole('textbox', { name: 'Find' }).pressSequentially('deep ket');
  await expect(page.getByRole('listitem').getByRole('link', { name: 'Kettle blue' })).toBeVisible();
  await expect(page.getByText('1 fabric found')).toBeVisible();
  await close();
});
