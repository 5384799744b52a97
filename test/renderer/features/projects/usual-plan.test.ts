import { expect, it } from 'vitest';
import { STARTING_PLANS } from '#core/domain/starting-plans';
import { lengthFromInches } from '#core/units/length';
import { EMPTY_DRAFT, type ProjectDraft } from '#renderer/features/projects/project-draft';
import { planOfDraft } from '#renderer/features/projects/usual-plan';

const PLANS = STARTING_PLANS.map((plan) => ({ ...plan, isOwn: false }));
const RECTANGLE = { shape: 'rectangle', width: lengthFromInches(16), length: lengthFromInches(48) } as const;

const planFor = (part: Partial<ProjectDraft>) => {
  const id = planOfDraft(PLANS, { ...EMPTY_DRAFT, ...part });
  return PLANS.find((plan) => plan.id === id)?.name;
};

it('is the usual plan for the size until another is chosen', () => {
  expect(planFor(RECTANGLE)).toBe('Runner');
  expect(planFor({ ...RECTANGLE, width: lengthFromInches(40) })).toBe('Throw');
  expect(planFor({ shape: 'circle', across: lengthFromInches(14) })).toBe('Small mat');
  expect(planFor({ ...RECTANGLE, stagePlanId: PLANS.find(({ name }) => name === 'Throw')!.id })).toBe(
    'Throw',
  );
});

it('changes when the project gets a hole or loses it', () => {
  const runner = PLANS.find(({ name }) => name === 'Runner')!.id;
  expect(planFor({ ...RECTANGLE, stagePlanId: runner, hasHole: true })).toBe('Tree skirt, closed ring');
  expect(planFor({ ...RECTANGLE, stagePlanId: runner, hasHole: true, hasSlit: true })).toBe('Tree skirt');
  expect(planFor({ ...RECTANGLE, stagePlanId: runner, hasSlit: true })).toBe('Runner');
});
