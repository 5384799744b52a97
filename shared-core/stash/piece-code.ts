import { z } from 'zod';
import type { FabricPieceId } from '#core/domain/ids';
import { failure, type Result, success } from '#core/result';

/**
 * The code on the label of a piece: eight characters made from the id of the piece, and a check character. It is worked out,
 * never stored. The letters I, L, O and U are left out because they look like 1, 1, 0 and V.
 *
 *     7f3a0c5b-91…   the first forty bits of the id, five bits for each character
 *     FWX0RPWH 1     the eight characters and the check character
 *     FWX-0RP-WH1    as it is printed
 */
const ALPHABET = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const SHAPE = /^[0-9A-HJKMNP-TV-Z]{9}$/;

/** Each half is twenty bits: five hex digits of the id, or four characters of the code. */
const [HEX_HALF, CODE_HALF, BITS_A_CHARACTER] = [5, 4, 5];

export const pieceCode = z.string().regex(SHAPE).refine(hasItsCheck).brand('PieceCode');
export type PieceCode = z.infer<typeof pieceCode>;

/** not-a-code: not nine characters of the alphabet; mistyped: nine, but the check character is wrong. */
export interface PieceCodeProblem {
  readonly code: 'not-a-code' | 'mistyped';
}

/** The code of a piece. Among 100,000 pieces the chance that any two share a code is about 1 in 200. */
export function codeOfPiece(id: FabricPieceId): PieceCode {
  const digits = id.replaceAll('-', '');
  const halves = [digits.slice(0, HEX_HALF), digits.slice(HEX_HALF, 2 * HEX_HALF)];
  const characters = halves.map((half) => charactersOf(Number.parseInt(half, 16))).join('');
  return `${characters}${checkOf(characters)}` as PieceCode;
}

/** The beginning of the id of a piece with this code. */
export function idBeginning(code: PieceCode): string {
  const halves = [code.slice(0, CODE_HALF), code.slice(CODE_HALF, 2 * CODE_HALF)];
  const digits = halves.map((half) => numberOf(half).toString(16).padStart(HEX_HALF, '0')).join('');
  return `${digits.slice(0, 8)}-${digits.slice(8)}`;
}

/** `FWX-0RP-WHS`: groups of three, easier to read aloud and type. */
export function formatPieceCode(code: PieceCode): string {
  return [code.slice(0, 3), code.slice(3, 6), code.slice(6)].join('-');
}

/** Reads a typed or scanned code in upper or lower case, with or without spaces and hyphens; O counts as 0, I and L as 1. */
export function parsePieceCode(text: string): Result<PieceCode, PieceCodeProblem> {
  const read = text
    .replaceAll(/[\s\p{Pd}]/gu, '')
    .toUpperCase()
    .replaceAll('O', '0')
    .replaceAll(/[IL]/g, '1');
  if (!SHAPE.test(read)) return failure({ code: 'not-a-code' });
  return hasItsCheck(read) ? success(read as PieceCode) : failure({ code: 'mistyped' });
}

function charactersOf(number: number): string {
  return Array.from({ length: CODE_HALF }, (_character, place) =>
    ALPHABET.charAt((number >> (BITS_A_CHARACTER * (CODE_HALF - 1 - place))) & 31),
  ).join('');
}

function numberOf(characters: string): number {
  return Array.from(characters).reduce(
    (number, character) => (number << BITS_A_CHARACTER) | ALPHABET.indexOf(character),
    0,
  );
}

/**
 * The checksum of a code: 0 for a valid one. Each character is a number of the finite field of 32 elements, where adding is
 * XOR, and is multiplied by its own power of two. The powers all differ and none is 0, so one wrong character, or any two that
 * are swapped, give another sum (derived).
 */
function checksum(characters: string): number {
  return Array.from(characters).reduce((sum, character) => doubled(sum) ^ ALPHABET.indexOf(character), 0);
}

function checkOf(characters: string): string {
  return ALPHABET.charAt(doubled(checksum(characters)));
}

function hasItsCheck(code: string): boolean {
  return checksum(code) === 0;
}

/** Twice a number of the field of 32 elements, reduced by x⁵ + x² + 1; two generates the field. */
function doubled(number: number): number {
  const twice = number << 1;
  return twice > 31 ? twice ^ 0b100101 : twice;
}
