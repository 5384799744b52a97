import { expect, type Page, test } from '@playwright/test';
import { calendarDate } from '#core/units/calendar-date';
import { askStore } from '#test/helpers/ask-store';
import { launchProgram } from '#test/helpers/launch';
import { dayFromNow, goTo, mainAction, openStage, title } from '#test/helpers/notebook-steps';
import { writeDownTops } from '#test/helpers/tops';
import { axeFaults } from './axe-faults';

const QUILTER = 'Copper Needle Longarm';
const STAGE = 'Quilting, sent out';

async function addQuilter(page: Page): Promise<void> {
  await goTo(page, 'At the quilter');
  await mainAction(page, 'Add a contact').click();
  const dialog = page.getByRole('dialog', { name: 'Add a contact' });
  await dialog.getByRole('textbox', { name: 'Name' }).fill(QUILTER);
  await dialog.getByRole('textbox', { name: 'Their rate' }).fill('0.025');
  await dialog.getByRole('textbox', { name: 'Their minimum' }).fill('60');
  await dialog.getByRole('textbox', { name: 'They say it takes' }).fill('18');
  await dialog.getByRole('button', { name: 'Save' }).click();
  await expect(title(page, QUILTER)).toBeFocused();
  await expect(page.getByText('18 days promised; nothing back from them yet')).toBeVisible();
}

test('a quilter is saved and compared, two tops go in one package, one comes back, and the overdue one shows up on the bench', async () => {
  const { page, close } = await launchProgram();
  await writeDownTops(page, ['Alder throw', 'Birch throw']);
  await test.step('a contact with rates', () => addQuilter(page));

  await test.step('compared for the project', async () => {
    await openStage(page, 'Alder throw', STAGE);
    const offers = page.getByRole('region', { name: 'Who could quilt it' }).getByRole('listitem');
    // The top goes out as sewn, 50 1/2 × 60 1/2 in, billed as 51 × 61 in: at 0.025 per square inch 77.78 (common practice).
    await expect(offers).toContainText(QUILTER);
    await expect(offers).toContainText('$77.78');
    await expect(offers).toContainText('at their rate');
    expect(await axeFaults(page)).toEqual([]);
  });

  await test.step('reserved before sending, and the schedule uses the quilter’s days', async () => {
    await page.getByRole('button', { name: `Reserve ${QUILTER}` }).click();
    const trips = page.getByRole('region', { name: 'Trips to the quilter' });
    await expect(trips).toContainText('Reserved, not sent yet');
    await goTo(page, 'Days');
    await page.getByText('Show as a table').click();
    const row = page.getByRole('table', { name: 'Projects' }).getByRole('row', { name: /Alder throw/ });
    await expect(row).toContainText(`18 days, as ${QUILTER} promises`);
    await goTo(page, 'At the quilter');
    await expect(page.getByText('Reserved, not sent yet')).toBeVisible();
    await openStage(page, 'Alder throw', STAGE);
  });

  await test.step('two tops in one package', async () => {
    await mainAction(page, 'Send it out').click();
    const dialog = page.getByRole('dialog', { name: 'Send it out' });
    await expect(dialog.getByLabel('Who’s quilting it')).toHaveValue(QUILTER);
    await expect(dialog.getByText(/Turnaround: 18 days promised/)).toBeVisible();
    await expect(dialog.getByLabel('Promised back on')).toHaveValue(dayFromNow(18));
    await expect(dialog.getByRole('textbox', { name: 'Price quoted' })).toHaveValue(/77.78/);
    await dialog.getByRole('textbox', { name: 'Backing' }).fill('58 x 68, oatmeal');
    await dialog.getByRole('textbox', { name: 'Pattern' }).fill('Slow waves');
    await dialog.getByRole('checkbox', { name: /^Top, pressed/ }).check();
    await dialog.getByRole('checkbox', { name: 'Birch throw' }).check();
    expect(await axeFaults(page)).toEqual([]);
    await dialog.getByRole('button', { name: 'Send', exact: true }).click();
    await expect(dialog).toBeHidden();
    const trips = page.getByRole('region', { name: 'Trips to the quilter' });
    await expect(trips).toContainText('In one package with Birch throw');
    await expect(trips).toContainText('Slow waves');
    await expect(trips).toContainText('Packing list: 1 of 8 packed');
  });

  await test.step('an update is added for both', async () => {
    await goTo(page, 'At the quilter');
    await expect(page.getByText('2 projects at 1 contact')).toBeVisible();
    await page.getByRole('button', { name: 'Add an update' }).click();
    const dialog = page.getByRole('dialog', { name: `Update from ${QUILTER}` });
    await dialog.getByRole('radio', { name: 'On the frame' }).check();
    await expect(dialog.getByRole('checkbox', { name: /other project in the package/ })).toBeChecked();
    await dialog.getByRole('button', { name: 'Save' }).click();
    await expect(dialog).toBeHidden();
    await expect(page.getByText(/Last: On the frame/)).toBeVisible();
  });

  await test.step('one comes back, the other stays away', async () => {
    await openStage(page, 'Birch throw', STAGE);
    await mainAction(page, 'It is back').click();
    const dialog = page.getByRole('dialog', { name: 'It is back' });
    await dialog.getByRole('textbox', { name: 'Price paid' }).fill('77.78');
    await dialog.getByRole('checkbox', { name: 'Alder throw' }).uncheck();
    await dialog.getByRole('button', { name: 'Save' }).click();
    await expect(dialog).toBeHidden();
    await goTo(page, 'At the quilter');
    await expect(page.getByText('1 project at 1 contact')).toBeVisible();
  });

  await test.step('the overdue one shows up on the bench', async () => {
    const { items } = await askStore(page, 'project:list', { archived: false });
    const { trips } = items.find(({ project }) => project.name === 'Alder throw')!;
    const { id: tripId, ...details } = trips[0]!;
    const late = { sentOn: calendarDate(dayFromNow(-30)), promisedOn: calendarDate(dayFromNow(-4)) };
    await askStore(page, 'trip:change', { tripId, details: { ...details, ...late } });
    await page.reload();
    await goTo(page, 'Bench');
    const ask = page.getByRole('region', { name: 'Check in with' });
    await expect(ask).toContainText('4 days late');
    await expect(ask).toContainText('Alder throw');
    expect(await axeFaults(page)).toEqual([]);
  });

  await test.step('it is received from the bench, on the one trip it had', async () => {
    await page
      .getByRole('region', { name: 'Check in with' })
      .getByRole('link', { name: 'It is back' })
      .click();
    const dialog = page.getByRole('dialog', { name: 'It is back' });
    await expect(dialog.getByRole('textbox', { name: 'Price paid' })).toHaveValue(/77.78/);
    await dialog.getByRole('button', { name: 'Save' }).click();
    await expect(dialog).toBeHidden();
    await expect(
      page.getByRole('region', { name: 'Trips to the quilter' }).getByText('Slow waves'),
    ).toHaveCount(1);
    const { items } = await askStore(page, 'project:list', { archived: false });
    const { trips } = items.find(({ project }) => project.name === 'Alder throw')!;
    expect(trips.map(({ backOn }) => backOn)).toEqual([dayFromNow(0)]);
  });
  await close();
});
