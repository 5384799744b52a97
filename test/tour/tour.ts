import { mkdir, rm } from 'node:fs/promises';
import path from 'node:path';
import type { Page } from '@playwright/test';
import { type DevelopedProgram, launchProgram } from '#test/helpers/launch';
import { projectRoot } from '#test/helpers/project-root';
import { cuttingStops } from './cutting-stops';
import { stashStops } from './stash-stops';
import { dialogStops, pageStops, type Stop } from './stops';
import { makeSheets } from './sheets';

/** Names of stops, or parts of names, for a tour of only these. */
const ONLY = process.env['TOUR_ONLY'] ?? '';
const folder = path.join(projectRoot, 'out', 'tour');

/** Drives the real window through an empty notebook and the demo workshop and leaves a picture of every page and dialog. */
async function tour(): Promise<void> {
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  const program = await launchProgram();
  try {
    await emptyNotebook(program);
    await demoWorkshop(program);
  } finally {
    await program.close();
  }
}

async function emptyNotebook({ page }: DevelopedProgram): Promise<void> {
  await page.getByRole('button', { name: 'Start my notebook' }).waitFor();
  await picture(page, 'empty-opening');
  for (const place of ['projects', 'projects/new', 'line-up', 'sent-out', 'stash', 'shopping', 'workshop']) {
    await page.evaluate((to) => {
      window.location.hash = `#/${to}`;
    }, place);
    await page.locator('h1').waitFor();
    await picture(page, `empty-${place.replace('/', '-')}`);
  }
  await page.evaluate(() => {
    window.location.hash = '#/';
  });
}

async function demoWorkshop(program: DevelopedProgram): Promise<void> {
  const { page } = program;
  await page.getByRole('button', { name: 'Look around the demo workshop' }).click();
  await page.getByRole('heading', { level: 1, name: 'Bench' }).waitFor({ timeout: 60_000 });
  const stops = [...(await pageStops(page)), ...dialogStops, ...cuttingStops, ...stashStops].filter(
    ({ name }) => ONLY === '' || ONLY.split(',').some((wanted) => name.includes(wanted)),
  );
  for (const look of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme: look });
    for (const stop of stops) await visit(page, stop, look);
  }
  await page.emulateMedia({ colorScheme: 'light' });
  await makeSheets(program, folder);
}

async function visit(page: Page, stop: Stop, look: string): Promise<void> {
  const window = stop.isNarrow === true ? LEAST_WINDOW : WINDOW;
  await page.setViewportSize(window);
  await stop.go(page);
  await picture(page, `${look}-${stop.name}`, window);
  await stop.leave?.(page);
  await page.setViewportSize(WINDOW);
}

const WINDOW = { width: 1280, height: 860 };
/** The smallest size of the window. */
const LEAST_WINDOW = { width: 900, height: 600 };

/** A picture of the page in the window, and if it is longer than that, one of the whole page. */
async function picture(page: Page, name: string, window = WINDOW): Promise<void> {
  await save(page, name);
  const below = await page.evaluate(() => {
    const scroller = document.querySelector('[data-page-scroller]');
    return scroller === null ? 0 : scroller.scrollHeight - scroller.clientHeight;
  });
  if (below < 40 || (await page.getByRole('dialog').count()) > 0) return;
  await page.setViewportSize({ ...window, height: window.height + below });
  await save(page, `${name}-whole`);
  await page.setViewportSize(window);
}

async function save(page: Page, name: string): Promise<void> {
  await page.waitForFunction(() => [...document.images].every((image) => image.complete));
  await page.evaluate(() => Promise.all(document.getAnimations().map((animation) => animation.finished)));
  await page.screenshot({ path: path.join(folder, `${name}.png`) });
  console.log(`  ${name}.png`);
}

await tour();
