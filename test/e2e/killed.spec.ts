import { once } from 'node:events';
import { expect, test } from '@playwright/test';
import { askStore } from '#test/helpers/ask-store';
import { type DevelopedProgram, launchProgram } from '#test/helpers/launch';
import { withTemporaryFolder } from '#test/helpers/temporary-folder';
import { openProject, openStage, stageRow, enterRing } from '#test/helpers/notebook-steps';

/** Ends the program as a power cut would: nothing of it gets another turn. */
async function kill({ electron, close }: DevelopedProgram): Promise<void> {
  const main = electron.process();
  const ended = once(main, 'exit');
  main.kill('SIGKILL');
  await ended;
  await close();
}

test('what was acknowledged is there again after the program was killed', async () => {
  await withTemporaryFolder(async (workshop) => {
    const first = await launchProgram({ workshop });
    await enterRing(first.page, 'Harvest round');
    await kill(first);

    const second = await launchProgram({ workshop });
    await openProject(second.page, 'Harvest round');
    const { items } = await askStore(second.page, 'project:list', { archived: false });
    const stage = items[0]?.stages[0];
    if (stage === undefined) throw new Error('the piece has no stage');
    await askStore(second.page, 'stage:move', { stageId: stage.id, to: 'in-hand' });
    const { id: stageId, name, estimateMinutes, heldUpBy } = stage;
    const notes = 'Cut the rust ones first';
    await askStore(second.page, 'stage:change', { stageId, name, estimateMinutes, heldUpBy, notes });
    await kill(second);

    const third = await launchProgram({ workshop });
    await openProject(third.page, 'Harvest round');
    await expect(stageRow(third.page, name)).toContainText('in progress');
    await openStage(third.page, 'Harvest round', name);
    await expect(third.page.getByRole('textbox', { name: 'Notes' })).toHaveValue(notes);
    await third.close();
  });
});
