import type { Page } from '@playwright/test';
import { calendarDate } from '#core/units/calendar-date';
import { lengthFromInches } from '#core/units/length';
import { askStore } from '#test/helpers/ask-store';
import { closeDialog, listProjects, openAt, projectNamed, type Stop } from './stops';

/** The project whose cutting the tour plans, and a fabric of the demo for its dark patches. */
const PROJECT = 'Midnight hedge throw';
const FABRIC = 'Kettle blue';

/** Cutting plans in every state: empty, planned, changed, saved, cut in part. */
export const cuttingStops: readonly Stop[] = [
  {
    name: 'cutting-empty',
    go: async (page) => {
      await openCutting(page, 'Sill runner');
      const list = page.getByRole('checkbox', { name: /^Patch sizes/ });
      await list.waitFor();
      if (await list.isChecked()) await list.click();
      await page.getByRole('heading', { name: 'Nothing to cut yet' }).waitFor();
    },
  },
  {
    name: 'cutting-plan',
    go: async (page) => {
      await planAgain(page);
      await chooseFabric(page);
      await planned(page);
    },
  },
  {
    name: 'cutting-compared',
    go: async (page) => {
      await page.getByRole('button', { name: 'Compare with buying it all new' }).click();
      await page.getByRole('columnheader', { name: 'All bought new' }).waitFor();
    },
  },
  { name: 'cutting-plan-narrow', isNarrow: true, go: planned },
  dialog('cutting-fabric', /^Choose the fabric for/),
  dialog('cutting-patches', 'Add patches by hand'),
  dialog('cutting-other-project', 'Cut for another project too'),
  dialog('cutting-table-and-leftovers', 'Table and leftovers'),
  {
    name: 'cutting-table',
    go: async (page) => {
      await page.getByRole('button', { name: 'Save this plan' }).click();
      await page.getByRole('heading', { level: 1, name: 'Cut by the plan' }).waitFor();
    },
  },
  {
    name: 'cutting-begun',
    go: async (page) => {
      const first = page.getByRole('checkbox', { name: /step 1$/ }).first();
      if (!(await first.isChecked())) await page.getByRole('button', { name: /^Check off step/ }).click();
      await page
        .getByRole('checkbox', { name: /step 1$/, checked: true })
        .first()
        .waitFor();
    },
  },
  {
    name: 'cutting-table-narrow',
    isNarrow: true,
    go: (page) => page.getByRole('heading', { level: 1, name: 'Cut by the plan' }).waitFor(),
  },
  {
    name: 'cutting-out-of-date',
    go: async (page) => {
      await buyMore(page);
      await openCutting(page, PROJECT);
      await page.getByText('Out of date').waitFor();
    },
  },
];

function dialog(name: string, button: string | RegExp): Stop {
  return {
    name: `dialog-${name}`,
    go: async (page) => {
      await page.getByRole('button', { name: button }).first().click();
      await page.getByRole('dialog').waitFor();
    },
    leave: closeDialog,
  };
}

async function openCutting(page: Page, piece: string): Promise<void> {
  const { id } = projectNamed(await listProjects(page), piece);
  await openAt(`/projects/${id}/cutting`, /Plan the cutting|Cut by the plan/)(page);
}

/** The page of a plan in the making, with the patches of the whole top, whether a plan is saved already or not. */
async function planAgain(page: Page): Promise<void> {
  const { stages } = projectNamed(await listProjects(page), PROJECT);
  const stageId = stages.find(({ kind }) => kind === 'piecing')?.id;
  if (stageId === undefined) throw new Error(`${PROJECT} is not pieced`);
  const kept = await askStore(page, 'calculation:list', { stageId });
  if (!kept.some(({ calculator }) => calculator === 'top')) {
    await askStore(page, 'calculation:save', { stageId, calculator: 'top', ownInput: {} });
    // The page does not notice a change that the test makes in the store.
    await page.reload();
    await page.locator('h1').waitFor();
  }
  await openCutting(page, PROJECT);
  const change = page.getByRole('button', { name: 'Change the plan' });
  await change.or(page.getByRole('button', { name: 'Save this plan' })).waitFor();
  if (await change.isVisible()) await change.click();
  await planned(page);
}

async function chooseFabric(page: Page): Promise<void> {
  const choose = page.getByRole('button', { name: /^Choose the fabric for/ });
  if ((await choose.count()) === 0) return;
  await choose.first().click();
  await page.getByRole('radio', { name: FABRIC }).first().check();
  await page.getByRole('button', { name: 'Cut from this fabric' }).click();
  await page.getByRole('dialog').waitFor({ state: 'detached' });
}

/** Buys one more fat quarter of the fabric that is being cut. */
async function buyMore(page: Page): Promise<void> {
  const { items } = await askStore(page, 'fabric:list', { search: FABRIC });
  const fabricId = items[0]?.fabric.id;
  if (fabricId === undefined) throw new Error(`The demo has no ${FABRIC}`);
  await askStore(page, 'ledger:buy', {
    fabricId,
    kind: 'fat-quarter',
    size: { width: lengthFromInches(21), length: lengthFromInches(18) },
    costMinor: 350,
    on: calendarDate('2027-02-28'),
    note: '',
  });
  await page.reload();
  await page.locator('h1').waitFor();
}

async function planned(page: Page): Promise<void> {
  await page.getByText(/Searched for|Everything worth trying/).waitFor();
}

/** The address of the sheet of the plan that the tour has saved. */
export async function cuttingSheet(page: Page): Promise<string> {
  return `/sheets/cutting/${projectNamed(await listProjects(page), PROJECT).id}?paper=letter`;
}
