import type { Page } from '@playwright/test';
import type { ProjectId, StageId } from '#core/domain/ids';
import { lengthFromInches } from '#core/units/length';
import { askStore } from './ask-store';

export interface ReadyTop {
  readonly projectId: ProjectId;
  readonly stageId: StageId;
}

/** Throws of 50 by 60 in whose tops are done and ready to send; reloads the window afterward. */
export async function writeDownTops(page: Page, names: readonly string[]): Promise<readonly ReadyTop[]> {
  const plans = await askStore(page, 'stage-plan:list', {});
  const stagePlanId = plans.find(({ name }) => name === 'Throw')!.id;
  const tops: ReadyTop[] = [];
  for (const name of names) {
    const { projectId } = await askStore(page, 'project:create', {
      details: {
        name,
        purpose: 'own',
        forWhom: '',
        dueOn: null,
        outline: { shape: 'rectangle', width: lengthFromInches(50), length: lengthFromInches(60) },
        hole: null,
        hasSlit: false,
        settingChanges: {},
        notes: '',
      },
      stagePlanId,
    });
    const { stages } = await askStore(page, 'project:open', { projectId });
    const [piecing, longarm] = [stages[0]!, stages[1]!];
    await askStore(page, 'stage:move', { stageId: piecing.id, to: 'done' });
    for (const { id, isGate } of longarm.checklist) {
      if (isGate) await askStore(page, 'checklist:tick', { checklistItemId: id, ticked: true });
    }
    await askStore(page, 'stage:move', { stageId: longarm.id, to: 'in-hand' });
    tops.push({ projectId, stageId: longarm.id });
  }
  await page.reload();
  return tops;
}
