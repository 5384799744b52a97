/** What is wrong with one field of an input, in words a form or a command line can show as they are. */
export interface FieldProblem {
  readonly path: readonly (string | number)[];
  /** What was read, clipped. */
  readonly read: string;
  /** What would be taken, as a whole plain phrase such as "a length from 1/4 in to 2 in". */
  readonly expected: string;
}
