import { boundsInWords, type FieldBounds, isWithin } from '#core/domain/field-bounds';
import { failure, type Result, success } from '#core/result';
import { decimalText } from '#core/units/decimal-text';
import { formatLength } from '#core/units/format-length';
import { lengthFromUnits, MAX_LENGTH_UNITS } from '#core/units/length';
import { clipRead } from '#core/units/typed-text';
import type { LengthUnit } from '#core/units/length-unit';
import { parseWeight } from '#core/units/parse-weight';
import { parseLength, parseSignedLength } from '#core/units/parse-length';
import type { LengthDisplay } from '#core/units/unit-system';

/** Why a field was refused; `expected` is a plain phrase. */
export interface FieldFault {
  readonly read: string;
  readonly expected: string;
}

type Read = Result<unknown, FieldFault>;

/** The value in a few words: text in quotes and shortened, anything else by its type. */
export function describeRead(raw: unknown): string {
  if (raw === undefined || raw === null) return 'nothing';
  if (typeof raw === 'string') return raw.trim() === '' ? 'nothing' : `"${clipRead(raw)}"`;
  if (typeof raw === 'number' || typeof raw === 'boolean') return String(raw);
  if (Array.isArray(raw)) return `a list of ${raw.length}`;
  return typeof raw === 'object' ? 'a group of fields' : `a ${typeof raw}`;
}

/** Text is a length with its unit, or a plain number of `bareUnit`; a number is whole 1/320 mm. */
export function readLengthField(bounds: FieldBounds, raw: unknown, bareUnit: LengthUnit): Read {
  const write = (units: number) => writeBound(units, bareUnit, units === bounds.maximum ? 'down' : 'up');
  // Written only for a fault: formatting two lengths takes longer than reading one.
  const fault = (more: string): Read =>
    failure({ read: describeRead(raw), expected: `a length${boundsInWords(bounds, write)}${more}` });
  if (typeof raw === 'string') {
    const parse = (bounds.minimum ?? 0) < 0 ? parseSignedLength : parseLength;
    const length = parse(raw, bareUnit);
    if (!length.ok) return fault(`, such as ${length.error.expected.slice(0, 2).join(' or ')}`);
    return isWithin(length.value, bounds) ? success(length.value) : fault('');
  }
  if (typeof raw !== 'number') return fault('');
  if (!Number.isInteger(raw) || Math.abs(raw) > MAX_LENGTH_UNITS) {
    return fault(', as text such as 9 1/2 in or as whole 1/320 mm');
  }
  return isWithin(raw, bounds) ? success(lengthFromUnits(raw)) : fault('');
}

const DECIMAL_NUMBER = /^[-+]?(?:\d{1,15}(?:[.,]\d{0,12})?|[.,]\d{1,12}) ?%?$/;

export interface NumberToRead {
  readonly bounds: FieldBounds;
  readonly isWhole: boolean;
  /** Written after the number in a fault, such as ` days`. */
  readonly unit: string;
}

/** A number, or text that is clearly a number. A comma is a decimal mark. */
export function readNumberField({ bounds, isWhole, unit }: NumberToRead, raw: unknown): Read {
  const value = typeof raw === 'string' ? numberFromText(raw) : raw;
  if (
    typeof value === 'number' &&
    isWithin(value, bounds) &&
    (isWhole ? Number.isSafeInteger(value) : Number.isFinite(value))
  ) {
    return success(value === 0 ? 0 : value);
  }
  const words = boundsInWords(bounds, (bound) => decimalText(bound, 4));
  return failure({ read: describeRead(raw), expected: `a ${isWhole ? 'whole ' : ''}number${words}${unit}` });
}

/** Text is a weight with its unit, or a plain number of ounces or grams by the unit of lengths; a number is grams. */
export function readWeightField(bounds: FieldBounds, raw: unknown, bareUnit: LengthUnit): Read {
  const system = isInchUnit(bareUnit) ? 'inch' : 'metric';
  const weight = typeof raw === 'string' ? parseWeight(raw, system) : null;
  const grams = weight === null ? raw : weight.ok ? weight.value : null;
  if (typeof grams === 'number' && Number.isFinite(grams) && isWithin(grams, bounds)) {
    return success(grams === 0 ? 0 : grams);
  }
  const words = boundsInWords(bounds, (bound) => `${decimalText(bound, 3)} g`);
  const such = weight?.ok === false ? `, such as ${weight.error.expected.slice(0, 2).join(' or ')}` : '';
  return failure({ read: describeRead(raw), expected: `a weight${words}${such}` });
}

/** One of the listed values. A number may also be text. */
export function readChoiceField(values: readonly (string | number)[], raw: unknown): Read {
  const isSimple = typeof raw === 'string' || typeof raw === 'number';
  const chosen = isSimple
    ? values.find((value) => String(value) === String(raw).slice(0, 100).trim())
    : undefined;
  if (chosen !== undefined) return success(chosen);
  const expected = values.length === 1 ? String(values[0]) : `one of: ${values.join(', ')}`;
  return failure({ read: describeRead(raw), expected });
}

export function readFlagField(raw: unknown): Read {
  if (typeof raw === 'boolean') return success(raw);
  if (raw === 'yes' || raw === 'true') return success(true);
  if (raw === 'no' || raw === 'false') return success(false);
  return failure({ read: describeRead(raw), expected: 'yes or no (true or false)' });
}

/** Text is trimmed before its length is checked, as the schema does. */
export function readTextField(bounds: FieldBounds, raw: unknown): Read {
  const text = typeof raw === 'string' ? raw.trim() : null;
  if (text !== null && isWithin(text.length, bounds)) return success(text);
  const { minimum, maximum } = bounds;
  const words = boundsInWords({ minimum: minimum === 0 ? null : minimum, maximum }, String);
  return failure({ read: describeRead(raw), expected: words === '' ? 'text' : `text${words} characters` });
}

function numberFromText(text: string): number | null {
  if (text.length > 40) return null;
  const plain = text.trim();
  return DECIMAL_NUMBER.test(plain) ? Number(plain.replace(',', '.').replace(/ ?%$/, '')) : null;
}

/** Rounds a limit inward, so that the printed limit itself is accepted. */
function writeBound(units: number, bareUnit: LengthUnit, direction: 'up' | 'down'): string {
  const display: LengthDisplay = { system: isInchUnit(bareUnit) ? 'inch' : 'metric', inchStep: 64 };
  return formatLength(lengthFromUnits(units), display, direction);
}

function isInchUnit(unit: LengthUnit): boolean {
  return unit === 'in' || unit === 'ft' || unit === 'yd';
}
