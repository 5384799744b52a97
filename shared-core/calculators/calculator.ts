import type { z } from 'zod';
import type { WorkDone } from '#core/domain/clock';
import type { Measurements } from '#core/domain/measurements';
import type { Need } from '#core/domain/need';
import type { PatchList } from '#core/domain/patch-list';
import type { DecidedFacts } from '#core/domain/project-facts';
import type { StageKind } from '#core/domain/stage-kinds';
import type { Result } from '#core/result';
import type { Length } from '#core/units/length';
import type { Diagram } from './diagram';
import type { Explanation, Figure, Note, Sentence, Table } from './explanation';

/**
 * A calculator answers one question. A stage's page, paper, the shopping list, cutting plans and the command line read this record
 * alone, so a new calculator is one folder and one line in `registry.ts`. Its functions are methods so that one list can hold
 * calculators with different inputs; call them only with a checked input.
 */
export interface Calculator<Input extends object = object, Details extends object = object> {
  /** Kebab-case and never reused: saved answers are found by it. */
  readonly name: string;
  /** Goes up when the same input may give a different answer, which marks saved answers as out of date. */
  readonly version: number;
  readonly title: string;
  /** The question in a maker's words, such as "How much fabric does the outer binding take?". */
  readonly question: string;
  readonly stageKinds: readonly StageKind[];
  /** Few projects ask this. A stage's page keeps it under “More questions” until it has a saved answer. */
  readonly isOccasional?: boolean;
  /** A zod object with fields from `domain/fields`. Lengths are whole 1/320 mm. */
  readonly input: z.ZodType<Input, Input>;
  /** A complete input for this project: its measurements, and sensible starting values for the rest. */
  fromProject(measurements: Measurements): Input;
  /** Fields that only start with a value of the project, such as the width of the piece at hand: another value is no trial of a fact. */
  readonly startsFromProject?: readonly string[];
  /**
   * Fields filled from other answers saved with the same stage, such as the sizes that a planned top should measure. `before` is what the
   * fields hold now, in any state of typing.
   */
  fromAnswers?(answers: readonly SavedQuestion[], before: unknown): readonly StartingFields<Input>[];
  /** Pure. A valid input without an answer, such as a strip too wide for the ring, is a refusal and not an exception. */
  calculate(input: Input): Result<Calculation<Details>, Refusal>;
  /** The facts that the answer decides, such as the hole. They hold for the project only once the maker uses them there. */
  decides?(details: Details): DecidedFacts;
  /** How much there is to do, in the measures that the clock counts. */
  workIn?(details: Details): readonly WorkDone[];
  /** What has to be bought or on hand. `usualWidth` is for fabric whose width the answer does not name. */
  needs?(input: Input, details: Details, usualWidth: Length): readonly Need[];
  /** The patches to cut, for a cutting plan; may be empty. */
  cuts?(input: Input, details: Details): PatchList;
  /** Binding and backing are often cut later, and from other fabric: a cutting plan takes them only when asked. */
  readonly isCutLater?: boolean;
  /** Calculators whose answers are part of this one's. Where a stage has both, only this one asks for fabric. */
  readonly includes?: readonly string[];
  /** Calculators with the same word are ways to one thing. Of a stage's answers only the last saved asks for fabric. */
  readonly wayTo?: 'binding';
}

/** A saved answer as another calculator reads it. */
export interface SavedQuestion {
  readonly calculator: string;
  /** As stored: anything. */
  readonly input: unknown;
}

/** Fields that one saved answer gives, and the name of its calculator. */
export interface StartingFields<Input extends object = object> {
  readonly calculator: string;
  readonly fields: Partial<Input>;
}

export interface Calculation<Details extends object = object> {
  /** The results, most important first. Never empty. */
  readonly figures: readonly Figure[];
  readonly tables: readonly Table[];
  readonly explanation: Explanation;
  readonly notes: readonly Note[];
  readonly diagram: Diagram | null;
  /** The same answer as typed values, for other calculators, planners and tests. */
  readonly details: Details;
}

/** Why an input has no answer. `field` is the path of the field that is best to change. */
export interface Refusal extends Sentence {
  readonly code: string;
  readonly field: readonly (string | number)[];
}
