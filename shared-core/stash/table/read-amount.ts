import { failure, type Result, success } from '#core/result';
import { type Length, lengthFromUnits } from '#core/units/length';
import type { LengthProblem } from '#core/units/length-problem';
import type { LengthUnit } from '#core/units/length-unit';
import { parseFabricSize } from '#core/units/parse-fabric-size';
import { normaliseTyped } from '#core/units/typed-text';

/** An amount of fabric as a table names it. For several pieces alike, `length` is that of all and `unitLength` that of one. */
export interface AmountOfFabric {
  readonly width: Length;
  readonly length: Length;
  readonly unitLength: Length | null;
}

const WORDS: readonly (readonly [RegExp, string])[] = [
  [/\b(?:a )?half (?:a )?(?=yard|yd|meter|metre|m\b)/, '1/2 '],
  [/\b(?:one |a )?quarter (?:of a |a )?(?=yard|yd|meter|metre|m\b)/, '1/4 '],
  [/\bthree quarters? (?:of a |a )?(?=yard|yd|meter|metre|m\b)/, '3/4 '],
  [/\b(?:one|a) (?=yard|yd|meter|metre)/, '1 '],
  [/\bfat quarters?\b|\bfqs?\b|\bfat 1\/4s?\b/, 'fq'],
  [/\bfat eighths?\b|\bf8s?\b|\bfes?\b/, 'f8'],
];

const TIMES = /^(\d{1,3}) ?(?:x|pcs?\.?|pieces?|of)? ?(fq|f8)$|^(fq|f8) ?(?:x|\*|\() ?(\d{1,3})\)?$/;

/** A leftover of unknown size. */
const UNMEASURED = [
  'scrap',
  'scraps',
  'leftover',
  'leftovers',
  'bits',
  'some',
  '?',
  'unknown',
  'not measured',
];

/** Whether the cell says that there is fabric, but not how much. */
export function isUnmeasured(text: string): boolean {
  return UNMEASURED.includes(normaliseTyped(text));
}

/** Reads `2 1/4 yd`, `half yard`, `45 x 55 cm`, `FQ`, `3 FQ` and `FQ x 3`; a length alone is off fabric of `width`. */
export function readAmount(
  text: string,
  bareUnit: LengthUnit,
  width: Length,
): Result<AmountOfFabric, LengthProblem> {
  const typed = WORDS.reduce(
    (sofar, [words, plain]) => sofar.replace(words, plain),
    normaliseTyped(text.slice(0, 80)),
  );
  const [, before, kindAfter, kindBefore, after] = TIMES.exec(typed) ?? [];
  const count = Number(before ?? after ?? 1);
  const one = parseFabricSize(kindAfter ?? kindBefore ?? typed, bareUnit, width);
  if (!one.ok) return failure({ ...one.error, read: text.trim().slice(0, 40) });
  if (count === 1) return success({ ...one.value, unitLength: null });
  return success({
    width: one.value.width,
    length: lengthFromUnits(count * one.value.length),
    unitLength: one.value.length,
  });
}

/** The kind that an amount names, such as a fat quarter. */
export function kindOfAmount(text: string): 'fat-quarter' | 'fat-eighth' | null {
  const typed = WORDS.reduce(
    (sofar, [words, plain]) => sofar.replace(words, plain),
    normaliseTyped(text.slice(0, 80)),
  );
  if (/\bfq\b/.test(typed)) return 'fat-quarter';
  return /\bf8\b/.test(typed) ? 'fat-eighth' : null;
}
