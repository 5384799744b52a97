/** Why a typed length was not taken. Worded only in the renderer. */
export type LengthProblemCode =
  | 'empty'
  | 'too-long'
  | 'not-a-length'
  | 'ambiguous'
  | 'unknown-unit'
  | 'zero-denominator'
  | 'improper-fraction'
  | 'negative'
  | 'too-fine'
  | 'out-of-range'
  | 'width-missing';

export interface LengthProblem {
  readonly code: LengthProblemCode;
  /** What was read, with spaces trimmed and at most 40 characters. */
  readonly read: string;
  /** Texts that would have been taken in this field, the nearest guesses first. */
  readonly expected: readonly string[];
}
