import type { z } from 'zod';
import type { WorkDone } from '#core/domain/clock';
import type { Measurements } from '#core/domain/measurements';
import type { Need } from '#core/domain/need';
import type { PatchList } from '#core/domain/patch-list';
import type { StageKind } from '#core/domain/stage-kinds';
import type { Result } from '#core/result';
import type { Length } from '#core/units/length';
import type { Diagram } from './diagram';
import type { Explanation, Figure, Note, Sentence, Table } from './explanation';

/**
 * A calculator answers one question of the bench. Everything that shows one (a stage's page, paper, the command line) is
 * drawn from this record, so that adding a calculator is adding one folder and one line in `registry.ts`. Its functions are
 * written as methods so that one list can hold calculators of many inputs; only a checked input may be passed to them.
 */
export interface Calculator<Input extends object = object, Details extends object = object> {
  /** Kebab-case, never reused; stored results are found by it. */
  readonly name: string;
  /** Raised when the same input may give another answer than before: stored results then read as out of date. */
  readonly version: number;
  readonly title: string;
  /** The question in a maker's words, such as "How much fabric does the outer binding take?". */
  readonly question: string;
  readonly stageKinds: readonly StageKind[];
  /** A zod object whose fields are made by `domain/fields`; lengths are whole 1/320 mm. */
  readonly input: z.ZodType<Input, Input>;
  /** A complete input for this project: its own measurements, and sensible starting values for the rest. */
  fromProject(measurements: Measurements): Input;
  /** Pure. A valid input that has no answer (a strip too wide for the ring) is an error as data, never an exception. */
  calculate(input: Input): Result<Calculation<Details>, Refusal>;
  /** How much there is to do by an answer, as the clock counts it. */
  workIn?(details: Details): readonly WorkDone[];
  /** What has to be bought or on hand for an answer. `usualWidth` is for fabric whose width the answer does not name. */
  needs?(input: Input, details: Details, usualWidth: Length): readonly Need[];
  /** What an answer hands to a cutting plan; may be empty. */
  cuts?(input: Input, details: Details): PatchList;
  /** Binding and backing are often cut later, and from other fabric: a cutting plan takes them only when asked. */
  readonly isCutLater?: boolean;
  /** Calculators whose answers are part of this one's. Where a stage has both, only this one asks for fabric. */
  readonly includes?: readonly string[];
  /** Calculators with the same word are ways to one thing. Of a stage's answers only the last saved asks for fabric. */
  readonly wayTo?: 'binding';
}

export interface Calculation<Details extends object = object> {
  /** What the maker needs now; the first is the hero of the page. Never empty. */
  readonly figures: readonly Figure[];
  readonly tables: readonly Table[];
  readonly explanation: Explanation;
  readonly notes: readonly Note[];
  readonly diagram: Diagram | null;
  /** The same answer as typed values, for other calculators, planners and tests. */
  readonly details: Details;
}

/** Why an input has no answer; `field` is the path of the input that is best changed. */
export interface Refusal extends Sentence {
  readonly code: string;
  readonly field: readonly (string | number)[];
}
