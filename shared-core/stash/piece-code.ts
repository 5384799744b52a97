import { roundDownTo } from '#core/units/rounding';

/**
 * The characters of a code: digits and capitals without those taken for one another (0 O, 1 I L, 2 Z, U V). Their number is
 * prime, so that one wrong character, or two neighbors exchanged, never give the check character of another code.
 */
const CHARACTERS = '23456789ABCDEFGHJKMNPQRSTVWXY';
const BASE = CHARACTERS.length;
const SHORTEST = 4;

/** The code of a piece by its number in the workshop file, from 1: at least four characters and a check character. Throws RangeError for no number. */
export function codeOfPiece(number: number): string {
  if (!Number.isSafeInteger(number) || number < 0)
    throw new RangeError(`No piece has the number ${String(number)}`);
  let [rest, digits] = [number, [] as number[]];
  while (rest > 0 || digits.length < SHORTEST) {
    digits = [rest % BASE, ...digits];
    rest = roundDownTo(rest / BASE, 1);
  }
  return [...digits, checkOf(digits)].map((digit) => CHARACTERS.charAt(digit)).join('');
}

/** The number a code stands for, however it was typed; null where it is no code or a character of it is wrong. */
export function pieceOfCode(typed: string): number | null {
  const digits = [...typed.toUpperCase().replace(/[\s-]/g, '')].map((one) => CHARACTERS.indexOf(one));
  const [own, check] = [digits.slice(0, -1), digits.at(-1)];
  if (own.length < SHORTEST || digits.includes(-1) || check !== checkOf(own)) return null;
  if (own.length > SHORTEST && own[0] === 0) return null;
  const number = own.reduce((sum, digit) => sum * BASE + digit, 0);
  return Number.isSafeInteger(number) ? number : null;
}

/** Each place weighs differently; a code is far shorter than the weights take to come round. */
function checkOf(digits: readonly number[]): number {
  return digits.reduceRight((sum, digit, place) => sum + digit * (digits.length - place + 1), 0) % BASE;
}
