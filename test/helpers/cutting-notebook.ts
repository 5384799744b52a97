import type { Page } from '@playwright/test';
import type { FabricDetails } from '#core/domain/stash';
import type { ProjectDetails } from '#core/domain/project';
import { STARTING_PLANS } from '#core/domain/starting-plans';
import { calendarDate } from '#core/units/calendar-date';
import { lengthFromInches as inches } from '#core/units/length';
import { askStore } from '#test/helpers/ask-store';

const TODAY = calendarDate('2027-02-28');

export const RING: ProjectDetails = {
  name: 'Autumn ring',
  purpose: 'own',
  forWhom: '',
  dueOn: null,
  outline: { shape: 'circle', diameter: inches(50) },
  hole: { diameter: inches(6) },
  hasSlit: false,
  settingChanges: {},
  notes: '',
};

export const BLUE: FabricDetails = {
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

/** Adds a project with a saved answer that lists patches, and a fabric to cut them from. */
export async function fillCuttingNotebook(page: Page) {
  const { projectId } = await askStore(page, 'project:create', {
    details: RING,
    stagePlanId: STARTING_PLANS[0]!.id,
  });
  const { stages } = await askStore(page, 'project:open', { projectId });
  const piecing = stages.find(({ kind }) => kind === 'piecing');
  if (piecing === undefined) throw new Error('No piecing stage');
  await askStore(page, 'calculation:save', {
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
