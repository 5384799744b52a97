import { expect, type Page, test } from '@playwright/test';
import type { FabricDetails } from '#core/domain/stash';
import type { ProjectDetails } from '#core/domain/project';
import { STARTING_PLANS } from '#core/domain/starting-plans';
import { calendarDate } from '#core/units/calendar-date';
import { lengthFromInches as inches } from '#core/units/length';
import { askStore } from '#test/helpers/ask-store';
import { launchProgram } from '#test/helpers/launch';
import { title } from '#test/helpers/notebook-steps';
import { axeFaults } from './axe-faults';

const TODAY = calendarDate('2027-02-28');

const RING: ProjectDetails = {
  name: 'Autumn ring',
  purpose: 'own',
  forWhom: '',
  dueOn: null,
  outline: { shape: 'circle', diameter: inches(50) },
  hole: { diameter: inches(6) },
  hasSlit: false,
  habitChanges: {},
  notes: '',
};

const BLUE: FabricDetails = {
  name: 'Kettle blue',
  print: 'small leaves',
  colorWords: 'deep blue',
  fiber: 'cotton',
  direction: 'one-way',
  width: inches(42),
  isWashed: true,
  supplier: 'An invented shop',
  place: 'Shelf 2',
  swatch: '#2f5d8a',
  notes: '',
};

/** A project whose piecing stage says what to cut, and the fabric it is cut from. */
async function fillNotebook(page: Page) {
  const { projectId } = await askStore(page, 'project:create', {
    details: RING,
    stagePlanId: STARTING_PLANS[0]!.id,
  });
  const { stages } = await askStore(page, 'project:open', { projectId });
  const piecing = stages.find(({ kind }) => kind === 'piecing');
  if (piecing === undefined) throw new Error('No piecing stage');
  await askStore(page, 'calculation:keep', {
    stageId: piecing.id,
    calculator: 'top',
    ownInput: {},
  });
  const { fabricId } = await askStore(page, 'fabric:create', {
    details: BLUE,
  });
  const { pieceId } = await askStore(page, 'ledger:buy', {
    fabricId,
    kind: 'yardage',
    size: { width: inches(42), length: inches(54) },
    costMinor: 1800,
    on: TODAY,
    note: '',
  });
  return { projectId, piecing, fabricId, pieceId };
}

async function openPlan(page: Page, projectId: string): Promise<void> {
  await page.evaluate((hash) => {
    window.location.hash = hash;
  }, `#/cutting?project=${projectId}`);
  await expect(title(page, 'Plan the cutting')).toBeVisible();
}

test('patches kept with a project are planned in a thread of its own, as they are changed', async () => {
  const { page, close } = await launchProgram();
  const refused: string[] = [];
  page.on('console', (message) => {
    if (/Content Security Policy|TrustedScript/i.test(message.text())) refused.push(message.text());
  });
  const { projectId } = await fillNotebook(page);
  await openPlan(page, projectId);
  const plan = page.getByRole('region', { name: 'The plan' });
  await expect(plan.getByRole('radio')).toHaveCount(2);
  expect(page.workers()).toHaveLength(1);
  await expect(plan.getByText(/Searched for|Everything worth trying/)).toBeVisible();
  const what = page.getByRole('region', { name: 'What to cut' });
  await what
    .getByRole('button', { name: /Choose the cloth for/ })
    .first()
    .click();
  await page.getByRole('radio', { name: /Kettle blue/ }).check();
  await page.getByRole('button', { name: 'Cut from it' }).click();
  await expect(plan.getByText(/Kettle blue, yardage/)).toBeVisible();
  expect(await axeFaults(page)).toEqual([]);
  expect(refused).toEqual([]);
  await close();
});
