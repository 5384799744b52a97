import { chmod, readdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from '@playwright/test';
import { canSandbox, copyPackaged, launchPackaged } from '#test/helpers/launch-packaged';
import { withTemporaryFolder } from '#test/helpers/temporary-folder';
import { stageRow, enterRing } from '#test/helpers/notebook-steps';

// All tests of this file use one copy of the program.
test.describe.configure({ mode: 'default' });

let program: Awaited<ReturnType<typeof copyPackaged>>;

test.beforeAll(async () => {
  program = await copyPackaged();
});

test.afterAll(async () => {
  await program.remove();
});

test('the packaged program opens its window on an empty workshop', async () => {
  const { page, close } = await launchPackaged(program.folder);
  await expect(page.locator('#root > *').first()).toBeVisible();
  await close();
});

test('the page of the packaged program has no access to Node', async () => {
  const { page, close } = await launchPackaged(program.folder);
  const seen = await page.evaluate(() => ({
    require: typeof Reflect.get(globalThis, 'require'),
    process: typeof Reflect.get(globalThis, 'process'),
    origin: location.origin,
  }));
  expect(seen).toEqual({ require: 'undefined', process: 'undefined', origin: 'app://bundle' });
  await close();
});

test('the window of the packaged program runs in the operating system’s sandbox', async () => {
  test.skip(
    process.platform !== 'linux' || !canSandbox(),
    'the sandbox cannot be inspected from outside here',
  );
  const { processId, close } = await launchPackaged(program.folder);
  const filters = await Promise.all((await renderersOf(processId)).map(secureComputingMode));
  expect(filters).not.toHaveLength(0);
  expect(new Set(filters)).toEqual(new Set(['2']));
  await close();
});

test('the packaged program finds a project entered in an earlier run', async () => {
  await withTemporaryFolder(async (base) => {
    // The program runs under another account, which must be able to enter this folder.
    await chmod(base, 0o755);
    const workshop = path.join(base, 'workshop');
    const first = await launchPackaged(program.folder, { workshop });
    await enterRing(first.page, 'Harvest round');
    await first.close();
    const second = await launchPackaged(program.folder, { workshop });
    const bench = second.page.getByRole('region', { name: 'Now' });
    await expect(bench.getByRole('heading', { level: 2, name: 'Harvest round' })).toBeVisible();
    await expect(bench).toContainText('Round, 48 1/2 in across, 6 3/4 in hole, slit.');
    await bench.getByRole('link', { name: 'Harvest round' }).click();
    await expect(stageRow(second.page, 'Trim the edge, cut slit and hole')).toContainText('planned');
    await second.close();
  });
});

/** The renderer processes that one process started, directly or not. */
async function renderersOf(ancestor: number): Promise<readonly number[]> {
  const all = (await readdir('/proc')).filter((name) => /^\d+$/.test(name)).map(Number);
  const processes = await Promise.all(all.map(async (id) => ({ id, ...(await describeProcess(id)) })));
  const parents = new Map(processes.map(({ id, parent }) => [id, parent]));
  const descends = (id: number): boolean => {
    const parent = parents.get(id);
    return parent !== undefined && parent !== 0 && (parent === ancestor || descends(parent));
  };
  return processes.filter(({ id, isRenderer }) => isRenderer && descends(id)).map(({ id }) => id);
}

async function describeProcess(id: number): Promise<{ parent: number; isRenderer: boolean }> {
  try {
    const status = await readFile(`/proc/${id}/status`, 'utf8');
    const command = await readFile(`/proc/${id}/cmdline`, 'utf8');
    return {
      parent: Number(/^PPid:\s*(\d+)/m.exec(status)?.[1] ?? 0),
      isRenderer: command.includes('--type=renderer'),
    };
  } catch {
    // The process ended before it could be read.
    return { parent: 0, isRenderer: false };
  }
}

/** 2 means that the process's system calls are filtered. */
async function secureComputingMode(id: number): Promise<string | undefined> {
  return /^Seccomp:\s*(\d)/m.exec(await readFile(`/proc/${id}/status`, 'utf8'))?.[1];
}
