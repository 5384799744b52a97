import { z } from 'zod';
import { describeSchema, type FieldDescription } from './describe-schema';
import type { CalculationId, StageId } from './ids';
import type { Measurements } from './measurements';
import { holeSchema, outlineSchema } from './outline';
import type { ProjectDetails } from './project';
import { settingsSchema } from './workshop';

/**
 * What is decided about a project once and holds everywhere: its shape and its settings. Templates, sheets, plans, the shopping list
 * and calculators read these and nothing else.
 */
const projectFactsSchema = z
  .object({
    outline: outlineSchema.meta({ title: 'Shape and size' }),
    hole: holeSchema.nullable().meta({ title: 'Hole' }),
    hasSlit: z.boolean().meta({ title: 'Slit' }),
    ...settingsSchema.unwrap().shape,
  })
  .readonly();
export type ProjectFacts = z.infer<typeof projectFactsSchema>;
export type FactName = keyof ProjectFacts;

/** Some facts, to be decided for a project. */
export const decidedFactsSchema = projectFactsSchema.unwrap().partial().readonly();
export type DecidedFacts = z.infer<typeof decidedFactsSchema>;

const FACTS = describeSchema(projectFactsSchema);

/** What a form and a page need to know of a fact. */
export function factField(fact: FactName): FieldDescription | undefined {
  return FACTS.form === 'group' ? FACTS.fields.find(({ key }) => key === fact)?.field : undefined;
}

/** What a fact is called: `Seam allowance`, `Hole`. */
export function factTitle(fact: FactName): string {
  return factField(fact)?.title ?? fact;
}

export const FACT_NAMES = Object.keys(projectFactsSchema.unwrap().shape) as readonly FactName[];

export function factsOfProject({ outline, hole, hasSlit, settings }: Measurements): ProjectFacts {
  return { ...settings, outline, hole, hasSlit };
}

export function measurementsOfFacts({ outline, hole, hasSlit, ...settings }: ProjectFacts): Measurements {
  return { outline, hole, hasSlit, settings };
}

/** What the hole is cut by. It is cut once, so neither the template nor the cut is begun while one of these is unsettled. */
const CUT_FACTS: readonly FactName[] = ['hole', 'seamAllowance'];

/** Whether nothing that the hole is cut by is unsettled. */
export function isCutSettled(unsettled: readonly UnsettledFact[]): boolean {
  return unsettled.every(({ fact }) => !CUT_FACTS.includes(fact));
}

/** A fact on which a saved answer and its project disagree. */
export interface UnsettledFact {
  readonly calculationId: CalculationId;
  readonly stageId: StageId;
  readonly calculator: string;
  readonly fact: FactName;
  /** What the answer has; the project has another. */
  readonly answer: DecidedFacts;
}

/** The project with these facts. Without a hole it has no slit. */
export function decideFacts(project: ProjectDetails, decided: DecidedFacts): ProjectDetails {
  const { outline = project.outline, hole = project.hole, hasSlit = project.hasSlit, ...settings } = decided;
  return {
    ...project,
    outline,
    hole,
    hasSlit: hasSlit && hole !== null,
    settingChanges: { ...project.settingChanges, ...settings },
  };
}
