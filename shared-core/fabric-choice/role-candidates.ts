import type { JobFabric } from '#core/cutting/tree/cutting-job';
import { pieceSpace } from '#core/cutting/tree/piece-space';
import { perceivedColor } from '#core/units/screen-color';
import type { ChoiceProblem, FabricOnShelf, FabricRole } from './choice-problem';
import { jobOfRole, planRole } from './plan-role';

/** A fabric for one role: what has to be bought of it, and how good it is there by itself. */
export interface Candidate {
  readonly fabric: number;
  /** Nothing to buy: 0. */
  readonly lengthToBuy: number;
  readonly minorToBuy: number | null;
  /** Share of the role's area that leftovers can hold, from 0 to 1. */
  readonly fromLeftovers: number;
  readonly score: number;
}

/** How much each wish counts in the score of a suggestion. */
export const WEIGHTS = {
  contrast: 1,
  leftovers: 0.25,
  wishedLeftovers: 2,
  warmth: 2,
  nothingBought: 1,
} as const;

/** OKLab chroma at which a color counts as fully warm or cool. */
const FULL_CHROMA = 0.1;
/** The middle of the warm half of the color wheel, between red and yellow. */
const WARM_HUE = (60 * Math.PI) / 180;

/** The fabrics that can be cut for a role, the best first. `share` is the part of the top's area that the role takes. */
export function candidatesFor(problem: ChoiceProblem, role: FabricRole, share: number): readonly Candidate[] {
  return problem.fabrics
    .flatMap((fabric, index) => {
      const amount = canBeCut(problem, role, fabric);
      return amount === null ? [] : [candidate(problem, { role, share, fabric, index, ...amount })];
    })
    .toSorted((one, other) => other.score - one.score || one.fabric - other.fabric);
}

/** Area of the patches of a role, in (1/320 mm)². */
export function areaOf({ patches }: FabricRole): number {
  return patches.reduce((sum, { width, length, copies }) => sum + width * length * copies, 0);
}

/** Null when it is not enough and cannot be bought as wished. */
function canBeCut(
  { wishes, table }: ChoiceProblem,
  role: FabricRole,
  fabric: FabricOnShelf,
): { readonly lengthToBuy: number; readonly minorToBuy: number | null } | null {
  const job: JobFabric = { ...fabric, toBuy: wishes.buysNothing ? undefined : fabric.toBuy };
  if (job.toBuy === undefined && areaOf(role) > usableArea(fabric)) return null;
  const plan = planRole(jobOfRole(role, job, table));
  if (plan === null) return null;
  if (plan.lengthToBuy === 0) return { lengthToBuy: 0, minorToBuy: 0 };
  const width = job.toBuy?.width ?? 0;
  const minorToBuy =
    fabric.price === null
      ? null
      : Math.round((fabric.price.minor * plan.lengthToBuy * width) / fabric.price.area);
  if (wishes.mostMoney !== null && (minorToBuy === null || minorToBuy > wishes.mostMoney)) return null;
  return { lengthToBuy: plan.lengthToBuy, minorToBuy };
}

function usableArea({ pieces }: FabricOnShelf): number {
  return pieces.map(pieceSpace).reduce((sum, { width, height, times }) => sum + width * height * times, 0);
}

interface Rated {
  readonly role: FabricRole;
  readonly share: number;
  readonly fabric: FabricOnShelf;
  readonly index: number;
  readonly lengthToBuy: number;
  readonly minorToBuy: number | null;
}

function candidate({ wishes }: ChoiceProblem, { role, share, fabric, index, ...amount }: Rated): Candidate {
  const leftovers = fabric.pieces.filter(({ isLeftover }) => isLeftover);
  const fromLeftovers = Math.min(1, usableArea({ ...fabric, pieces: leftovers }) / areaOf(role));
  const leftoverWeight = wishes.prefersLeftovers ? WEIGHTS.wishedLeftovers : WEIGHTS.leftovers;
  const warmth = wishes.warmth === 'any' ? 0 : WEIGHTS.warmth * warmthWished(fabric, wishes.warmth);
  const owned = amount.lengthToBuy === 0 ? WEIGHTS.nothingBought : 0;
  const score = share * (leftoverWeight * fromLeftovers + warmth + owned);
  return { fabric: index, ...amount, fromLeftovers, score };
}

/** 1 for a strong color of the wished half of the color wheel, 0 for one of the other half, 1/2 for gray. */
function warmthWished({ color }: FabricOnShelf, wished: 'warm' | 'cool'): number {
  const [, a, b] = perceivedColor(color);
  const strength = Math.min(1, Math.hypot(a, b) / FULL_CHROMA);
  const warm = strength * Math.cos(Math.atan2(b, a) - WARM_HUE);
  return (1 + (wished === 'warm' ? warm : -warm)) / 2;
}
