import { outlineBounds } from '#core/calculators/outline/outline-measures';
import type { StagePlan } from '#core/contract/projects';
import { fittingPlans, type PlanSize } from '#core/domain/fitting-plans';
import type { Outline } from '#core/domain/outline';
import { lengthFromInches } from '#core/units/length';
import { outlineOfDraft, type ProjectDraft } from './project-draft';

const SMALL = lengthFromInches(24);

/** The plans that fit what is entered so far. */
export function plansForDraft(plans: readonly StagePlan[], { hasHole, hasSlit }: ProjectDraft) {
  return fittingPlans(plans, { hasHole, hasSlit: hasHole && hasSlit });
}

/** The plan of a new project: the one chosen if it still fits, otherwise the usual one for its size. */
export function planOfDraft(plans: readonly StagePlan[], draft: ProjectDraft): StagePlan['id'] | null {
  const fitting = plansForDraft(plans, draft);
  const outline = outlineOfDraft(draft);
  const size = outline === null ? null : sizeOf(outline);
  const chosen = fitting.find(({ id }) => id === draft.stagePlanId);
  return (chosen ?? fitting.find((plan) => plan.size === size) ?? fitting[0])?.id ?? null;
}

function sizeOf(outline: Outline): PlanSize {
  const { width, length } = outlineBounds(outline);
  const longest = Math.max(width, length);
  if (longest <= SMALL) return 'small';
  return longest >= 2 * Math.min(width, length) ? 'long' : 'large';
}
