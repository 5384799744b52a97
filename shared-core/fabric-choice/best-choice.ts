import { lightnessOf } from '#core/units/screen-color';
import type { Choice, ChoiceProblem, RoleBorder } from './choice-problem';
import { type Candidate, WEIGHTS } from './role-candidates';

/** What a search for the best choice has to keep to besides the wishes. */
export interface Demands {
  /** Choices already suggested, and in how many roles a new one differs from each. */
  readonly found: readonly Choice[];
  readonly differsIn: number;
}

export interface RatedChoice {
  readonly candidates: readonly Candidate[];
  readonly score: number;
}

/** Lightness beyond the wished difference at which contrast counts in full. */
const FULL_CONTRAST = 40;
/** Partial choices looked at before the search settles for the best it has. */
const MOST_STEPS = 200_000;

/** Where a search stands: a fabric for some roles, and the best choice so far. */
interface Search {
  readonly problem: ChoiceProblem;
  readonly candidates: readonly (readonly Candidate[])[];
  readonly demands: Demands;
  /** Roles with few candidates first. */
  readonly order: readonly number[];
  /** Of each fabric. */
  readonly lightness: readonly number[];
  readonly borderLength: number;
  /** Fabrics that must be in. */
  readonly wanted: ReadonlySet<number>;
  /** What the roles from each place of the order on can add at most by themselves. */
  readonly restOfScore: readonly number[];
  readonly chosen: (Candidate | null)[];
  best: RatedChoice | null;
  steps: number;
}

/**
 * The choice with the best score, by branch and bound: exact unless it takes more than `MOST_STEPS`. Null when none keeps the
 * wishes. Every role takes a fabric of its own; `candidates` holds those of each role, the best first.
 */
export function bestChoice(
  problem: ChoiceProblem,
  candidates: readonly (readonly Candidate[])[],
  demands: Demands,
): RatedChoice | null {
  const { roles, borders, fabrics, wishes } = problem;
  const order = [...roles.keys()].toSorted(
    (one, other) => (candidates[one]?.length ?? 0) - (candidates[other]?.length ?? 0) || one - other,
  );
  const search: Search = {
    problem,
    candidates,
    demands,
    order,
    lightness: fabrics.map(({ color }) => lightnessOf(color)),
    borderLength: borders.reduce((sum, { length }) => sum + length, 0),
    wanted: new Set(wishes.contains.map((id) => fabrics.findIndex((fabric) => fabric.id === id))),
    restOfScore: order.map((_, place) =>
      order.slice(place).reduce((sum, role) => sum + (candidates[role]?.[0]?.score ?? 0), 0),
    ),
    chosen: roles.map(() => null),
    best: null,
    steps: 0,
  };
  fill(search, 0, { score: 0, money: 0 });
  return search.best;
}

/** The least difference in lightness of two roles that meet; 100 when none do. */
export function leastContrastOf({ borders, fabrics }: ChoiceProblem, choice: Choice): number {
  const lightness = (role: number) => lightnessOf(fabrics[choice[role] ?? 0]?.color ?? [0, 0, 0]);
  return borders.reduce(
    (least, { roles: [one, other] }) => Math.min(least, Math.abs(lightness(one) - lightness(other))),
    100,
  );
}

interface SoFar {
  readonly score: number;
  readonly money: number;
}

/** Tries every fabric for the role at this place of the order, and goes on where the best so far can still be beaten. */
function fill(search: Search, place: number, { score, money }: SoFar): void {
  const role = search.order[place];
  if (role === undefined) {
    search.best = { candidates: search.chosen.filter((one) => one !== null), score };
    return;
  }
  for (const { option, gain } of optionsFor(search, role, money)) {
    search.steps += 1;
    if (search.steps > MOST_STEPS) return;
    search.chosen[role] = option;
    const atMost = score + gain + (search.restOfScore[place + 1] ?? 0) + openContrast(search);
    if (atMost > (search.best?.score ?? -1) && canStillKeep(search, place + 1))
      fill(search, place + 1, { score: score + gain, money: money + (option.minorToBuy ?? 0) });
    search.chosen[role] = null;
  }
}

function optionsFor(search: Search, role: number, money: number) {
  return (search.candidates[role] ?? [])
    .filter((option) => mayTake(search, role, option, money))
    .map((option) => ({ option, gain: option.score + contrastGain(search, role, option.fabric) }))
    .toSorted((one, other) => other.gain - one.gain);
}

function mayTake(search: Search, role: number, { fabric, minorToBuy }: Candidate, money: number): boolean {
  const { borders, wishes } = search.problem;
  if (search.chosen.some((other) => other?.fabric === fabric)) return false;
  if (wishes.mostMoney !== null && money + (minorToBuy ?? Infinity) > wishes.mostMoney) return false;
  return borders.every(({ roles }) => {
    const other = neighborOf(search, role, roles);
    return other === null || difference(search, fabric, other.fabric) >= wishes.leastContrast;
  });
}

/** The fabric across a border of this role; null when this is none of its borders, or nothing is chosen there yet. */
function neighborOf({ chosen }: Search, role: number, [one, other]: RoleBorder['roles']): Candidate | null {
  if (one === role) return chosen[other] ?? null;
  return other === role ? (chosen[one] ?? null) : null;
}

function difference({ lightness }: Search, one: number, other: number): number {
  return Math.abs((lightness[one] ?? 0) - (lightness[other] ?? 0));
}

function contrastGain(search: Search, role: number, fabric: number): number {
  return search.problem.borders.reduce((sum, { roles, length }) => {
    const other = neighborOf(search, role, roles);
    if (other === null) return sum;
    const contrast = Math.min(1, difference(search, fabric, other.fabric) / FULL_CONTRAST);
    return sum + (WEIGHTS.contrast * contrast * length) / search.borderLength;
  }, 0);
}

/** What the borders of roles that are still open can add at most. */
function openContrast({ problem, chosen, borderLength }: Search): number {
  return problem.borders.reduce((sum, { roles: [one, other], length }) => {
    const isOpen = chosen[one] === null || chosen[other] === null;
    return isOpen ? sum + (WEIGHTS.contrast * length) / borderLength : sum;
  }, 0);
}

/** Whether the open roles can hold the fabrics that must be in, and the choice can still differ enough from those found. */
function canStillKeep({ order, chosen, candidates, wanted, demands }: Search, place: number): boolean {
  const open = order.slice(place);
  const missing = [...wanted].filter((fabric) => chosen.every((one) => one?.fabric !== fabric));
  const canHold = (fabric: number) =>
    open.some((role) => candidates[role]?.some((option) => option.fabric === fabric) === true);
  if (missing.length > open.length || !missing.every(canHold)) return false;
  return demands.found.every((choice) => {
    const alike = chosen.filter((one, role) => one !== null && one.fabric === choice[role]);
    return chosen.length - alike.length >= demands.differsIn;
  });
}
