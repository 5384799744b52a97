/** What is wrong with one field of an input, in words that a form or the command line shows as they are. */
export interface FieldProblem {
  readonly path: readonly (string | number)[];
  /** What was read, cut short. */
  readonly read: string;
  /** What is accepted, as a phrase such as "a length from 1/4 in to 2 in". */
  readonly expected: string;
}
