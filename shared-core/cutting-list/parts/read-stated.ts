import type { Length } from '#core/units/length';
import { parseLength } from '#core/units/parse-length';
import { NUMBER_WORDS } from '../words/trade-words';
import { readSides, type Side } from './read-size';
import { afterPhrase, isMark, isWordOf, type Match, readWhole, type Tokens, wordAt } from './token';

/** An amount of fabric by the yard or meter, with the same again in the other unit: `1 5/8 yd (1.5 m)`. */
export function readFabricAmount(tokens: Tokens, at: number): Match<Length> {
  const first = amountAt(tokens, at);
  if (first === null) return null;
  const second = readSecondAmount(tokens, first.next);
  if (second === null) return first;
  // A meter and a yard of one amount are rounded each by itself.
  const isSame = Math.abs(second.value - first.value) <= 0.12 * first.value;
  return isSame ? { value: first.value, next: second.next } : first;
}

function amountAt(tokens: Tokens, at: number): Match<Length> {
  const [number, unit] = [tokens[at], tokens[at + 1]];
  if (number?.kind !== 'number') return null;
  if (unit?.kind !== 'unit' || (unit.unit !== 'yd' && unit.unit !== 'm')) return null;
  const length = parseLength(`${number.text} ${unit.unit}`, 'yd');
  return length.ok && length.value > 0 ? { value: length.value, next: at + 2 } : null;
}

function readSecondAmount(tokens: Tokens, at: number): Match<Length> {
  const isOpen = isMark(tokens, at, '(', '[');
  if (!isOpen && !isMark(tokens, at, '/')) return null;
  const amount = amountAt(tokens, at + 1);
  if (amount === null || !isOpen) return amount;
  return isMark(tokens, amount.next, ')', ']') ? { value: amount.value, next: amount.next + 1 } : null;
}

/** `(4) fat quarters`, `six fat quarters`, `5 FQ`. */
export function readFatQuarters(tokens: Tokens, at: number): Match<number> {
  const written = NUMBER_WORDS.get(wordAt(tokens, at) ?? '');
  const whole = written === undefined ? readWhole(tokens, at) : { value: written, next: at + 1 };
  if (whole === null) return null;
  const names = ['fat quarters', 'fat quarter', 'fq', 'fqs'];
  const end = names.flatMap((name) => afterPhrase(tokens, whole.next, name) ?? []);
  return end.length === 0 ? null : { value: whole.value, next: Math.max(...end) };
}

export interface StatedSize {
  readonly of: 'finished-size' | 'block-size';
  readonly width: Length;
  readonly length: Length;
}

const SIZE_WORDS = new Set(
  `finished finishes finish measures size quilt top project wall hanging table runner topper tree skirt mat throw blanket block
  blocks the is are about approximately approx at each final dimensions measurement`.split(/\s+/u),
);
const FINISHED = new Set(['finished', 'finishes', 'finish', 'measures', 'size', 'dimensions']);

const MOST_WORDS = 8;

/** `Finished size: 54 in x 66 in`, `Quilt measures 54 x 66`, `Finished block: 9 in`. */
export function readStatedSize(tokens: Tokens, at: number, bareUnit: 'in' | 'cm' | 'mm'): Match<StatedSize> {
  let next = at;
  const words: string[] = [];
  while (
    words.length < MOST_WORDS &&
    (isWordOf(tokens, next, SIZE_WORDS) || (words.length > 0 && isMark(tokens, next, ':', '-', '=')))
  ) {
    words.push(wordAt(tokens, next) ?? '');
    next += 1;
  }
  if (!words.some((word) => FINISHED.has(word))) return null;
  const sides = readSides(tokens, next, bareUnit);
  if (sides === null || sides.value.length > 2) return null;
  const [width, length = width] = sides.value.flatMap((side: Side) =>
    side.kind === 'length' ? [side.length] : [],
  );
  if (width === undefined || length === undefined) return null;
  const isBlock = words.some((word) => word.startsWith('block'));
  const after = skipSquare(tokens, sides.next);
  return { value: { of: isBlock ? 'block-size' : 'finished-size', width, length }, next: after };
}

function skipSquare(tokens: Tokens, at: number): number {
  return ['square', 'finished', 'round', 'across'].includes(wordAt(tokens, at) ?? '') ? at + 1 : at;
}
