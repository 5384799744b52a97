import type { Page } from '@playwright/test';
import type { KeptPlan } from '#core/domain/cutting-plan';
import { type CuttingLine, STARTING_TABLE } from '#core/domain/cutting-setup';
import type { ProjectId } from '#core/domain/ids';
import { STARTING_PLANS } from '#core/domain/starting-plans';
import { lengthFromInches as inches } from '#core/units/length';
import { askStore } from '#test/helpers/ask-store';
import { launchProgram } from '#test/helpers/launch';

/** Numbers of patches, each time of eight sizes in two fabrics. */
const JOBS = [80, 1_000];
const SIZES = 8;

interface Gaps {
  readonly longestFrameMs: number;
  readonly longTasks: number;
  readonly longestTaskMs: number;
}

/**
 * Plans in the real window and measures how long the page is busy: the longest time between two frames, and the tasks that
 * take over 50 ms. It measures while nothing happens (`idle`), from the click until the first plan is drawn (`first`), and
 * through the search after that (`search`).
 */
export async function runWindowBench(): Promise<void> {
  const { page, close } = await launchProgram();
  try {
    for (const patches of JOBS) {
      const projectId = await keepJob(page, patches);
      await page.evaluate((hash) => {
        window.location.hash = hash;
      }, `#/projects/${projectId}/cutting`);
      const change = page.getByRole('button', { name: 'Change the plan' });
      await change.waitFor();
      const idle = await gapsDuring(page, () => page.waitForTimeout(2_000));
      const first = await gapsDuring(page, async () => {
        await change.click();
        await page.getByRole('radio').first().waitFor();
      });
      const search = await gapsDuring(page, () =>
        page.getByText(/Searched for|Everything worth trying/).waitFor(),
      );
      console.log(JSON.stringify({ patches, idle, first, search }));
    }
  } finally {
    await close();
  }
}

async function gapsDuring(page: Page, work: () => Promise<void>): Promise<Gaps> {
  // Only methods here: the build wraps named functions in a helper that does not exist in the page.
  const watch = await page.evaluateHandle(() => {
    const seen = {
      longestFrameMs: 0,
      longTasks: 0,
      longestTaskMs: 0,
      isOver: false,
      last: performance.now(),
    };
    const loop = {
      frame() {
        const now = performance.now();
        seen.longestFrameMs = Math.max(seen.longestFrameMs, now - seen.last);
        seen.last = now;
        if (!seen.isOver) requestAnimationFrame(() => loop.frame());
      },
    };
    loop.frame();
    const observer = new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) {
        seen.longTasks += 1;
        seen.longestTaskMs = Math.max(seen.longestTaskMs, duration);
      }
    });
    observer.observe({ type: 'longtask' });
    return { seen, observer };
  });
  await work();
  return watch.evaluate(({ seen, observer }) => {
    seen.isOver = true;
    observer.disconnect();
    const { longestFrameMs, longTasks, longestTaskMs } = seen;
    return {
      longestFrameMs: Math.round(longestFrameMs),
      longTasks,
      longestTaskMs: Math.round(longestTaskMs),
    };
  });
}

/** Saves a plan with a setup and no pieces, so that the page makes the plan when the maker changes it. */
async function keepJob(page: Page, patches: number): Promise<ProjectId> {
  const { projectId } = await askStore(page, 'project:create', {
    details: {
      name: `${String(patches)} patches`,
      purpose: 'own',
      forWhom: '',
      dueOn: null,
      notes: '',
      outline: { shape: 'circle', diameter: inches(50) },
      hole: null,
      hasSlit: false,
      settingChanges: {},
    },
    stagePlanId: STARTING_PLANS[0]!.id,
  });
  const lines = Array.from({ length: SIZES }, (_, index): CuttingLine => ({
    id: `by-hand/${String(index)}`,
    projectId,
    source: null,
    fabric: index % 2 === 0 ? 'Light' : 'Dark',
    width: inches(2 + index / 2),
    length: inches(3.5 + index / 2),
    count: patches / SIZES,
    mayTurn: true,
  }));
  const plan: KeptPlan = {
    setup: { projects: [projectId], taken: [], lines, fabricChoices: [], leftOut: [], table: STARTING_TABLE },
    rule: '2-stage',
    pieces: [],
    purchases: [],
    unplaced: [],
    plannedWith: [],
  };
  await askStore(page, 'cutting:save', { projectId, plan });
  return projectId;
}
