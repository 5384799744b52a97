import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { CDPSession, Page } from '@playwright/test';
import { launchProgram } from '#test/helpers/launch';
import { buildLargeWorkshop, SIZE } from './large-workshop';

const DISTANCE = 24_000;
const FIRST_DISTANCE = 2_000;
const PIXELS_A_SECOND = 4_000;
const FRAMES_A_SECOND = 60;

/** What Chromium writes into its trace; only these are asked of it. */
interface TraceEvent {
  readonly name: string;
  /** Microseconds. */
  readonly ts: number;
  readonly dur?: number;
}

/**
 * Scrolls the stash of the large workshop in the real window, as a list and as pictures, and counts the frames in Chromium's own
 * trace. One JSON line a view: frames a second, the longest time between two, and the longest task meanwhile.
 */
export async function runScrollBench(): Promise<void> {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'ringbound-scroll-'));
  buildLargeWorkshop(path.join(folder, 'workshop.sqlite'));
  const { page, close } = await launchProgram({ workshop: folder });
  try {
    const devtools = await page.context().newCDPSession(page);
    for (const view of ['list', 'shelf']) {
      // The page reads its address when it is entered.
      await go(page, '#/workshop');
      await page.getByRole('heading', { level: 1, name: 'Workshop' }).waitFor();
      await go(page, `#/stash?view=${view}`);
      const listName = view === 'list' ? /^Fabrics$/ : /^Fabrics as pictures$/;
      await page.getByRole('list', { name: listName }).getByRole('link').first().waitFor();
      // The first touch of a page is measured by itself.
      const first = figures(await traced(devtools, () => scrollDown(page, devtools, FIRST_DISTANCE)));
      const events = await traced(devtools, () => scrollDown(page, devtools, DISTANCE));
      console.log(
        JSON.stringify({
          ...{ name: `scrolling the stash: ${view}`, fabrics: SIZE.fabrics, ...figures(events) },
          firstTouchFrameMs: first.longestFrameMs,
        }),
      );
    }
  } finally {
    await close();
    fs.rmSync(folder, { recursive: true, force: true });
  }
}

function go(page: Page, hash: string): Promise<void> {
  return page.evaluate((to) => {
    window.location.hash = to;
  }, hash);
}

async function scrollDown(page: Page, devtools: CDPSession, distance: number): Promise<void> {
  const { width, height } = await page.evaluate(() => ({
    width: window.innerWidth,
    height: window.innerHeight,
  }));
  await devtools.send('Input.synthesizeScrollGesture', {
    ...{ x: width / 2, y: height / 2, yDistance: -distance, speed: PIXELS_A_SECOND },
    ...{ gestureSourceType: 'mouse', preventFling: true },
  });
}

async function traced(devtools: CDPSession, work: () => Promise<void>): Promise<readonly TraceEvent[]> {
  const events: TraceEvent[] = [];
  const collect = ({ value }: { readonly value: readonly object[] }) =>
    void events.push(...(value as TraceEvent[]));
  devtools.on('Tracing.dataCollected', collect);
  await devtools.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: {
      includedCategories: [
        'disabled-by-default-devtools.timeline',
        'disabled-by-default-devtools.timeline.frame',
      ],
    },
  });
  await work();
  const isWhole = new Promise((resolve) => devtools.once('Tracing.tracingComplete', resolve));
  await devtools.send('Tracing.end');
  await isWhole;
  devtools.off('Tracing.dataCollected', collect);
  return events;
}

function figures(events: readonly TraceEvent[]) {
  const drawn = events
    .filter(({ name }) => name === 'DrawFrame')
    .map(({ ts }) => ts)
    .toSorted((one, other) => one - other);
  const gaps = drawn.slice(1).map((ts, index) => (ts - (drawn[index] ?? ts)) / 1_000);
  const seconds = ((drawn.at(-1) ?? 0) - (drawn[0] ?? 0)) / 1_000_000;
  const tasks = events.filter(({ name }) => name === 'RunTask').map(({ dur = 0 }) => dur / 1_000);
  const a = (value: number) => Math.round(value * 10) / 10;
  return {
    ...{ seconds: a(seconds), frames: drawn.length, framesPerSecond: a(drawn.length / seconds) },
    ...{ longestFrameMs: a(Math.max(...gaps)), longestTaskMs: a(Math.max(0, ...tasks)) },
    limitFramesPerSecond: FRAMES_A_SECOND,
  };
}
