import type { Page } from '@playwright/test';
import type { ProjectId } from '#core/domain/ids';
import type { Stage } from '#core/domain/stage';
import { askStore } from '#test/helpers/ask-store';

/** A page or dialog that the tour shows. */
export interface Stop {
  readonly name: string;
  readonly go: (page: Page) => Promise<void>;
  readonly leave?: (page: Page) => Promise<void>;
  /** Shown in the smallest possible window. */
  readonly isNarrow?: boolean;
}

export const openAt = (hash: string, heading: RegExp) => async (page: Page) => {
  await page.evaluate((to) => {
    window.location.hash = to;
  }, `#${hash}`);
  await page.getByRole('heading', { level: 1, name: heading }).waitFor();
};

interface ListedProject {
  readonly id: ProjectId;
  readonly name: string;
  readonly stages: readonly Pick<Stage, 'id' | 'kind' | 'name'>[];
}

/** Every page of the demo workshop: the places, one project in each situation, and a stage of each kind. */
export async function pageStops(page: Page): Promise<readonly Stop[]> {
  const projects = await listProjects(page);
  const spread = (name: string, wanted: string): Stop => {
    const project = projectNamed(projects, wanted);
    return { name, go: openAt(`/projects/${project.id}`, new RegExp(escaped(project.name))) };
  };
  const stage = (name: string, wanted: string, kind: string): Stop => {
    const project = projectNamed(projects, wanted);
    const found = project.stages.find((one) => one.kind === kind);
    if (found === undefined) throw new Error(`${wanted} has no ${kind}`);
    return {
      name,
      go: openAt(`/projects/${project.id}/stages/${found.id}`, new RegExp(escaped(found.name))),
    };
  };
  return [
    { name: 'bench', go: openAt('/', /Bench/) },
    { name: 'projects', go: openAt('/projects', /Projects/) },
    { name: 'project-new', go: openAt('/projects/new', /./) },
    spread('project-away', 'Lantern round'),
    spread('project-in-hand', 'Candle-table round'),
    spread('project-long-name', 'Midnight hedge throw'),
    { name: 'project-edit', go: openAt(`/projects/${projectNamed(projects, 'Lantern round').id}/edit`, /./) },
    stage('stage-piecing', 'Midnight hedge throw', 'piecing'),
    stage('stage-longarm', 'Lantern round', 'longarm'),
    stage('stage-outer-binding', 'Harbor table ring', 'outer-binding'),
    stage('stage-center-cut', 'Beet saucer hexagon', 'center-cut'),
    stage('stage-inner-binding', 'Candle-table round', 'inner-binding'),
    stage('stage-hand-finish', 'Sill runner', 'hand-finish'),
    { name: 'line-up', go: openAt('/line-up', /Line-up/) },
    { name: 'line-up-narrow', isNarrow: true, go: openAt('/line-up', /Line-up/) },
    { name: 'line-up-sliding', go: slideNeedle, leave: letNeedleGo },
    {
      name: 'line-up-refused',
      go: async (page) => {
        await openAt('/line-up', /Line-up/)(page);
        await page.getByRole('button', { name: /^Next stage: Lantern round/ }).click();
        await page.getByRole('link', { name: /^Open “/ }).waitFor();
      },
    },
    { name: 'at-the-quilter', go: openAt('/sent-out', /Sent out/) },
    { name: 'at-the-quilter-contact', go: openContact('Corvin Lathe') },
    stage('stage-longarm-to-send', 'Midnight hedge throw', 'longarm'),
    { name: 'days', go: openAt('/days', /Days/) },
    { name: 'stash', go: openAt('/stash', /Stash/) },
    { name: 'stash-fabric', go: openFabric('Kettle blue') },
    { name: 'shopping', go: openAt('/shopping', /Shopping/) },
    { name: 'workshop', go: openAt('/workshop', /Workshop/) },
  ];
}

/** Dialogs. Each is opened from its page and closed again. */
export const dialogStops: readonly Stop[] = [
  {
    name: 'dialog-shortcuts',
    go: async (page) => {
      await openAt('/', /Bench/)(page);
      await page.getByRole('button', { name: 'Keyboard shortcuts' }).click();
      await page.getByRole('dialog').waitFor();
    },
    leave: closeDialog,
  },
  {
    name: 'dialog-gate',
    go: async (page) => {
      await openStage(page, 'Beet saucer hexagon', 'center-cut');
      await page.getByRole('button', { name: 'Check before cutting' }).click();
      await page.getByRole('dialog').waitFor();
    },
    leave: closeDialog,
  },
  {
    name: 'dialog-back',
    go: async (page) => {
      await openStage(page, 'Lantern round', 'longarm');
      await page.getByRole('button', { name: 'It is back', exact: true }).click();
      await page.getByRole('dialog').waitFor();
    },
    leave: closeDialog,
  },
  {
    name: 'dialog-send',
    go: async (page) => {
      await openStage(page, 'Midnight hedge throw', 'longarm');
      await page.getByRole('button', { name: 'Check before you start' }).click();
      const gate = page.getByRole('dialog');
      if ((await gate.getByRole('checkbox').count()) > 0) await gate.getByRole('checkbox').first().check();
      await gate.getByRole('button', { name: 'Start', exact: true }).click();
      await page.getByRole('button', { name: 'Send it out' }).click();
      await page
        .getByRole('dialog', { name: 'Send it out' })
        .getByLabel('Who’s quilting it')
        .fill('Corvin Lathe, longarm');
    },
    leave: async (page) => {
      await closeDialog(page);
      await page.keyboard.press('Control+z');
      await page.keyboard.press('Control+z');
    },
  },
  {
    name: 'dialog-contact',
    go: async (page) => {
      await openAt('/sent-out', /Sent out/)(page);
      await page.getByRole('button', { name: 'Add a contact' }).click();
      await page.getByRole('dialog').waitFor();
    },
    leave: closeDialog,
  },
  {
    name: 'dialog-history',
    go: async (page) => {
      await openAt('/', /Bench/)(page);
      await page.getByRole('button', { name: 'History' }).click();
      await page.getByRole('dialog').waitFor();
    },
    leave: closeDialog,
  },
  {
    name: 'dialog-clock',
    go: async (page) => {
      await openAt('/', /Bench/)(page);
      await page.getByRole('region', { name: 'Clock' }).getByRole('button').click();
      await page.getByRole('dialog').waitFor();
    },
    leave: closeDialog,
  },
  {
    name: 'dialog-trip-update',
    go: async (page) => {
      await openAt('/', /Bench/)(page);
      await page.getByRole('button', { name: 'Add an update' }).first().click();
      await page.getByRole('dialog').waitFor();
    },
    leave: closeDialog,
  },
  {
    name: 'dialog-shopping-fits',
    go: async (page) => {
      await openAt('/shopping', /Shopping/)(page);
      await page
        .getByRole('button', { name: /^Which fabric fits: Inner binding/ })
        .first()
        .click();
      await page.getByRole('dialog').getByRole('radio').first().waitFor();
    },
    leave: closeDialog,
  },
  {
    name: 'dialog-shopping-bought',
    go: async (page) => {
      await openAt('/shopping', /Shopping/)(page);
      await page.getByRole('button', { name: 'Bought' }).first().click();
      await page.getByRole('dialog').waitFor();
    },
    leave: closeDialog,
  },
  {
    name: 'dialog-cut',
    go: async (page) => {
      await openStage(page, 'Candle-table round', 'inner-binding');
      await page.getByRole('button', { name: 'Record a cut' }).click();
      await page.getByRole('dialog').getByRole('radio').first().check();
    },
    leave: closeDialog,
  },
];

/** Drags a needle over one more stage and holds it there. */
async function slideNeedle(page: Page): Promise<void> {
  await openAt('/line-up', /Line-up/)(page);
  const needle = page.getByRole('slider', { name: 'Stage of Harbor table ring' });
  const box = await needle.boundingBox();
  if (box === null) throw new Error('The needle is not drawn');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 90, y, { steps: 6 });
}

async function letNeedleGo(page: Page): Promise<void> {
  await page.keyboard.press('Escape');
  await page.mouse.up();
}

async function openStage(page: Page, wanted: string, kind: string): Promise<void> {
  const project = projectNamed(await listProjects(page), wanted);
  const found = project.stages.find((one) => one.kind === kind);
  if (found === undefined) throw new Error(`${wanted} has no ${kind}`);
  await openAt(`/projects/${project.id}/stages/${found.id}`, new RegExp(escaped(found.name)))(page);
}

export async function closeDialog(page: Page): Promise<void> {
  await page.keyboard.press('Escape');
  await page.getByRole('dialog').waitFor({ state: 'detached' });
}

function openContact(name: string) {
  return async (page: Page) => {
    await openAt('/sent-out', /Sent out/)(page);
    await page
      .getByRole('region', { name: 'Contacts' })
      .getByRole('link', { name: new RegExp(escaped(name)) })
      .click();
    await page.getByRole('heading', { level: 1, name: new RegExp(escaped(name)) }).waitFor();
  };
}

function openFabric(name: string) {
  return async (page: Page) => {
    await openAt('/stash', /Stash/)(page);
    await page.getByRole('link', { name }).first().click();
    await page.getByRole('heading', { level: 1, name }).waitFor();
  };
}

/** The projects in the store, asked through the page's own bridge. */
export async function listProjects(page: Page): Promise<readonly ListedProject[]> {
  const { items } = await askStore(page, 'project:list', { archived: false });
  return items.map(({ project, stages }) => ({ ...project, stages }));
}

export function projectNamed(projects: readonly ListedProject[], wanted: string): ListedProject {
  const found = projects.find(({ name }) => name.startsWith(wanted));
  if (found === undefined) throw new Error(`The demo has no ${wanted}`);
  return found;
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`);
}
