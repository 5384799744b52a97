import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import ICAL from 'ical.js';
import { STARTING_PLANS } from '#core/domain/starting-plans';
import { tripWith } from '#core/domain/trip';
import { calendarDate } from '#core/units/calendar-date';
import { lengthFromInches } from '#core/units/length';
import { askStore } from '#test/helpers/ask-store';
import { launchProgram } from '#test/helpers/launch';
import { withTemporaryFolder } from '#test/helpers/temporary-folder';
import { dayFromNow, goTo, mainAction } from '#test/helpers/notebook-steps';
import { writeDownTops } from '#test/helpers/tops';
import { axeFaults } from './axe-faults';

const GIFTS = ['Gift for Wren', 'Gift for Sorrel', 'Gift for Marsh'] as const;

/** Three invented gifts of seven hours each for one day nine days from now; by then there are 14 to 18 hours at the bench. */
async function threeGifts(page: Page): Promise<void> {
  const plan = STARTING_PLANS.find(({ name }) => name === 'Small mat');
  if (plan === undefined) throw new Error('There is no plan for a small mat');
  for (const name of GIFTS) {
    await askStore(page, 'project:create', {
      stagePlanId: plan.id,
      details: {
        name,
        purpose: 'gift',
        forWhom: '',
        dueOn: calendarDate(dayFromNow(9)),
        outline: { shape: 'rectangle', width: lengthFromInches(18), length: lengthFromInches(24) },
        hole: null,
        hasSlit: false,
        settingChanges: {},
        notes: '',
      },
    });
  }
  await page.reload();
}

const verdict = (page: Page) => page.getByRole('region', { name: 'On time or late' });
const flag = (page: Page, name: string) => page.getByRole('slider', { name: `${name}, due` });
const dueOf = async (page: Page, name: string) =>
  (await askStore(page, 'project:list', { archived: false })).items.find(
    ({ project }) => project.name === name,
  )?.project.dueOn;

test('three gifts due on one day cannot all be done; moving one by keys gets everything done on time', async () => {
  const { page, close } = await launchProgram();
  await threeGifts(page);
  await expect(verdict(page)).toContainText('Not everything gets done on time');
  await expect(verdict(page)).toContainText('more sewing time a week would be enough');
  await expect(page.getByText(/^Will be done .+ late$/).first()).toBeVisible();

  await goTo(page, 'Days');
  await expect(verdict(page)).toContainText('Not everything gets done on time');
  const sorrel = flag(page, 'Gift for Sorrel');
  await sorrel.focus();
  await page.keyboard.press('PageUp');
  await expect(verdict(page)).toContainText(
    'With that change: By this schedule, everything gets done on time.',
  );
  await expect(page.getByRole('region', { name: 'If that changes' })).toContainText('Gift for Sorrel: due');
  await expect(sorrel).toHaveAttribute('aria-valuetext', /, was /);
  expect(await dueOf(page, 'Gift for Sorrel')).toBe(dayFromNow(9));

  await mainAction(page, 'Save the new day').click();
  await expect(verdict(page)).toHaveText('By this schedule, everything gets done on time.');
  expect(await dueOf(page, 'Gift for Sorrel')).toBe(dayFromNow(16));
  await goTo(page, 'Bench');
  await expect(verdict(page)).toHaveText('By this schedule, everything gets done on time.');
  await expect(page.getByText('Moved the due date of “Gift for Sorrel”')).toBeVisible();
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(verdict(page)).toContainText('Not everything gets done on time');
  await close();
});

test('dragging a flag shows what it would change; Cancel leaves the saved date', async () => {
  const { page, close } = await launchProgram();
  await threeGifts(page);
  await goTo(page, 'Days');
  const wren = flag(page, 'Gift for Wren');
  await expect(wren).toBeVisible();
  const box = await wren.boundingBox();
  if (box === null) throw new Error('The flag is not drawn');
  await page.mouse.move(box.x + 8, box.y + 8);
  await page.mouse.down();
  // A day is 13 pixels wide at the first scale.
  await page.mouse.move(box.x + 8 + 5 * 13, box.y + 8, { steps: 5 });
  await page.mouse.move(box.x + 8 + 10 * 13, box.y + 8, { steps: 5 });
  await page.mouse.up();
  await expect(page.getByRole('region', { name: 'If that changes' })).toContainText('Gift for Wren: due');
  await expect(verdict(page)).toContainText('With that change:');
  expect(await axeFaults(page)).toEqual([]);
  await page.getByRole('region', { name: 'If that changes' }).getByRole('button', { name: 'Cancel' }).click();
  await expect(page.getByRole('region', { name: 'If that changes' })).toHaveCount(0);
  await expect(verdict(page)).toContainText('Not everything gets done on time');
  expect(await dueOf(page, 'Gift for Wren')).toBe(dayFromNow(9));

  await page.getByText('Show as a table').click();
  await expect(page.getByRole('table', { name: 'Projects' }).getByRole('row')).toHaveCount(4);
  await close();
});

test('dragging the day a project is back shows what it would change; Save makes it the promised date', async () => {
  const { page, close } = await launchProgram();
  const [top] = await writeDownTops(page, ['Alder throw']);
  const details = {
    ...tripWith('Copper Needle Longarm'),
    sentOn: calendarDate(dayFromNow(-2)),
    promisedOn: calendarDate(dayFromNow(5)),
  };
  await askStore(page, 'trip:send', { stageId: top!.stageId, details });
  const { project } = await askStore(page, 'project:open', { projectId: top!.projectId });
  const { id: projectId, isArchived: _archived, createdAt: _created, changedAt: _changed, ...rest } = project;
  const dueOn = calendarDate(dayFromNow(20));
  await askStore(page, 'project:change', { projectId, details: { ...rest, dueOn } });
  await page.reload();
  await goTo(page, 'Days');
  await expect(verdict(page)).toHaveText('By this schedule, everything gets done on time.');
  const back = page.getByRole('slider', { name: 'Alder throw, back from Copper Needle Longarm' });
  const box = await back.boundingBox();
  if (box === null) throw new Error('The day is not drawn');
  await page.mouse.move(box.x + 8, box.y + 8);
  await page.mouse.down();
  await page.mouse.move(box.x + 8 + 14 * 13, box.y + 8, { steps: 5 });
  // As when another window opens in the middle of the drag. The mouse is pointer 1 in Chromium.
  await back.evaluate((mark) => mark.releasePointerCapture(1));
  await page.mouse.move(box.x + 8 + 28 * 13, box.y + 8, { steps: 5 });
  await page.mouse.up();
  await expect(page.getByRole('region', { name: 'If that changes' })).toContainText('Alder throw');
  await expect(verdict(page)).toContainText('With that change: Not everything gets done on time');
  const promised = async () =>
    (await askStore(page, 'project:open', { projectId: top!.projectId })).trips[0]?.promisedOn;
  expect(await promised()).toBe(dayFromNow(5));
  await mainAction(page, 'Save the new day').click();
  await expect(verdict(page)).toContainText('Not everything gets done on time');
  await expect.poll(promised).toBe(dayFromNow(33));
  await close();
});

test('sewing hours and days off are saved, and all dates follow', async () => {
  const { page, close } = await launchProgram();
  await threeGifts(page);
  await goTo(page, 'Workshop');
  await page.getByRole('textbox', { name: 'Saturday' }).fill('8 h');
  await page.getByRole('textbox', { name: 'Saturday' }).press('Enter');
  await expect(page.getByText(/^16 h a week\./)).toBeVisible();
  await page.getByLabel('First day off').fill(dayFromNow(1));
  await page.getByLabel('Last day off').fill(dayFromNow(400));
  await page.getByLabel('Reason').fill('A long voyage');
  await page.getByRole('button', { name: 'Add days off' }).click();
  await expect(page.getByText('A long voyage')).toBeVisible();
  await goTo(page, 'Bench');
  await expect(verdict(page)).toContainText('one by');
  await goTo(page, 'Workshop');
  await page.getByRole('button', { name: /Delete the day off/ }).click();
  await expect(page.getByText('A long voyage')).toHaveCount(0);
  await close();
});

test('the days are kept as a calendar file that another program reads', async () => {
  const { page, electron, close } = await launchProgram();
  await withTemporaryFolder(async (folder) => {
    await threeGifts(page);
    await goTo(page, 'Days');
    const file = path.join(folder, 'days.ics');
    // Answers the system's save dialog for the maker; everything else is the real program.
    await electron.evaluate(({ dialog }, filePath) => {
      dialog.showSaveDialog = () => Promise.resolve({ canceled: false, filePath });
    }, file);
    await page.getByRole('button', { name: 'Save a calendar file' }).click();
    await expect.poll(() => readFile(file, 'utf8').catch(() => '')).toContain('END:VCALENDAR');
    const calendar = new ICAL.Component(ICAL.parse(await readFile(file, 'utf8')) as unknown[]);
    const events = calendar.getAllSubcomponents('vevent').map((one) => new ICAL.Event(one));
    expect(events.map((event) => [event.summary, event.startDate.toString()])).toEqual(
      GIFTS.map((name) => [`${name} is due`, dayFromNow(9)]),
    );
  });
  await close();
});
