import type { StripProblem } from '#core/cutting/tree/cut-plan';

/** A named strip problem and the height it is scored against, if one is known. */
export interface BenchProblem extends StripProblem {
  readonly name: string;
  readonly reference: number | undefined;
}
