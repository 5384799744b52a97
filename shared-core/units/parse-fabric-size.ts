import { failure, type Result, success } from '#core/result';
import { type Length, lengthFromInches } from './length';
import type { LengthProblem, LengthProblemCode } from './length-problem';
import type { LengthUnit } from './length-unit';
import { parseLength } from './parse-length';
import { clipRead, MAX_TYPED_CHARACTERS, normaliseTyped } from './typed-text';

/** A piece of fabric: `width` across it, from selvage to selvage; `length` along the selvage. */
export interface FabricSize {
  readonly width: Length;
  readonly length: Length;
}

/** Half a yard, or a quarter, off the roll, cut once across: 22 in is half of 44 in fabric (common practice, 20 to 22 by width). */
const FAT_QUARTER: FabricSize = { width: lengthFromInches(22), length: lengthFromInches(18) };
const FAT_EIGHTH: FabricSize = { width: lengthFromInches(22), length: lengthFromInches(9) };

const NAMED_SIZES: Readonly<Record<string, FabricSize>> = {
  fq: FAT_QUARTER,
  'fat quarter': FAT_QUARTER,
  f8: FAT_EIGHTH,
  fe: FAT_EIGHTH,
  'fat eighth': FAT_EIGHTH,
};

const EXPECTED: readonly string[] = ['18 x 22 in', '45 x 55 cm', '1 1/4 yd', 'FQ', 'F8'];

/**
 * Reads `width x length` in the order written (a unit at the end counts for both), a length alone off fabric of `bareWidth`,
 * `FQ` (fat quarter, 22 in across by 18 in along) and `F8` or `FE` (fat eighth, 22 in by 9 in). A length alone without
 * `bareWidth` is the problem `width-missing`. Each side is read as `parseLength` does.
 */
export function parseFabricSize(
  text: string,
  bareUnit: LengthUnit,
  bareWidth?: Length,
): Result<FabricSize, LengthProblem> {
  const problem = (code: LengthProblemCode, expected = EXPECTED) =>
    failure({ code, read: clipRead(text), expected });
  if (text.length > MAX_TYPED_CHARACTERS) return problem('too-long');
  const typed = normaliseTyped(text);
  const named = Object.hasOwn(NAMED_SIZES, typed) ? NAMED_SIZES[typed] : undefined;
  if (named !== undefined) return success(named);
  const [first = '', second, ...more] = typed.split('x');
  if (more.length > 0) return problem('not-a-length');
  if (second === undefined) {
    const length = parseLength(first, bareUnit);
    if (!length.ok)
      return problem(length.error.code, length.error.code === 'ambiguous' ? length.error.expected : EXPECTED);
    return bareWidth === undefined
      ? problem('width-missing')
      : success({ width: bareWidth, length: length.value });
  }
  const hasOwnUnit = /[a-z"']/.test(first);
  const lastUnit = /([a-z]+\.?|"|'+)$/.exec(second)?.[0] ?? '';
  const length = parseLength(second, bareUnit);
  const width = parseLength(hasOwnUnit ? first : `${first} ${lastUnit}`, bareUnit);
  if (!length.ok) return problem(sideCode(length.error.code));
  if (!width.ok) return problem(sideCode(width.error.code));
  return success({ width: width.value, length: length.value });
}

/** Where one side is missing, the text as a whole is not empty. */
function sideCode(code: LengthProblemCode): LengthProblemCode {
  return code === 'empty' ? 'not-a-length' : code;
}
