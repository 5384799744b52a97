import type { Measurements } from '#core/domain/measurements';
import {
  type DecidedFacts,
  decidedFactsSchema,
  FACT_NAMES,
  type FactName,
  factsOfProject,
  measurementsOfFacts,
  type ProjectFacts,
} from '#core/domain/project-facts';
import { lengthFromUnits } from '#core/units/length';
import type { Calculator } from './calculator';
import { isSameData } from './complete-input';

type Fields = Readonly<Record<string, unknown>>;

/**
 * The fields of a calculator's input that take a fact of the project unchanged, with that fact. They are found by asking the calculator
 * for its input with each fact changed, so no second list can fall behind.
 */
export function factFields(
  calculator: Calculator,
  measurements: Measurements,
): ReadonlyMap<string, FactName> {
  const facts = factsOfProject(measurements);
  const before = fieldsOf(calculator, facts);
  const found = new Map<string, FactName>();
  for (const fact of FACT_NAMES) {
    const other = withOther(facts, fact);
    if (other === null) continue;
    const after = fieldsOf(calculator, other);
    for (const [field, value] of Object.entries(after)) {
      if (calculator.startsFromProject?.includes(field) === true) continue;
      const isTaken = isSameData(value, other[fact]) || isSameData(holeOf(fact, value), other[fact]);
      if (isTaken && !isSameData(value, before[field])) found.set(field, fact);
    }
  }
  return found;
}

/** A fact that was changed in a calculator only. */
export interface Trial {
  readonly field: string;
  readonly fact: FactName;
  readonly tried: DecidedFacts;
}

/** The facts that the maker's own part of an input sets to something other than the project gives it. */
export function trialsIn(
  calculator: Calculator,
  measurements: Measurements,
  ownInput: Fields,
): readonly Trial[] {
  const fromProject = fieldsOf(calculator, factsOfProject(measurements));
  return [...factFields(calculator, measurements)].flatMap(([field, fact]): readonly Trial[] => {
    if (!Object.hasOwn(ownInput, field) || isSameData(ownInput[field], fromProject[field])) return [];
    const tried = [ownInput[field], holeOf(fact, ownInput[field])]
      .filter((value) => value !== undefined)
      .map((value) => decidedFactsSchema.safeParse({ [fact]: value }))
      .find(({ success }) => success)?.data;
    return tried === undefined ? [] : [{ field, fact, tried }];
  });
}

function fieldsOf(calculator: Calculator, facts: ProjectFacts): Fields {
  return Object.fromEntries(Object.entries(calculator.fromProject(measurementsOfFacts(facts))));
}

/** A field may hold the diameter of the hole alone. */
function holeOf(fact: FactName, value: unknown): unknown {
  return fact === 'hole' && typeof value === 'number' ? { diameter: value } : undefined;
}

const OTHER_HOLE = lengthFromUnits(7_777);
const OTHER_OUTLINE = { shape: 'circle', diameter: lengthFromUnits(123_457) } as const;

/** Settings that say how numbers are shown; no input takes them as they are. */
const WAYS_OF_SHOWING = ['unitSystem', 'inchStep', 'clockStepMinutes'] as const;

/** The facts with another value of one, unlike any in use. */
function withOther(facts: ProjectFacts, fact: FactName): ProjectFacts | null {
  const now = facts[fact];
  if (fact === 'outline') return { ...facts, outline: OTHER_OUTLINE };
  if (fact === 'hole') return { ...facts, hole: { diameter: OTHER_HOLE } };
  if (fact === 'hasSlit') return { ...facts, hasSlit: !facts.hasSlit };
  const isShown = WAYS_OF_SHOWING.some((way) => way === fact);
  return isShown || typeof now !== 'number' ? null : { ...facts, [fact]: now + 1 };
}
