import { expect, type Page, test } from '@playwright/test';
import { askStore } from '#test/helpers/ask-store';
import { launchProgram } from '#test/helpers/launch';
import { goTo, openStage, title } from '#test/helpers/notebook-steps';
import { withTemporaryFolder } from '#test/helpers/temporary-folder';
import { writeDownTops } from '#test/helpers/tops';
import { axeFaults } from './axe-faults';

const clock = (page: Page) => page.getByRole('region', { name: 'Clock' });

test('a clock starts from any page, keeps running through a restart, stops with what got done, and asks if it was forgotten', async () => {
  await withTemporaryFolder(async (workshop) => {
    const first = await launchProgram({ workshop });
    await writeDownTops(first.page, ['Alder throw']);
    await test.step('start it from the stash', async () => {
      const { page } = first;
      await goTo(page, 'Stash');
      await clock(page).getByRole('button', { name: 'Start the clock' }).click();
      const dialog = page.getByRole('dialog', { name: 'Start the clock' });
      await dialog.getByRole('button', { name: 'Start on Quilting, sent out, Alder throw' }).click();
      await expect(dialog).toBeHidden();
      await expect(clock(page).getByRole('link', { name: 'Quilting, sent out' })).toBeVisible();
      expect(await axeFaults(page)).toEqual([]);
    });
    await first.close();

    const second = await launchProgram({ workshop });
    const { page } = second;
    await test.step('it still runs, and is stopped with its time', async () => {
      await expect(clock(page).getByText('Alder throw')).toBeVisible();
      await clock(page).getByRole('button', { name: 'Stop the clock' }).click();
      const dialog = page.getByRole('dialog', { name: /^Stop the clock/ });
      await dialog.getByRole('textbox', { name: 'Time worked' }).fill('1 h 20');
      await dialog.getByRole('radio', { name: 'Cuts made' }).check();
      await dialog.getByRole('textbox', { name: 'How many cuts' }).fill('40');
      expect(await axeFaults(page)).toEqual([]);
      await dialog.getByRole('button', { name: 'Save' }).click();
      await expect(dialog).toBeHidden();
      await expect(clock(page).getByRole('button', { name: 'Start the clock' })).toBeVisible();
    });
    await test.step('time is written down by hand beside it', async () => {
      await openStage(page, 'Alder throw', 'Quilting, sent out');
      const time = page.getByRole('region', { name: 'Time' });
      await expect(time).toContainText('1 h 20 min, 40 cuts');
      await time.getByRole('button', { name: 'Add time' }).click();
      const dialog = page.getByRole('dialog', { name: 'Add time' });
      await dialog.getByRole('textbox', { name: 'Time worked' }).fill('25');
      await dialog.getByRole('button', { name: 'Save' }).click();
      await expect(dialog).toBeHidden();
      await expect(time).toContainText('1 h 45 min of about');
    });
    await test.step('a clock that ran for ten hours is asked about', async () => {
      await page.clock.install();
      await goTo(page, 'Bench');
      const { items } = await askStore(page, 'project:list', { archived: false });
      const stageId = items[0]!.stages[1]!.id;
      await askStore(page, 'clock:start', { stageId });
      await page.clock.fastForward('10:00:00');
      await page.reload();
      const dialog = page.getByRole('dialog', { name: 'Did you forget the clock?' });
      await expect(dialog).toContainText(/How long did you really work/);
      await dialog.getByRole('textbox', { name: 'Time worked' }).fill('2 h');
      await dialog.getByRole('button', { name: 'Save' }).click();
      await expect(dialog).toBeHidden();
      await goTo(page, 'Workshop');
      await expect(title(page, 'Workshop')).toBeFocused();
      await expect(page.getByRole('region', { name: 'Your speed' })).toContainText(
        '2 min a cut, counted once',
      );
    });
    await second.close();
  });
});

test('blocks counted three times make the hours of a stage whose top is kept, and the plan’s hours can be put back', async () => {
  const { page, close } = await launchProgram();
  await writeDownTops(page, ['Alder throw']);
  const { items } = await askStore(page, 'project:list', { archived: false });
  await askStore(page, 'stage:move', { stageId: items[0]!.stages[0]!.id, to: 'in-hand' });
  await page.reload();
  await openStage(page, 'Alder throw', 'Piece the top');
  const time = page.getByRole('region', { name: 'Time' });
  await test.step('the top is kept, and says how many blocks there are', async () => {
    await page.getByRole('button', { name: /^The whole top/ }).click();
    await page.getByRole('button', { name: 'Save this answer' }).click();
    await expect(time).toContainText('nothing logged yet');
    await expect(time).toContainText(
      'From the stage plan, until enough time is logged to use your own rates.',
    );
  });
  for (const blocks of ['10', '12', '8']) {
    await time.getByRole('button', { name: 'Add time' }).click();
    const dialog = page.getByRole('dialog', { name: 'Add time' });
    await dialog.getByRole('textbox', { name: 'Time worked' }).fill('1 h');
    await dialog.getByRole('radio', { name: 'Blocks sewn' }).check();
    await dialog.getByRole('textbox', { name: 'How many blocks' }).fill(blocks);
    await dialog.getByRole('button', { name: 'Save' }).click();
    await expect(dialog).toBeHidden();
  }
  await test.step('from the third count on the rate makes the hours', async () => {
    await expect(time).toContainText(
      'From your own rates; joining the blocks is not included. Without them: 16 h 35 min.',
    );
    await expect(time).toContainText('counted 3 times');
    expect(await axeFaults(page)).toEqual([]);
  });
  await test.step('the hours of the plan are put back, and stay', async () => {
    await time.getByRole('button', { name: 'Use 16 h 35 min instead' }).click();
    await expect(time).toContainText('The estimate you set; your own rates would give');
  });
  await close();
});
