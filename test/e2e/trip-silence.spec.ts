import { expect, test } from '@playwright/test';
import { tripWith } from '#core/domain/trip';
import { calendarDate } from '#core/units/calendar-date';
import { askStore } from '#test/helpers/ask-store';
import { launchProgram } from '#test/helpers/launch';
import { dayFromNow, goTo, mainAction, openStage } from '#test/helpers/notebook-steps';
import { writeDownTops } from '#test/helpers/tops';
import { axeFaults } from './axe-faults';

const QUILTER = 'Copper Needle Longarm';
const STAGE = 'Quilting, sent out';

test('a project without news shows up on the bench until an update is added', async () => {
  const { page, close } = await launchProgram();
  const [top] = await writeDownTops(page, ['Alder throw']);
  const details = {
    ...tripWith(QUILTER),
    sentOn: calendarDate(dayFromNow(-30)),
    promisedOn: calendarDate(dayFromNow(20)),
  };
  await askStore(page, 'trip:send', { stageId: top!.stageId, details });
  await page.reload();
  const ask = page.getByRole('region', { name: 'Check in with' });
  await test.step('after thirty days without news, where the setting is 21', async () => {
    await goTo(page, 'Bench');
    await expect(ask).toContainText('No news for 30 days');
    await expect(ask).toContainText(QUILTER);
    expect(await axeFaults(page)).toEqual([]);
  });
  await test.step('an update is added from the bench', async () => {
    await ask.getByRole('button', { name: 'Add an update' }).click();
    const dialog = page.getByRole('dialog', { name: `Update from ${QUILTER}` });
    await dialog.getByRole('radio', { name: 'On the frame' }).check();
    await dialog.getByRole('button', { name: 'Save' }).click();
    await expect(dialog).toBeHidden();
    await expect(ask).toHaveCount(0);
  });
  await close();
});

/** A script that draws a small picture of one color in the window, in place of a photo. */
const picture = (color: string) => `(async () => {
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [120, 90];
  const brush = canvas.getContext('2d');
  brush.fillStyle = '${color}';
  brush.fillRect(0, 0, 120, 90);
  return canvas.toDataURL('image/png').split(',')[1];
})()`;

test('photos of a project before it is sent and after it is back stay with the trip', async () => {
  const { page, close } = await launchProgram();
  const [top] = await writeDownTops(page, ['Alder throw']);
  const details = { ...tripWith(QUILTER), sentOn: calendarDate(dayFromNow(-5)) };
  await askStore(page, 'trip:send', { stageId: top!.stageId, details });
  await page.reload();
  await openStage(page, 'Alder throw', STAGE);
  const trips = page.getByRole('region', { name: 'Trips to the quilter' });
  const photograph = async (moment: string, color: string) => {
    const bytes = await page.evaluate<string>(picture(color));
    await page.getByLabel(`Photo ${moment.toLowerCase()}, files`).setInputFiles({
      name: `${color}.png`,
      mimeType: 'image/png',
      buffer: Buffer.from(bytes, 'base64'),
    });
    await expect(trips.getByRole('group', { name: moment }).getByRole('img')).toHaveCount(1);
  };
  await photograph('Before it was sent', 'teal');
  await mainAction(page, 'It is back').click();
  const dialog = page.getByRole('dialog', { name: 'It is back' });
  await dialog.getByRole('button', { name: 'Save' }).click();
  await expect(dialog).toBeHidden();
  await photograph('After it came back', 'maroon');
  await page.reload();
  for (const moment of ['Before it was sent', 'After it came back']) {
    await expect(trips.getByRole('group', { name: moment }).getByRole('img')).toHaveCount(1);
  }
  const { photos } = await askStore(page, 'project:open', { projectId: top!.projectId });
  expect(photos.map(({ moment }) => moment).toSorted()).toEqual(['after', 'before']);
  await close();
});
