import type { Page } from '@playwright/test';
import { codeOfPiece, formatPieceCode } from '#core/stash/piece-code';
import { askStore } from '#test/helpers/ask-store';
import { closeDialog, openAt, type Stop } from './stops';

/** The other views of the stash, and its other pages. */
export const stashStops: readonly Stop[] = [
  { name: 'stash-numbers', go: openAt('/stash/numbers', /Stash in numbers/) },
  { name: 'stash-import', go: openAt('/stash/import', /./) },
  {
    name: 'stash-import-faults',
    go: async (page) => {
      await openAt('/stash/import', /./)(page);
      await page.getByLabel('Paste a table').fill(TABLE_WITH_FAULTS);
      await page.getByRole('columnheader').first().waitFor();
    },
  },
  { name: 'stash-export', go: openAt('/stash/export', /./) },
  { name: 'stash-kinds', go: openAt('/stash/kinds', /Kinds/) },
  { name: 'stash-places', go: openAt('/stash/places', /Places/) },
  { name: 'stash-pictures', go: reopenStash('/stash?view=shelf') },
  { name: 'stash-filters', go: reopenStash('/stash?by=color') },
  { name: 'stash-pictures-in-groups', go: reopenStash('/stash?view=shelf&by=place') },
  {
    name: 'stash-saved',
    go: async (page) => {
      await saveSearch(page, 'green', 'Greens for borders');
      await saveSearch(page, 'saltmarsh', 'Long enough for a binding, from the Saltmarsh fabric market');
    },
    leave: async (page) => {
      await openAt('/workshop', /Workshop/)(page);
      await page.keyboard.press('Control+z');
      await page.keyboard.press('Control+z');
    },
  },
  {
    name: 'stash-by-code',
    go: async (page) => {
      const { pieces } = await pieceInBlue(page);
      const code = codeOfPiece(pieces[0]?.id ?? missing());
      await reopenStash(`/stash?search=${formatPieceCode(code)}`)(page);
      await page.getByRole('list', { name: /^Pieces with the code/ }).waitFor();
    },
  },
  {
    name: 'dialog-use',
    go: async (page) => {
      const { fabric, pieces } = await pieceInBlue(page);
      await openAt(`/stash/${fabric.id}?piece=${pieces[0]?.id ?? missing()}&use`, /./)(page);
      await page.getByRole('dialog').waitFor();
    },
    leave: closeDialog,
  },
  {
    name: 'stash-fabric-by-code',
    go: async (page) => {
      const { fabric, pieces } = await pieceInBlue(page);
      await openAt(`/stash/${fabric.id}?piece=${pieces[0]?.id ?? missing()}`, /./)(page);
    },
  },
  {
    name: 'dialog-labels',
    go: async (page) => {
      await reopenStash('/stash?search=green')(page);
      await page.getByRole('button', { name: 'Labels', exact: true }).click();
      await page.getByRole('dialog').waitFor();
      await page.getByRole('dialog').locator('summary').click();
    },
    leave: closeDialog,
  },
  {
    name: 'dialog-save-search',
    go: async (page) => {
      await reopenStash('/stash?search=green')(page);
      await page.getByRole('button', { name: 'Save this search' }).click();
      await page.getByRole('dialog').waitFor();
    },
    leave: async (page) => {
      await closeDialog(page);
      await openAt('/workshop', /Workshop/)(page);
    },
  },
];

/** A fabric of the demo, with its pieces. */
async function pieceInBlue(page: Page) {
  const { items } = await askStore(page, 'fabric:list', { search: 'kettle', limit: 1 });
  return items[0] ?? missing();
}

function missing(): never {
  throw new Error('The demo has no such fabric');
}

/** Leaves the stash first: it reads its address only when it opens. */
function reopenStash(hash: string) {
  return async (page: Page) => {
    await openAt('/workshop', /Workshop/)(page);
    await openAt(hash, /Stash/)(page);
  };
}

async function saveSearch(page: Page, words: string, name: string): Promise<void> {
  await reopenStash(`/stash?search=${words}`)(page);
  await page.getByRole('button', { name: 'Save this search' }).click();
  await page.getByRole('dialog').getByRole('textbox', { name: 'Name' }).fill(name);
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name, exact: true }).waitFor();
}

const TABLE_WITH_FAULTS = [
  'Name\tColors\tSize\tPaid\tBought on\tRemarks',
  'Harbor rope\tnavy, cream\t1 1/4 yd\t12.50\t2026-10-03\tfrom the market',
  'Plum jam\tplum\tFQ\t3\t2026-10-03\t',
  'Oat straw\tcream\tabout a yard\t-4\t2026-13-40\t',
  'Kettle blue\tblue\t45 x 55 cm\t4.20\t2026-11-02\tthe last of the bolt, a little faded on the fold',
].join('\n');
