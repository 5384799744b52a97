import { UNITS_PER_INCH } from '#core/units/length';

/**
 * Works out a formula as it is printed for a maker, such as `√(n·c² + (n − 1)·(2e)²)`: `·`, `×` and two things side by side
 * multiply, `÷` and `/` divide, `²` squares, `7/8 in` is a length, bars and floors as usual. A name in front (`w =`) and words behind a comma
 * (`, rounded up`) are no part of it. Null where the formula is in words or has a symbol that `values` does not have.
 */
export function evaluateFormula(formula: string, values: ReadonlyMap<string, number>): number | null {
  const reader: Reader = { rest: withoutWords(formula), values };
  try {
    const value = readSum(reader);
    return reader.rest === '' ? value : null;
  } catch (error) {
    if (error instanceof NotReadable) return null;
    throw error;
  }
}

interface Reader {
  rest: string;
  readonly values: ReadonlyMap<string, number>;
}

class NotReadable extends Error {}

const FUNCTIONS: Readonly<Record<string, (...values: number[]) => number>> = {
  max: Math.max,
  min: Math.min,
  asin: Math.asin,
  atan: Math.atan,
};
const ANGLE_FUNCTIONS: Readonly<Record<string, (angle: number) => number>> = {
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
};

/** Commas between parentheses part the values of a function; the first other one ends the formula. */
function withoutWords(formula: string): string {
  const end = Array.from(formula, (sign, index) => ({ sign, index })).find(
    ({ sign, index }) => /[,;]/.test(sign) && depthOf(formula.slice(0, index)) === 0,
  );
  return formula
    .slice(0, end?.index)
    .replace(/^[^=]* = /, '')
    .replace(/ \([a-z ]+\)$/, '')
    .trim();
}

function depthOf(text: string): number {
  return text.split('(').length - text.split(')').length;
}

function take(reader: Reader, sign: string): boolean {
  if (!reader.rest.startsWith(sign)) return false;
  reader.rest = reader.rest.slice(sign.length).trimStart();
  return true;
}

function expectSign(reader: Reader, sign: string): void {
  if (!take(reader, sign)) throw new NotReadable();
}

function readSum(reader: Reader): number {
  let value = readProduct(reader);
  for (;;) {
    if (take(reader, '+')) value += readProduct(reader);
    else if (take(reader, '−')) value -= readProduct(reader);
    else return value;
  }
}

function readProduct(reader: Reader): number {
  let value = readRun(reader);
  for (;;) {
    if (take(reader, '·') || take(reader, '×')) value *= readRun(reader);
    else if (take(reader, '÷') || take(reader, '/')) value /= readRun(reader);
    else return value;
  }
}

/** Things side by side, `8F(√2 − 1)`, hold together more closely than a sign between them. */
function readRun(reader: Reader): number {
  let value = readPower(reader);
  while (/^[^+−·×÷/)|⌋,]/u.test(reader.rest)) value *= readPower(reader);
  return value;
}

function readPower(reader: Reader): number {
  const value = readAtom(reader);
  return take(reader, '²') ? value ** 2 : value;
}

function readAtom(reader: Reader): number {
  const inches = /^(\d+ )?(\d+)(?:\/(\d+))? in\b/.exec(reader.rest);
  if (inches !== null && take(reader, inches[0])) {
    const [, whole = '0', count = '0', parts = '1'] = inches;
    return (Number(whole) + Number(count) / Number(parts)) * UNITS_PER_INCH;
  }
  const number = /^\d+(\.\d+)?/.exec(reader.rest)?.[0];
  if (number !== undefined && take(reader, number))
    return Number(number) * (take(reader, '°') ? Math.PI / 180 : 1);
  if (take(reader, '√')) return Math.sqrt(readAtom(reader));
  if (take(reader, '(')) return readEnclosed(reader, ')');
  if (take(reader, '|')) return Math.abs(readEnclosed(reader, '|'));
  if (take(reader, '⌊')) return Math.floor(readEnclosed(reader, '⌋'));
  const called = Object.entries(FUNCTIONS).find(([name]) => take(reader, `${name}(`));
  if (called !== undefined) return called[1](...readArguments(reader));
  const ofAngle = Object.entries(ANGLE_FUNCTIONS).find(
    ([name]) => /^[ (]/.test(reader.rest.slice(name.length)) && take(reader, name),
  );
  return ofAngle === undefined ? readSymbol(reader) : ofAngle[1](readAtom(reader));
}

function readEnclosed(reader: Reader, closing: string): number {
  const value = readSum(reader);
  expectSign(reader, closing);
  return value;
}

function readArguments(reader: Reader): number[] {
  const values = [readSum(reader)];
  while (take(reader, ',')) values.push(readSum(reader));
  expectSign(reader, ')');
  return values;
}

function readSymbol(reader: Reader): number {
  const known = [...reader.values.keys()].sort((a, b) => b.length - a.length);
  const symbol = known.find((name) => take(reader, name));
  if (symbol !== undefined) return reader.values.get(symbol) ?? NaN;
  if (take(reader, 'π')) return Math.PI;
  throw new NotReadable();
}
